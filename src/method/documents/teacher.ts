import { basisWords, type PaperBlock, type ResultTable, verdictWords } from '../../model/evidence/index.ts';
import { amount, formatNumber, unitLabel } from '../../model/quantity/index.ts';
import { moneyWords } from '../cost/index.ts';
import { noLessThan } from '../page/time-words.ts';
import type { MethodPage, ShownBlock, ShownFinding, ShownPart, ShownTimetable, ShownValue } from '../page/types.ts';
import { whoWords } from '../plan/duties.ts';
import { type BillRow, billTable } from './bill-table.ts';
import { isTrue, scaleBeside } from './scale.ts';
import { closingText, dangersOf, dangerText } from './student.ts';
import { isAlways, isMachine, supervised } from './supervision.ts';
import type { PacketOptions, SheetDocument } from './types.ts';
import { setUpFirst } from './waits.ts';
import { countWords, momentText, oneLine, shortName, stepsText, timeWords } from './words.ts';

const text = (words: string, lead?: string): PaperBlock => ({
  kind: 'text',
  text: words,
  ...(lead === undefined ? {} : { lead }),
});

const levelWords: Readonly<Record<ShownFinding['level'], string>> = { stop: 'Stops it', warn: 'Mind', note: 'Note' };

function findingBlocks({ findings }: MethodPage): PaperBlock[] {
  if (findings.length === 0) return [];
  const order = { stop: 0, warn: 1, note: 2 };
  const sorted = [...findings].sort((one, two) => order[one.level] - order[two.level]);
  const at = ({ number }: ShownFinding) => (number === undefined ? '' : ` (step ${number})`);
  return [
    { kind: 'heading', text: 'What the rules say of it' },
    ...sorted
      .filter(({ excepted }) => excepted === undefined)
      .map((finding) => text(`${finding.message} ${finding.wayOut}${at(finding)}`, levelWords[finding.level])),
    ...sorted.flatMap((finding) =>
      finding.excepted === undefined
        ? []
        : [text(`${finding.message}${at(finding)} Allowed here: ${finding.excepted}`, 'Exception')],
    ),
  ];
}

/** What must have dried, cured or come to rest by a session: waits that end after the session before it. */
function curedBy({ timetable, steps }: MethodPage, at: number): string[] {
  if (!timetable) return [];
  const session = timetable.sessions[at];
  if (!session) return [];
  const here = new Set(session.work.map(({ step }) => step));
  const title = (id: string) => steps.find((step) => step.id === id);
  return timetable.waits
    .filter(({ until, end }) => here.has(until) && end <= session.end && end > (timetable.sessions[at - 1]?.end ?? -1))
    .flatMap(({ step, until, start, end }) => {
      const [before, after] = [title(step), title(until)];
      const moment = timetable.moments[end];
      if (!before || !after || !moment) return [];
      return `Step ${after.number} not before ${momentText(moment, timetable.relative)}${setUpFirst(timetable, until, end)}: ${noLessThan(end - start)} after step ${before.number}, ${before.title}.`;
    });
}

function workTable(page: MethodPage, { moments, sessions, people = [] }: ShownTimetable, at: number): ResultTable {
  const { steps, makes } = page;
  const session = sessions[at];
  // Of one person alone nobody need be told apart.
  const several = people.length !== 1;
  const rows = (session?.work ?? []).map(({ step: id, pieces, start, end, people: count, by }) => {
    const step = steps.find((each) => each.id === id);
    const watched = step ? supervised(page, step) : [];
    const [first, last] = pieces;
    return [
      `${moments[start]?.time ?? ''} to ${moments[end]?.time ?? ''}`,
      `${step?.number ?? ''}. ${step?.title ?? id}`,
      first === 1 && last === makes.pieces ? 'all' : first === last ? `${first}` : `${first} to ${last}`,
      ...(several ? [by ? whoWords(by, people) : `${count}`] : []),
      watched.join(', '),
    ];
  });
  return {
    id: `session-${at + 1}`,
    title: '',
    columns: [
      { id: 'time', label: 'Time' },
      { id: 'step', label: 'Step' },
      { id: 'pieces', label: 'Pieces' },
      ...(several ? [{ id: 'people', label: 'Who' }] : []),
      { id: 'watched', label: 'Under supervision' },
    ],
    rows,
    basis: 'derived',
  };
}

/** What lies ready when a session begins. */
function outFor({ tools, steps }: MethodPage, { sessions }: ShownTimetable, at: number): PaperBlock[] {
  const work = sessions[at]?.work ?? [];
  const named = new Set(work.flatMap((each) => each.tools));
  const ids = new Set(work.map(({ step }) => step));
  const here = tools.filter(({ name }) => named.has(name));
  const names = (some: typeof here) => some.map((tool) => `${countWords(tool)}${shortName(tool.what)}`).join('; ');
  const machines = here.filter(({ kind }) => isMachine(kind));
  const other = here.filter(({ kind }) => !isMachine(kind) && !isAlways(kind));
  const always = here.some(({ kind }) => isAlways(kind));
  const used = new Map(
    steps.filter(({ id }) => ids.has(id)).flatMap(({ uses }) => uses.map(({ name, what }) => [name, shortName(what)])),
  );
  return [
    ...(machines.length > 0 ? [text(`${names(machines)}.`, 'Machines')] : []),
    ...(other.length > 0 ? [text(`${names(other)}.`, 'Out')] : []),
    ...(always ? [text('as always.', 'Protection')] : []),
    ...(used.size > 0 ? [text(`${[...used.values()].join('; ')}.`, 'To use up')] : []),
  ];
}

