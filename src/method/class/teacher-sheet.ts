import { type PaperBlock, type ResultTable, verdictWords } from '../../model/evidence/index.ts';
import { amount, formatNumber, unitLabel } from '../../model/quantity/index.ts';
import { moneyWords } from '../cost/index.ts';
import { billTable } from '../documents/bill-table.ts';
import { dangersOf, dangerText } from '../documents/student.ts';
import { supervisionBlocks, whyBlocks } from '../documents/teacher.ts';
import type { SheetDocument } from '../documents/types.ts';
import { countWords } from '../documents/words.ts';
import type { MethodPage } from '../page/types.ts';
import type { ClassPage } from './types.ts';

const text = (words: string, lead?: string): PaperBlock => ({
  kind: 'text',
  text: words,
  ...(lead === undefined ? {} : { lead }),
});

const heading = (words: string): PaperBlock => ({ kind: 'heading', text: words });

const tableOf = (id: string, columns: readonly string[], rows: ResultTable['rows']): PaperBlock => ({
  kind: 'table',
  table: {
    id,
    title: '',
    columns: columns.map((label, at) => ({ id: `column-${at + 1}`, label })),
    rows,
    basis: 'derived',
  },
});

const levelWords = { stop: 'Stops it', warn: 'Mind', note: 'Note' } as const;

/** What stands in the room for all: a student's sheet names what that student takes and tells no number. */
const readyBlocks = ({ tools }: MethodPage): PaperBlock[] =>
  tools.length === 0
    ? []
    : [
        heading('Have ready for all'),
        text(`${tools.map((tool) => `${countWords(tool)}${tool.what}`).join('; ')}.`, 'Tools'),
        text('What is used up stands in the order.', 'Stuff'),
      ];

const placeBlocks = ({ places }: ClassPage): PaperBlock[] => [
  heading('The places'),
  tableOf(
    'places',
    ['Place', 'Name', 'What differs'],
    places.map(({ id, name, differs, problems }) => [
      id,
      name ?? '',
      problems.length > 0
        ? `Cannot be worked out: ${problems.map(({ message }) => message).join(' ')}`
        : differs.join('; ') || 'nothing',
    ]),
  ),
];

const findingBlocks = ({ findings }: ClassPage): PaperBlock[] =>
  findings.length === 0
    ? []
    : [
        heading('What the rules say of it'),
        ...findings.map(({ level, places, step, message, wayOut }) => {
          const where = [...(places.length > 0 ? [`places ${places.join(', ')}`] : []), ...(step ? [step] : [])];
          return text(`${message} ${wayOut}${where.length > 0 ? ` (${where.join('; ')})` : ''}`, levelWords[level]);
        }),
      ];

function orderBlocks({ order, places }: ClassPage, withShop: boolean): PaperBlock[] {
  const who = (ids: readonly string[]) => (ids.length === places.length ? 'all' : ids.join(', '));
  const money = (sum: number) => moneyWords(sum, { code: order.currency });
  const priced = order.lines.some(({ cost }) => cost !== null);
  return [
    heading('One order for all'),
    ...order.errors.map((words) => text(words)),
    ...billTable(
      'order',
      order.lines.map(({ what, need, unit, kept, buy, packs, cost, missing, from, unknown }) => ({
        what,
        need: need > 0 ? amount(need, unit, 3, kept === true) : '',
        buy: [
          buy === 0 && need > 0
            ? 'on the shelf'
            : packs
                .map(({ size, count }) => `${count} × ${formatNumber(size.value, 4)} ${unitLabel(size.unit)}`.trim())
                .join(' + '),
          ...unknown.map((each) => `not known for ${who(each.places)}: ${each.why}`),
        ]
          .filter(Boolean)
          .join('; '),
        cost: (buy === 0 && need > 0) || cost === null ? '' : money(cost),
        ...(cost === null && !(buy === 0 && need > 0) ? { missing: missing ?? 'no price' } : {}),
        places: who([...new Set(from.flatMap((each) => each.places))]),
      })),
      withShop,
    ),
    ...(priced
      ? [
          text(
            `To pay now ${money(order.bought)}${order.without.length > 0 ? `, without ${order.without.length} of ${order.lines.length} lines that have no price` : ''}.`,
          ),
        ]
      : []),
  ];
}

const mixBlocks = ({ mixes, places }: ClassPage): PaperBlock[] =>
  mixes.length === 0
    ? []
    : [
        heading('Resin, by colour: each on a mixing sheet of its own'),
        ...mixes.map(({ step, colour, resin, places: ids, verdict, errors }) =>
          text(
            `${ids.length === places.length ? 'All places' : `Places ${ids.join(', ')}`}. ${
              verdict ? `${verdictWords[verdict.level]}. ${verdict.text}` : errors.join(' ')
            }`,
            `Step ${step.number}, ${[colour, resin].filter(Boolean).join(', ')}`,
          ),
        ),
      ];

function sessionBlocks({ sessions, timeless, places, zone }: ClassPage): PaperBlock[] {
  const who = (ids: readonly string[]) => (ids.length === places.length ? 'all' : ids.join(', '));
  if (timeless)
    return [
      heading('Timetable'),
      text([timeless.why, ...timeless.changes.map((change) => `${change}.`)].join(' '), 'None'),
    ];
  return [
    heading(`Timetable, and who stands at which machine (${zone})`),
    ...sessions.flatMap(({ number, from, to, who: there, work }): PaperBlock[] => [
      heading(`Session ${number}: ${from} to ${to}${there ? ', without students' : ''}`),
      tableOf(
        `session-${number}`,
        ['Time', 'Step', 'Machines', 'Places, in turn'],
        work.map((each) => [
          `${each.from} to ${each.to}`,
          `${each.number}. ${each.title}`,
          each.machines.map(({ count, what }) => `${count} × ${what}`).join('; '),
          there
            ? 'the teacher'
            : each.once
              ? 'once for all'
              : each.machines.length > 0
                ? each.turns.map((turn) => `${turn.from} ${who(turn.places)}`).join('; ')
                : who(each.places),
        ]),
      ),
    ]),
  ];
}

/**
 * The sheet of whoever leads a class: its places, timetable with the turns at the machines, one order, what is mixed.
 *
 * @param whole the method for as many pieces as there are places
 */
export function classTeacherSheet(page: ClassPage, whole: MethodPage, made: string): SheetDocument {
  const dangers = dangersOf(whole);
  return {
    id: 'teacher',
    sheet: 'teacher',
    steps: [],
    title: `For the teacher: ${page.name}`,
    form: 'sheet',
    blocks: [
      text(`${page.method.title}, ${page.places.length} places, ${page.people} people in the room.`, 'This class'),
      ...page.notes.map((words) => text(words, 'Note')),
      ...findingBlocks(page),
      ...placeBlocks(page),
      ...supervisionBlocks(whole),
      ...(dangers.length > 0
        ? [heading('Dangers'), { kind: 'columns' as const, blocks: dangers.map(dangerText) }]
        : []),
      ...readyBlocks(whole),
      ...sessionBlocks(page),
      ...mixBlocks(page),
      ...orderBlocks(page, whole.shop !== undefined),
      ...whyBlocks(whole),
      text(`Printed ${made}. Local codes, the makers’ data sheets and the machines’ manuals come before this sheet.`),
    ],
  };
}
