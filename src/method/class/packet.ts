import { calculatorsOf } from '../case/fit.ts';
import type { WorkedCalculation, WorkedMethod } from '../case/types.ts';
import { caseQuery } from '../documents/address.ts';
import { longestAddress } from '../documents/code.ts';
import type { SheetDocument } from '../documents/index.ts';
import { calculatedSheets } from '../documents/packet.ts';
import { studentSheet } from '../documents/student.ts';
import { pageOf } from '../page/page.ts';
import type { MethodPage, ShownFinding, ShownTimetable } from '../page/types.ts';
import { billOfCase } from '../plan/bill.ts';
import { costOfCase } from '../plan/price.ts';
import type { WorkedClass } from './class.ts';
import type { WorkedPlace } from './places.ts';
import { classTeacherSheet } from './teacher-sheet.ts';
import { teachersPart, withoutTeachersPart } from './teachers-part.ts';
import { turnStarts } from './timetable.ts';
import { placesWords } from './together.ts';
import type { ClassMix, ClassPage } from './types.ts';

/** What is printed of a class. */
export interface ClassPacketOptions {
  /** Day of the printing, 2027-01-12. */
  made: string;
  /** Address of the page of the method, to which the case of a place is added; without one no sheet has a code. */
  address?: string;
  /** One place alone; all where left out. */
  place?: string;
}

/** All that is printed of a class, in the order in which it is handed out. */
export interface ClassPacket {
  title: string;
  made: string;
  /** The line that stands on every page. */
  running: string;
  documents: readonly SheetDocument[];
  /** Kinds of sheets, each once; `usual` is printed unless somebody leaves it out. */
  sheets: readonly { sheet: string; title: string; usual: boolean }[];
  /** Places that have no sheet, since they cannot be worked out. */
  without: readonly string[];
}

const shownFindings = (page: ClassPage, place: string, { steps }: Pick<MethodPage, 'steps'>): ShownFinding[] =>
  page.findings
    .filter(({ places }) => places.length === 0 || places.includes(place))
    .map(({ rule, level, message, wayOut, step }) => {
      const own = steps.find(({ title }) => title === step);
      return {
        rule,
        level,
        message,
        wayOut,
        ...(own ? { step: own.id, number: own.number } : {}),
        line: 1,
        column: 1,
      };
    });

/** When a place comes to each of its steps with the class, as far as a sheet shows it. */
function ownTimes({ timetable }: WorkedClass, piece: number): ShownTimetable | undefined {
  if (!timetable?.ok) return undefined;
  const moments: Record<number, ShownTimetable['moments'][number]> = {};
  const steps = [...turnStarts(timetable, piece)].map(([id, start]) => {
    const { date, weekday, time } = timetable.clock.momentAt(start);
    moments[start] = { date, weekday, time, day: 1 };
    return { id, start, end: start, hands: 0, slack: 0 };
  });
  return {
    zone: '',
    relative: false,
    assumedHours: false,
    start: timetable.start,
    end: timetable.end,
    zero: '',
    moments,
    steps,
    sessions: [],
    waits: [],
    open: [],
    critical: [],
    advice: [],
    secondWays: [],
    proved: true,
  };
}

/**
 * A method for one of a class without what is there once for all: of a material what a piece takes and not what the class takes, of a tool no number,
 * since there are so many in the room.
 */
function forOneOf(worked: WorkedMethod): WorkedMethod {
  const materials = Object.entries(worked.materials).map(([name, material]) => {
    const asked = material.record.needs;
    const isOwn = (at: number) => {
      const need = asked[at];
      return need === undefined || 'from' in need || need.per === 'piece';
    };
    // A need that is not known is left out of the needs: which is whose can then not be told.
    const needs = material.needs.length === asked.length ? material.needs.filter((_, at) => isOwn(at)) : [];
    return [name, { ...material, needs }];
  });
  const tools = Object.entries(worked.tools).map(([name, tool]) => [name, { ...tool, count: 1 }]);
  return { ...worked, materials: Object.fromEntries(materials), tools: Object.fromEntries(tools) };
}

/** The page of a place as one of its class: its own numbers, what is found of it there, and when its turn comes. */
async function placePage(state: WorkedClass, page: ClassPage, place: WorkedPlace): Promise<MethodPage> {
  // One piece, though the method may say that nobody makes a single one: a student has one.
  const worked = await state.one.work(place, 1);
  const bill = billOfCase(worked, worked.shop);
  const cost = bill.ok ? costOfCase(worked, bill.value) : bill;
  const own = pageOf(forOneOf(worked), await calculatorsOf(worked.record), { findings: [], bill, cost });
  const timetable = ownTimes(state, state.one.places.indexOf(place) + 1);
  return { ...own, findings: shownFindings(page, place.id, own), ...(timetable ? { timetable } : {}) };
}

const readerOf = ({ id, name }: { id: string; name?: string }) => `Place ${id}${name ? `, ${name}` : ''}`;