function sessionBlocks(page: MethodPage): PaperBlock[] {
  const { timetable, impossible } = page;
  if (!timetable)
    return [
      { kind: 'heading', text: 'Timetable' },
      text(
        impossible
          ? [impossible.why, ...impossible.changes.map((change) => `${change}.`)].join(' ')
          : 'It is not worked out.',
        'None',
      ),
    ];
  const always = page.tools.filter(({ kind }) => isAlways(kind));
  const { people = [], moments, relative, sessions, assumedHours, known, secondWays } = timetable;
  const at = (minute: number) => (moments[minute] ? momentText(moments[minute], relative) : '');
  return [
    { kind: 'heading', text: 'Timetable' },
    text(
      [
        `From ${at(timetable.start)} to ${at(timetable.end)}, in ${sessions.length} ${sessions.length === 1 ? 'session' : 'sessions'}.`,
        ...(assumedHours ? ['Hours are assumed: Monday to Friday, 9:00 to 17:00.'] : []),
        ...(relative ? ['Days are counted from the first; no day was named.'] : []),
        ...(always.length > 0 ? [`Protection as always: ${always.map(({ what }) => what).join('; ')}.`] : []),
        ...(known === undefined ? [] : [known]),
        ...secondWays.map(({ do: way }) => `Planned with a second way: ${way}`),
      ].join(' '),
    ),
    ...sessions.flatMap(({ start, end, free }, index): PaperBlock[] => [
      { kind: 'heading', text: `Session ${index + 1}: ${at(start)} to ${moments[end]?.time ?? ''}` },
      ...outFor(page, timetable, index),
      ...curedBy(page, index).map((words) => text(words, 'Cured or dried')),
      { kind: 'table', table: workTable(page, timetable, index) },
      ...(free === undefined || free.length === 0
        ? []
        : [
            text(
              `${free
                .map(
                  (idle) =>
                    `${whoWords(idle.who, people)}, ${moments[idle.start]?.time ?? ''} to ${moments[idle.end]?.time ?? ''}`,
                )
                .join('; ')}.`,
              'Free',
            ),
          ]),
    ]),
  ];
}

function billBlocks({ bill, cost, materials, costless, shop }: MethodPage): PaperBlock[] {
  const money = (sum: number, code: string) => moneyWords(sum, { code });
  const rows: BillRow[] = bill
    ? bill.lines.map(({ what, need, unit, kept, buy, packs, cost: sum, missing }) => ({
        what,
        need: amount(need, unit, 3, kept === true),
        buy:
          buy === 0
            ? 'on the shelf'
            : packs
                .map(({ size, count }) => `${count} × ${formatNumber(size.value, 4)} ${unitLabel(size.unit)}`.trim())
                .join(' + '),
        cost: buy === 0 || sum === null ? '' : money(sum, bill.currency),
        ...(buy > 0 && sum === null ? { missing: missing ?? 'no price' } : {}),
      }))
    : materials.map(({ what, need }) => ({ what, need: need ?? '', buy: '', cost: '' }));
  const priced = bill?.lines.some(({ cost: sum }) => sum !== null);
  return [
    { kind: 'heading', text: 'To buy' },
    ...billTable('bill', rows, shop !== undefined),
    ...(bill && priced
      ? [
          text(
            `To pay now ${money(bill.bought, bill.currency)}${bill.without.bought.length > 0 ? `, without ${bill.without.bought.length} of ${bill.lines.length} lines that have no price` : ''}.`,
          ),
        ]
      : []),
    ...(cost ? cost.pricing.words.map((words) => text(words)) : []),
    ...costless.map((words) => text(words)),
  ];
}

/** Values that a text refers to. */
function valuesIn(blocks: readonly ShownBlock[]): ShownValue[] {
  const inParts = (parts: readonly ShownPart[]): ShownValue[] =>
    parts.flatMap((part) => (part.kind === 'value' ? [part] : 'parts' in part ? inParts(part.parts) : []));
  return blocks.flatMap((block) => (block.kind === 'paragraph' ? inParts(block.parts) : block.items.flatMap(valuesIn)));
}

