import { workMethod } from '../method/case/work.ts';
import { calendarFile } from '../method/plan/calendar-file.ts';
import { assumedHours, planOf } from '../method/plan/index.ts';
import { planReport } from '../method/plan/report.ts';
import { planText } from '../method/plan/text.ts';
import { readMethod } from '../method/read.ts';
import { dayOrTimeFault, type OpeningHours, readOpeningHours } from '../method/schedule/hours.ts';
import { ProblemError } from '../method/schedule/index.ts';
import type { Shop } from '../method/shop/index.ts';
import { readYaml } from '../model/data/yaml.ts';
import { inReaderUnits } from '../model/quantity/index.ts';
import { shopOf, shownProblem, textOf, unitsOf } from './method-files.ts';
import { readOptions } from './options.ts';
import { type Command, type Output, UsageError } from './usage.ts';

const usage = `plan <file> [--shop shop.yaml] [--pieces n] [--people n] [--start 2027-01-12] [--end 2027-02-12]
            [--calendar hours.yaml] [--set name=value …] [--units metric|inch] [--json | --ics]

Works a method out for one case and lays it out in time: what to do in which session, what makes it so long, what to buy.
--set        a parameter: --set wood=white-ash, --set outline.length="16 in"
--calendar   a YAML file: { zone, week: { tue: ['18:30-21:00'] }, holidays: [], sessions: [] }; else the shop record's hours
`;

/** The hours in which somebody is there, and whether anybody told them. */
function hoursOf(file: string | undefined, shop: Shop | undefined): { hours: OpeningHours; assumed: boolean } {
  const zone = shop?.zone ?? Intl.DateTimeFormat().resolvedOptions().timeZone;
  if (file === undefined && !shop?.calendar) return { hours: assumedHours(zone), assumed: true };
  let data: unknown = shop?.calendar;
  if (file !== undefined) {
    const reading = readYaml(textOf(file, 'plan', 'tuesdays.yaml'), file);
    if (reading.problems.length > 0) throw new UsageError(...reading.problems.map((problem) => shownProblem(problem)));
    data = reading.data;
  }
  const read = readOpeningHours({ zone, ...(data as object) });
  if (read.ok) return { hours: read.hours, assumed: false };
  const where = file ?? 'calendar of the shop record';
  throw new UsageError(...read.faults.map(({ field, text }) => `plan: ${where} ${field}: ${text}`));
}

function settingsOf(texts: readonly string[]): Record<string, string> {
  return Object.fromEntries(
    texts.map((text) => {
      const at = text.indexOf('=');
      if (at < 1)
        throw new UsageError(`plan: --set ${text} has no value. Write --set name=value, such as --set wood=white-ash.`);
      return [text.slice(0, at).trim(), text.slice(at + 1).trim()];
    }),
  );
}

function countOf(name: string, text: string | undefined): number | undefined {
  if (text === undefined) return undefined;
  if (!/^\d{1,3}$/.test(text) || Number(text) < 1)
    throw new UsageError(
      `plan: --${name} ${text} is not a whole number from 1 to 999. Write, for example, --${name} 12.`,
    );
  return Number(text);
}

/** Everybody of the record; one where it names nobody. */
const peopleOf = (shop: Shop | undefined) => (shop?.people ?? []).reduce((sum, { count }) => sum + count, 0) || 1;

/** A day or a local time of an option, or undefined where it was not given. */
function dayOf(name: string, text: string | undefined): string | undefined {
  const fault = text === undefined ? undefined : dayOrTimeFault(text);
  if (fault !== undefined) throw new UsageError(`plan: --${name} ${fault}`);
  return text;
}

async function planned(args: readonly string[], output: Output): Promise<number> {
  const { values, positionals } = readOptions('plan', {
    args: [...args],
    allowPositionals: true,
    options: {
      shop: { type: 'string' },
      pieces: { type: 'string' },
      people: { type: 'string' },
      start: { type: 'string' },
      end: { type: 'string' },
      calendar: { type: 'string' },
      set: { type: 'string', multiple: true },
      units: { type: 'string' },
      json: { type: 'boolean' },
      ics: { type: 'boolean' },
      help: { type: 'boolean', short: 'h' },
    },
  });
  if (values.help) {
    output.out(`kerf ${usage}`);
    return 0;
  }
  const [file, more] = positionals;
  if (file === undefined || more !== undefined)
    throw new UsageError(
      `plan: name one file${more === undefined ? '' : `, not also ${more}`}, such as kerf plan methods/first-tray.yaml.`,
    );
  const units = unitsOf(values.units, 'plan');
  const shop = shopOf(values.shop, 'plan');
  const pieces = countOf('pieces', values.pieces);
  const start = dayOf('start', values.start) ?? new Date().toISOString().slice(0, 10);
  const end = dayOf('end', values.end);
  if (end !== undefined && end.slice(0, 10) < start.slice(0, 10))
    throw new UsageError(`plan: --end ${end} lies before --start ${start}. Give a later end, or an earlier start.`);
  const { hours, assumed } = hoursOf(values.calendar, shop);
  const working = await workMethod(readMethod(textOf(file, 'plan'), file), {
    ...(pieces === undefined ? {} : { pieces }),
    ...(values.set ? { set: settingsOf(values.set) } : {}),
    ...(shop ? { shop } : {}),
  });
  if (!working.ok) {
    for (const problem of working.problems) output.err(`${shownProblem(problem, units)}\n`);
    return 1;
  }
  const plan = await planOf(working.worked, {
    start,
    ...(end === undefined ? {} : { end }),
    hours,
    people: countOf('people', values.people) ?? peopleOf(shop),
  });
  const stops = plan.findings.some(({ level, excepted }) => level === 'stop' && excepted === undefined);
  const failed = stops || !plan.timetable.ok;
  if (values.ics) {
    const text = calendarFile(plan, units);
    if (text === undefined) {
      output.err(inReaderUnits(`No timetable. ${plan.impossible?.why}\n`, units));
      return 1;
    }
    output.out(text);
  } else if (values.json) output.out(`${JSON.stringify(planReport(plan, units), null, 2)}\n`);
  else {
    if (assumed)
      output.out('Hours are assumed: Monday to Friday, 9:00 to 17:00. Give --calendar or a shop record.\n\n');
    output.out(planText(plan, units));
  }
  return failed ? 1 : 0;
}

/** Plan a method. */
export const plan: Command = async (args, output) => {
  try {
    return await planned(args, output);
  } catch (error) {
    if (error instanceof ProblemError) throw new UsageError(`plan: ${error.message}`);
    throw error;
  }
};
