import type { Block, ResultDocument, ResultTable } from '../../model/evidence/index.ts';
import { piecesWords } from '../plan/words.ts';
import { answerFor, finishesOf, woodsOf } from '../rules/kit.ts';
import { lastEnd, layersOf, servesFrom } from './label.ts';
import type { BatchEntry, BatchRecord } from './record.ts';
import type { ShownEntry } from './standing.ts';
import type { WorkedBatch } from './state.ts';

/** What was made of what, in words. */
export interface MadeOf {
  wood: string;
  resin: string;
  finish: string;
}

/** Wood, resin and finish of a batch by their names. */
export function madeOf(batch: WorkedBatch): MadeOf {
  const { worked } = batch.measured;
  const resins = layersOf(batch).resin.flatMap((layer) => {
    const resin = answerFor(worked, layer, 'cure-clock')?.inputs?.['resin'] as { name?: unknown } | undefined;
    return typeof resin?.name === 'string' ? [resin.name] : [];
  });
  const names = (things: readonly string[]) => [...new Set(things)].join(', ');
  return {
    wood: names(woodsOf(worked).map(({ thing }) => thing.name)),
    resin: names(resins),
    finish: names(finishesOf(worked).map(({ thing }) => thing.name)),
  };
}

const table = (id: string, title: string, columns: readonly string[], rows: ResultTable['rows']): Block[] =>
  rows.length === 0
    ? []
    : [
        {
          kind: 'table',
          table: {
            id,
            title,
            columns: columns.map((label) => ({ id: label.toLowerCase().replaceAll(' ', '-'), label })),
            rows,
            basis: 'shop-practice',
          },
        },
      ];

const list = (heading: string, items: readonly string[]): Block[] =>
  items.length === 0 ? [] : [{ kind: 'list', heading, items: [...new Set(items)] }];

/** What an entry says, as a line of the record. */
export function entryWords(
  entry: BatchEntry,
  { measured, momentText }: Pick<WorkedBatch, 'measured' | 'momentText'>,
): string {
  const { worked } = measured;
  const titleOf = (id: string) => `“${worked.steps.find((step) => step.id === id)?.record.title ?? id}”`;
  const at = (text: string) => momentText(Date.parse(text));
  switch (entry.kind) {
    case 'started':
    case 'finished':
      return `${titleOf(entry.step)}${piecesWords(entry.pieces ?? [1, worked.pieces], worked.pieces)} ${entry.kind} ${at(entry.when)}`;
    case 'reading': {
      const label = measured.readable
        .get(entry.step)
        ?.find(({ calculation, input }) => calculation === entry.calculation && input === entry.input)?.label;
      return `${titleOf(entry.step)}: ${label ?? `${entry.calculation}, ${entry.input}`} ${entry.value}, read ${at(entry.when)}`;
    }
    case 'lot':
      return `Lot of ${lotWords(entry, batchMaterials(worked))}: ${entry.lot}`;
    case 'deviation':
      return `${entry.step === undefined ? 'Otherwise' : `Otherwise at ${titleOf(entry.step)}`}, ${at(entry.when)}: ${entry.text}`;
    case 'correction':
      return `Struck: ${entry.why}`;
  }
}

type Materials = Readonly<Record<string, { record: { what: string } }>>;
const batchMaterials = (worked: { materials: Materials }): Materials => worked.materials;

function lotWords({ material, what }: Extract<BatchEntry, { kind: 'lot' }>, materials: Materials): string {
  const known =
    material !== undefined && Object.hasOwn(materials, material) ? materials[material]?.record.what : material;
  return [known, what].filter(Boolean).join(', ') || 'something';
}