/** Every number that the steps hand on, once, with its band and how it is known. */
function answerBlocks({ steps }: MethodPage): PaperBlock[] {
  const seen = new Set<string>();
  const rows = steps.flatMap((step) => {
    const { number, does, why = [], tell = [], wrong = [] } = step;
    return valuesIn([...does, ...why, ...tell, ...wrong]).flatMap((value) => {
      if (value.calculation === undefined || value.basis === undefined || seen.has(value.pointer)) return [];
      seen.add(value.pointer);
      return [[`${number}`, value.label, value.text, value.between ?? '', basisWords[value.basis]]];
    });
  });
  if (rows.length === 0) return [];
  return [
    { kind: 'heading', text: 'Answers: every number, and how it is known' },
    {
      kind: 'table',
      table: {
        id: 'answers',
        title: '',
        columns: [
          { id: 'step', label: 'Step' },
          { id: 'what', label: 'What' },
          { id: 'value', label: 'Value' },
          { id: 'between', label: 'Between' },
          { id: 'basis', label: 'Basis' },
        ],
        rows,
        basis: 'derived',
      },
    },
  ];
}

/** What each calculation of a step comes to. */
function verdictBlocks({ steps }: MethodPage): PaperBlock[] {
  const said = steps.flatMap(({ number, calculations }) =>
    calculations.flatMap(({ title, verdict, errors }) => [
      ...(verdict ? [text(`${verdictWords[verdict.level]}. ${verdict.text}`, `${number}, ${title}`)] : []),
      ...errors.map((words) => text(words, `${number}, ${title}: no answer`)),
    ]),
  );
  return said.length === 0 ? [] : [{ kind: 'heading', text: 'What the calculations come to' }, ...said];
}

/** Which steps want somebody beside, and that local rules come first. */
export function supervisionBlocks(page: MethodPage): PaperBlock[] {
  const kinds = new Map<string, number[]>();
  for (const step of page.steps)
    for (const kind of supervised(page, step)) kinds.set(kind, [...(kinds.get(kind) ?? []), step.number]);
  const lines = [...kinds].map(
    ([kind, numbers]) => `${kind[0]?.toUpperCase()}${kind.slice(1)}: ${stepsText(numbers)}.`,
  );
  return [
    { kind: 'heading', text: 'Who may do what' },
    ...(lines.length > 0 ? [text(lines.join(' '), 'Only with somebody beside who knows it')] : []),
    text(
      'This list is common practice and no rule. Your local rules on machines, chemicals and age, the insurer of the shop, the machines’ manuals and the makers’ data sheets say who may do what: where they are stricter they hold.',
      'First',
    ),
  ];
}

/** What the wood will do, drawn larger than it is. */
const enlargedBlocks = ({ steps }: MethodPage): PaperBlock[] =>
  steps.flatMap(({ calculations }) =>
    calculations.flatMap(({ drawings }) =>
      drawings
        .filter((drawing) => !isTrue(drawing))
        .map((drawing) => ({ kind: 'drawing' as const, drawing, scale: scaleBeside(drawing) })),
    ),
  );

/** The reasons behind the steps, and the notes that no step of the student's sheet carries. */
export function whyBlocks({ steps }: MethodPage): PaperBlock[] {
  const notes = new Map<string, { text: string; steps: number[] }>();
  for (const { number, cautions } of steps)
    for (const { id, level, text: words } of cautions)
      if (level === 'note') notes.set(id, { text: words, steps: [...(notes.get(id)?.steps ?? []), number] });
  const why = steps.flatMap(({ number, why: reason }) => (reason ? [text(oneLine(reason), `${number}`)] : []));
  return [
    ...(why.length > 0
      ? [
          { kind: 'heading' as const, text: 'Why, step by step' },
          { kind: 'columns' as const, blocks: why },
        ]
      : []),
    ...[...notes.values()].map((note) => text(`${note.text} (${stepsText(note.steps)})`, 'Note')),
  ];
}

/** The sheet for whoever stands beside the students: who does what when, what must lie ready, what comes out. */
export function teacherSheet(page: MethodPage, { made }: PacketOptions): SheetDocument {
  const { brief, makes, parameters, shop, food } = page;
  const facts = [
    `${makes.pieces} × ${makes.what}`,
    ...parameters.map(({ words }) => words),
    ...(shop === undefined ? [] : [`Shop: ${shop}`]),
    ...(food ? [`Claim: ${food.claim}`] : []),
  ];
  const dangers = dangersOf(page);
  return {
    id: 'teacher',
    sheet: 'teacher',
    steps: [],
    title: `For the teacher: ${page.title}`,
    form: 'sheet',
    blocks: [
      text(`${facts.join(' · ')}.`, 'This case'),
      text(page.for, 'For'),
      text(
        [
          `${timeWords(brief.hands)} hands-on`,
          ...(brief.pieceCost === undefined ? [] : [`${brief.pieceCost} a piece`]),
          ...(brief.price === undefined ? [] : [`price ${brief.price}`]),
        ].join(' · '),
        'In all',
      ),
      ...findingBlocks(page),
      ...supervisionBlocks(page),
      ...(dangers.length > 0
        ? [
            { kind: 'heading' as const, text: 'Dangers, by the numbers of the student’s sheet' },
            { kind: 'columns' as const, blocks: dangers.map(dangerText) },
          ]
        : []),
      ...sessionBlocks(page),
      ...billBlocks(page),
      ...answerBlocks(page),
      ...verdictBlocks(page),
      ...enlargedBlocks(page),
      ...whyBlocks(page),
      text(closingText(page, made)),
    ],
  };
}
