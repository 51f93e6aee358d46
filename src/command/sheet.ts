import { writeFileSync } from 'node:fs';
import { basename } from 'node:path';
import { longestAddress, type MethodPacket, methodAddress, packetOf } from '../method/documents/index.ts';
import { answerMethod } from '../method/page/answer.ts';
import type { MethodPage } from '../method/page/types.ts';
import { calendarFile } from '../method/plan/calendar-file.ts';
import { listingOf, promiseNotes } from '../method/sale/index.ts';
import { type PaperName, papers } from '../model/outline/tiles.ts';
import { inReaderUnits } from '../model/quantity/index.ts';
import { caseOf, caseOptions, caseUsage, type TypedCase } from './method-case.ts';
import { shownProblem, textOf } from './method-files.ts';
import { readOptions } from './options.ts';
import { planOfCase } from './plan-case.ts';
import { quoteOf, quoteOptions, quoteUsage } from './quote.ts';
import { type Command, type Output, UsageError } from './usage.ts';

const usage = `sheet <file> -o packet.pdf|.html|.ics|.txt [--paper a4|letter] [--only student,teacher,…] [--for name] [--site https://…]
            [--date 2027-01-10] ${caseUsage.options}

Writes what somebody with only the paper works by: the student's sheet, the teacher's, and what the calculations give to print, as a mixing sheet, a
template at true size, a label or a care card. Print a PDF at 100 %, not fitted to the page.
-o           the file; its ending says what it is: .pdf, .html (one file, without scripts), .ics (the timetable as a calendar),
             .txt (the text of an online listing)
--paper      a4 unless told
--only       names of sheets, with commas between them
--for        whom it is for; else there is a line to write on
--site       address of the site that the paper's code leads to: --site https://boards.example
--date       day of the printing; today unless told
${quoteUsage}${caseUsage.about}`;

const kinds = ['.pdf', '.html', '.ics', '.txt'] as const;
type Kind = (typeof kinds)[number];

function kindOf(file: string | undefined): Kind {
  const kind = kinds.find((ending) => file?.toLowerCase().endsWith(ending));
  if (kind) return kind;
  const read = file === undefined ? 'no file is named to write to' : `${file} does not end in ${kinds.join(', ')}`;
  throw new UsageError(`sheet: ${read}. Write, for example, -o packet.pdf.`);
}

function paperOf(text = 'a4'): PaperName {
  if (Object.hasOwn(papers, text.toLowerCase())) return text.toLowerCase() as PaperName;
  throw new UsageError(`sheet: --paper “${text}” is not known; there are ${Object.keys(papers).join(' and ')}.`);
}

function dateOf(text: string | undefined): string {
  if (text === undefined) return new Date().toISOString().slice(0, 10);
  const date = new Date(`${text}T00:00:00Z`);
  if (/^\d{4}-\d\d-\d\d$/.test(text) && !Number.isNaN(date.valueOf()) && date.toISOString().startsWith(text))
    return text;
  throw new UsageError(
    `sheet: --date “${text}” is not a day of the calendar. Write year-month-day, such as 2027-01-10.`,
  );
}