/** The page of a batch, for the file of the shop: lots, days, readings, cure, what was done otherwise. Nothing struck is left out. */
export function batchPage(record: BatchRecord, batch: WorkedBatch): ResultDocument {
  const { state, standing, measured, momentText } = batch;
  const { worked } = measured;
  const { resin, finish } = layersOf(batch);
  const made = madeOf(batch);
  const of = <Kind extends BatchEntry['kind']>(kind: Kind) =>
    standing.holding.filter((entry): entry is Extract<BatchEntry, { kind: Kind }> => entry.kind === kind);
  const dated = (id: string) => {
    const runs = batch.done.runs.filter(({ step, doubt }) => step === id && doubt === undefined);
    const starts = runs.flatMap(({ start }) => start ?? []);
    const end = lastEnd(batch, id);
    return [starts.length > 0 ? momentText(Math.min(...starts)) : null, end === undefined ? null : momentText(end)];
  };
  const titleOf = (id: string) => worked.steps.find((step) => step.id === id)?.record.title ?? id;
  const cures = resin.map((layer) => {
    const from = servesFrom(batch, layer);
    if (typeof from !== 'number') return from.why;
    const end = lastEnd(batch, layer.id) as number;
    return `“${layer.record.title}” done ${momentText(end)}; by the temperature that was measured its resin may come near food from ${momentText(from)} on.`;
  });
  const blocks: Block[] = [
    { kind: 'text', text: record.title, large: true },
    {
      kind: 'list',
      heading: 'Made',
      items: [
        `${worked.record.makes.what}, ${worked.pieces} ${worked.pieces === 1 ? 'piece' : 'pieces'}`,
        `By the method “${worked.record.title}”${worked.record.version === undefined ? '' : `, version ${worked.record.version}`}`,
        `Opened ${momentText(Date.parse(record.opened))}; ${state.finished ? 'every step is done' : 'not every step is done yet'}`,
      ],
    },
    ...list('Wood', [made.wood].filter(Boolean)),
    ...list('Resin', [made.resin].filter(Boolean)),
    ...list('Finish', [made.finish].filter(Boolean)),
    ...list('Cure', cures),
    ...list(
      'Last coat',
      finish.slice(-1).map(({ id, record: { title } }) => {
        const end = lastEnd(batch, id);
        return end === undefined ? `“${title}” is not done.` : `“${title}” done ${momentText(end)}.`;
      }),
    ),
    ...table(
      'lots',
      'Lots',
      ['Material', 'Lot', 'Written down'],
      of('lot').map((entry) => [lotWords(entry, worked.materials), entry.lot, momentText(Date.parse(entry.at))]),
    ),
    ...table(
      'dates',
      'Steps',
      ['Step', 'Begun', 'Done'],
      worked.steps.map(({ id, record: { title } }, at) => [`${at + 1} ${title}`, ...dated(id)]),
    ),
    ...table(
      'readings',
      'Readings',
      ['At', 'What', 'Read', 'Planned', 'When'],
      of('reading').map((entry) => {
        const input = measured.readable
          .get(entry.step)
          ?.find(({ calculation, input: name }) => calculation === entry.calculation && name === entry.input);
        return [
          titleOf(entry.step),
          input?.label ?? `${entry.calculation}, ${entry.input}`,
          entry.value,
          input?.planned ?? null,
          momentText(Date.parse(entry.when)),
        ];
      }),
    ),
    ...list(
      'Done otherwise',
      of('deviation').map((entry) => entryWords(entry, batch)),
    ),
    ...list(
      'To be put right',
      state.problems.map(({ text }) => text),
    ),
    ...list(
      'Struck, and left in the record',
      standing.all.flatMap((shown) => struckWords(shown, batch)),
    ),
    {
      kind: 'text',
      text: 'Photographs are not kept in this record: put their names under what was done otherwise.',
      small: true,
    },
    { kind: 'blanks', labels: ['Looked at', 'Name', 'Day'] },
  ];
  return { id: 'batch', title: `Record of a batch: ${record.title}`, form: 'sheet', blocks };
}

const struckWords = ({ entry, struck }: ShownEntry, batch: WorkedBatch): string[] =>
  struck ? [`${entryWords(entry, batch)}. Struck ${batch.momentText(Date.parse(struck.at))}: ${struck.why}`] : [];