/** The student's sheet of a place: its own numbers, and that resin is mixed with others. */
function sheetOf(page: MethodPage, place: WorkedPlace, classPage: ClassPage, options: ClassPacketOptions) {
  // A method that is neither taught nor makes a single piece has no page of one, and the sheet no code that would show another case.
  const hasPage = page.makes.least <= 1 || page.taught !== undefined;
  const address = hasPage && options.address && `${options.address}?${caseQuery({ set: place.set, pieces: 1 })}`;
  const own = classPage.mixes.filter(({ places }) => places.includes(place.id));
  const part = teachersPart(page, own);
  const sheet = studentSheet(
    withoutTeachersPart(page, part, own),
    {
      paper: 'a4',
      made: options.made,
      for: readerOf(place),
      ...(address && address.length <= longestAddress ? { address } : {}),
    },
    part,
  );
  const shared = own.filter(({ places }) => places.length > 1);
  const [reader, ...rest] = sheet.blocks;
  const mixed = shared.map(({ step, colour, resin, places }) => ({
    kind: 'text' as const,
    lead: `Step ${step.number}`,
    text: `${colour ? `${colour}, ` : ''}${resin}: mixed at once for ${placesWords(places.map((id) => ({ id })))}, by the mixing sheet of the class. Nobody mixes by this sheet.`,
    strong: true,
  }));
  return { ...sheet, id: `student-${place.id}`, blocks: [...(reader ? [reader] : []), ...mixed, ...rest] };
}

/** What a class mixes at once, each mix with its own sheets. */
const mixSheets = (mixes: readonly ClassMix[]): SheetDocument[] =>
  mixes.flatMap(({ documents, calculation, step, colour, resin, places }, at) =>
    documents.map((document) => ({
      ...document,
      id: `${document.id}-${calculation}-${at + 1}`,
      sheet: document.id,
      steps: [step.number],
      title: `${document.title}: ${[`step ${step.number}`, colour, resin, placesWords(places.map((id) => ({ id })))].filter(Boolean).join(', ')}`,
    })),
  );

/** Sheets of the calculations of all places: the same once, with the places that it is for; cards of a kind together, one for each place. */
function placeSheets(pages: readonly { place: WorkedPlace; page: MethodPage }[]): SheetDocument[] {
  const found = new Map<string, { document: SheetDocument; places: WorkedPlace[] }>();
  const cards = new Map<string, SheetDocument & { cards: SheetDocument['blocks'][] }>();
  for (const { place, page } of pages) {
    const mixed = new Set(
      Object.values(place.worked.calculations as Readonly<Record<string, WorkedCalculation>>)
        .filter(({ use }) => use === 'resin-dose')
        .map(({ name }) => name),
    );
    const steps = page.steps.map((step) => ({
      ...step,
      calculations: step.calculations.filter(({ name }) => !mixed.has(name)),
    }));
    for (const document of calculatedSheets({ ...page, steps })) {
      if (document.form === 'card' || document.form === 'labels') {
        const before = cards.get(document.id) ?? { ...document, cards: [] };
        const whose = { kind: 'text' as const, text: readerOf(place), small: true };
        cards.set(document.id, { ...before, cards: [...before.cards, [whose, ...document.blocks]] });
        continue;
      }
      const key = JSON.stringify([document.sheet, document.blocks]);
      const before = found.get(key);
      if (before) before.places.push(place);
      else found.set(key, { document, places: [place] });
    }
  }
  const known = [...found.values()].map(({ document, places }, at) => ({
    ...document,
    id: `${document.id}-${at + 1}`,
    title: places.length === pages.length ? document.title : `${document.title}, ${placesWords(places)}`,
  }));
  return [...known, ...cards.values()];
}

/** Other sheets than these say what is done anyway, or are for whoever looks closer. */
const isUsual = ({ sheet, form }: SheetDocument, mixes: ReadonlySet<string>) =>
  sheet === 'student' || sheet === 'teacher' || form !== 'sheet' || mixes.has(sheet);

const kindNames: Readonly<Record<string, string>> = {
  student: 'A student’s sheet for each place',
  teacher: 'Teacher’s sheet',
  'true-size': 'Templates, each size once',
};

/**
 * Everything that is printed of a class: the teacher's sheet once, what is mixed by colour, a student's sheet for each place with its own numbers,
 * templates once for each size, labels and cards for each place.
 */
export async function classPacket(
  state: WorkedClass,
  page: ClassPage,
  options: ClassPacketOptions,
): Promise<ClassPacket> {
  const wanted = state.one.places.filter(({ id }) => options.place === undefined || id === options.place);
  const pages = [];
  for (const place of wanted) pages.push({ place, page: await placePage(state, page, place) });
  const mixes = page.mixes.filter(({ places }) => wanted.some(({ id }) => places.includes(id)));
  const mixed = mixSheets(mixes);
  const teacher =
    options.place === undefined
      ? [
          classTeacherSheet(
            page,
            pageOf(state.whole, await calculatorsOf(state.whole.record), {
              findings: [],
              bill: billOfCase(state.whole, state.whole.shop),
              cost: { ok: false, errors: [] },
            }),
            options.made,
          ),
        ]
      : [];
  const documents = [
    ...teacher,
    ...mixed,
    ...pages.map(({ place, page: own }) => sheetOf(own, place, page, options)),
    ...placeSheets(pages),
  ];
  const mixNames = new Set(mixed.map(({ sheet }) => sheet));
  const sheets = new Map(
    documents.map((document) => [
      document.sheet,
      {
        sheet: document.sheet,
        title:
          kindNames[document.form === 'true-size' ? document.form : document.sheet] ??
          document.title.replace(/(: | \()steps? .*$/, ''),
        usual: isUsual(document, mixNames),
      },
    ]),
  );
  const who = options.place === undefined ? '' : ` · place ${options.place}`;
  return {
    title: page.name,
    made: options.made,
    running: `${page.name} · ${page.method.title}${who}`,
    documents,
    sheets: [...sheets.values()],
    without: state.one.faulty.map(({ place }) => place.id),
  };
}