/** Address of the page that shows the case on somebody's site. */
function addressOf(site: string | undefined, asked: TypedCase): string | undefined {
  if (site === undefined) return undefined;
  if (!URL.canParse(site) || !/^https?:\/\/[^?#]+$/.test(site))
    throw new UsageError(
      `sheet: --site “${site}” is not the address of a site. Write it whole, such as --site https://boards.example.`,
    );
  const address = `${site.replace(/\/+$/, '')}${methodAddress(basename(asked.file).replace(/\.ya?ml$/i, ''), asked)}`;
  if (address.length <= longestAddress) return address;
  throw new UsageError(
    `sheet: the address of this case has ${address.length} characters, and a code on paper takes ${longestAddress}. Leave --site out, or set fewer parameters.`,
  );
}

/** The sheets that were asked for, by name. */
function onlyOf(text: string | undefined, packet: MethodPacket): string[] | undefined {
  if (text === undefined) return undefined;
  const asked = text.split(',').map((name) => name.trim());
  const known = packet.sheets.map(({ sheet }) => sheet);
  const wrong = asked.filter((name) => !known.includes(name));
  if (wrong.length === 0) return asked;
  throw new UsageError(
    `sheet: --only “${wrong.join(', ')}”: this method has no such sheet; it has ${known.join(', ')}. Write, for example, --only student,teacher.`,
  );
}

async function pageOf(asked: TypedCase, shop: string | undefined, output: Output): Promise<MethodPage | undefined> {
  const { file, units, pieces, people, start, end, hours, assumed, set } = asked;
  const answer = await answerMethod({
    text: textOf(file, 'sheet'),
    file,
    ...(shop === undefined ? {} : { shop: textOf(shop, 'sheet', 'methods/shop.yaml') }),
    ...(pieces === undefined ? {} : { pieces }),
    ...(people === undefined ? {} : { people }),
    ...(start === undefined ? {} : { start }),
    ...(end === undefined ? {} : { end }),
    ...(assumed ? {} : { hours }),
    ...(set ? { set } : {}),
  });
  if (answer.ok) return answer.page;
  for (const problem of answer.problems) output.err(`${shownProblem(problem, units)}\n`);
  return undefined;
}

async function calendarOf(asked: TypedCase, output: Output): Promise<string | undefined> {
  const plan = await planOfCase('sheet', asked, output);
  const text = plan && calendarFile(plan, asked.units);
  if (plan && text === undefined) output.err(inReaderUnits(`No timetable. ${plan.impossible?.why}\n`, asked.units));
  return text;
}

/** Write the sheets of a method. */
export const sheet: Command = async (args, output) => {
  const { values, positionals } = readOptions('sheet', {
    args: [...args],
    allowPositionals: true,
    options: {
      ...caseOptions,
      out: { type: 'string', short: 'o' },
      paper: { type: 'string' },
      only: { type: 'string' },
      for: { type: 'string' },
      site: { type: 'string' },
      date: { type: 'string' },
      ...quoteOptions,
      help: { type: 'boolean', short: 'h' },
    },
  });
  if (values.help) {
    output.out(`kerf ${usage}`);
    return 0;
  }
  const asked = caseOf('sheet', positionals, values);
  const { out: file = '', units } = { ...values, ...asked };
  const kind = kindOf(values.out);
  const write = (data: string | Uint8Array) => {
    try {
      writeFileSync(file, data);
    } catch (error) {
      throw new UsageError(`sheet: ${file} cannot be written: ${(error as Error).message}. Name another file with -o.`);
    }
  };
  if (kind === '.ics') {
    const text = await calendarOf(asked, output);
    if (text === undefined) return 1;
    write(text);
    return 0;
  }
  const made = dateOf(values.date);
  const quote = quoteOf(values, made);
  for (const note of promiseNotes(quote)) output.err(`${note}\n`);
  const options = {
    paper: paperOf(values.paper),
    made,
    ...(values.for ? { for: values.for } : {}),
  };
  const address = addressOf(values.site, asked);
  const page = await pageOf(asked, values.shop, output);
  if (!page) return 1;
  if (kind === '.txt') {
    const { text, inTheWay } = listingOf(page, made);
    write(text);
    output.out(`${file}: text of a listing\n`);
    for (const line of inTheWay) output.err(`${inReaderUnits(line, units)}\n`);
    return inTheWay.length === 0 ? 0 : 1;
  }
  const whole = packetOf(page, { ...options, quote, ...(address === undefined ? {} : { address }) });
  // A quote goes to somebody else than the sheets: it is written when it is asked for.
  const named = onlyOf(values.only, whole);
  const only = named ?? whole.sheets.flatMap(({ sheet: name }) => (name === 'quote' ? [] : [name]));
  const documents = whole.documents.filter((each) => only.includes(each.sheet));
  const [first] = documents;
  // At the foot of a quote a customer reads what is offered, and not how a class is taught to make it.
  const running =
    documents.length === 1 && first?.sheet === 'quote'
      ? `${first.title} · ${page.makes.pieces} × ${page.makes.what}`
      : whole.running;
  const packet = { ...whole, running, documents };
  if (kind === '.pdf') write(await (await import('./sheet-pdf.ts')).packetPdf(packet, units));
  else write((await import('./sheet-html.ts')).packetHtml(packet, units));
  output.out(`${file}: ${packet.documents.map(({ title }) => inReaderUnits(title, units)).join('; ')}\n`);
  if (page.brief.stops === 0) return 0;
  output.err('A rule stops this method as it stands; the sheets say so. Write kerf check to see it.\n');
  return 1;
};
