import type { PaperBlock } from '../../model/evidence/index.ts';
import type { MethodPage, ShownStep } from '../page/types.ts';
import { codeOf } from './code.ts';
import { isTrue, scaleBeside } from './scale.ts';
import type { PacketOptions, SheetDocument } from './types.ts';
import { isCountedFrom, waitLines } from './waits.ts';
import { countWords, handsOf, headOf, oneLine, plainBlocks, shortName, stepsText, timeWords, whenOf } from './words.ts';

/** A danger as it stands at the head of a sheet. */
export interface Danger {
  number: number;
  text: string;
  steps: readonly number[];
}

/** Each danger once, numbered in the order of the work. It is told by its words: one caution may say something else in another case. */
export function dangersOf({ steps }: Pick<MethodPage, 'steps'>): Danger[] {
  const found = new Map<string, number[]>();
  for (const { number, cautions } of steps)
    for (const { level, text } of cautions)
      if (level === 'danger') found.set(text, [...(found.get(text) ?? []), number]);
  return [...found].map(([text, numbers], at) => ({ number: at + 1, text, steps: [...new Set(numbers)] }));
}

/** Number of the first step that says each warning in these words. */
function firstSaid({ steps }: MethodPage): ReadonlyMap<string, number> {
  const said = new Map<string, number>();
  for (const { number, cautions } of steps)
    for (const { text } of cautions) if (!said.has(text)) said.set(text, number);
  return said;
}

/** What has been said on the sheet, and where. */
interface Said {
  dangers: readonly Danger[];
  first: ReadonlyMap<string, number>;
}

/** The dangers of a step by number, and the first words of each. */
function dangerLine({ cautions }: ShownStep, { dangers }: Said): PaperBlock[] {
  const own = dangers.filter(({ text }) => cautions.some((each) => each.level === 'danger' && each.text === text));
  if (own.length === 0) return [];
  const text = own.map((danger) => `${danger.number} ${headOf(danger.text)}`).join(' · ');
  return [{ kind: 'text', lead: own.length === 1 ? 'Danger' : 'Dangers', text }];
}

/** Warnings of a step: in full where they first come up, by the number of that step after it. */
function warningLines({ number, cautions }: ShownStep, { first }: Said): PaperBlock[] {
  const warnings = cautions.filter(({ level }) => level === 'warning').map(({ text }) => text);
  const before = [...new Set(warnings.flatMap((text) => first.get(text) ?? []))].filter((step) => step < number);
  return [
    ...warnings
      .filter((text) => first.get(text) === number)
      .map((text): PaperBlock => ({ kind: 'text', lead: 'Mind', text })),
    ...(before.length > 0 ? [{ kind: 'text' as const, lead: 'Mind', text: `as in ${stepsText(before)}.` }] : []),
  ];
}

/** What is worn, by kind: a word is enough where it is worn at most steps. */
const worn: Readonly<Record<string, string>> = {
  'eye-protection': 'eye protection',
  'hearing-protection': 'hearing protection',
  respirator: 'mask',
  apron: 'apron',
  gloves: 'gloves',
};

/** What is taken for a step and worn at it, in short; the whole names stand at the head of the sheet. */
function handBlocks({ tools, uses }: ShownStep): PaperBlock[] {
  const things = [...tools, ...uses];
  const line = (lead: string, words: readonly string[]): PaperBlock[] =>
    words.length > 0 ? [{ kind: 'text', lead, text: `${[...new Set(words)].join(', ')}.` }] : [];
  return [
    ...line(
      'Wear',
      things.flatMap(({ kind }) => worn[kind] ?? []),
    ),
    ...line(
      'At hand',
      things.flatMap(({ kind, what }) => (worn[kind] ? [] : [shortName(what)])),
    ),
  ];
}

function besideOf(step: ShownStep): PaperBlock[] {
  const { tell, wrong, measures, calculations } = step;
  return [
    ...(measures.length > 0
      ? [
          {
            kind: 'measured' as const,
            rows: measures.map(({ label, expected, between }) => ({
              label,
              expected,
              ...(between === undefined ? {} : { between }),
            })),
          },
        ]
      : []),
    ...(tell ? [{ kind: 'text' as const, lead: 'Right when', text: oneLine(tell) }] : []),
    ...(wrong ? [{ kind: 'text' as const, lead: 'Goes wrong', text: oneLine(wrong) }] : []),
    // What is enlarged to be seen is to be understood, and nothing to work by: the teacher's sheet has it.
    ...calculations.flatMap(({ drawings }) =>
      drawings.filter(isTrue).map((drawing) => ({ kind: 'drawing' as const, drawing, scale: scaleBeside(drawing) })),
    ),
  ];
}

/** Room for the hour that a later step is counted from. */
function hourBlocks(page: MethodPage, step: ShownStep): PaperBlock[] {
  const counts = isCountedFrom(page, step);
  return counts === undefined
    ? []
    : [{ kind: 'blanks', labels: [counts === 'start' ? 'Begun: day, hour' : 'Done: day, hour'] }];
}

function stepBlock(page: MethodPage, step: ShownStep, said: Said, byOthers: readonly string[]): PaperBlock {
  const hands = handsOf(step, page.makes.pieces);
  const when = [
    whenOf(page, step),
    ...(hands > 0 ? [`${timeWords(hands)} of work${step.people > 1 ? `, ${step.people} people` : ''}`] : []),
  ]
    .filter(Boolean)
    .join(' · ');
  const held = step.interrupt === 'never' ? ['Do not leave it before it is done.'] : [];
  return {
    kind: 'step',
    number: step.number,
    title: step.title,
    ...(when ? { when } : {}),
    // What is waited for, worn, at hand and dangerous is read before the work begins.
    blocks: [
      ...byOthers.map((text): PaperBlock => ({ kind: 'text', text, strong: true })),
      ...waitLines(page, step).map((text): PaperBlock => ({ kind: 'text', text, strong: true })),
      ...held.map((text): PaperBlock => ({ kind: 'text', text, strong: true })),
      ...handBlocks(step),
      ...dangerLine(step, said),
      ...warningLines(step, said),
      ...plainBlocks(step.does),
      ...step.missed.map((text): PaperBlock => ({ kind: 'text', lead: 'Missed', text })),
    ],
    beside: [...besideOf(step), ...hourBlocks(page, step)],
  };
}

/** A danger at the head of a sheet. */
export const dangerText = ({ number, text, steps }: Danger): PaperBlock => ({
  kind: 'text',
  lead: `${number}`,
  text: `${text} (${stepsText(steps)})`,
});

/** What is in reach before the first step: tools, and what is used up. */
function readyBlocks({ tools, materials }: MethodPage): PaperBlock[] {
  const lines = {
    Tools: tools.map((tool) => `${countWords(tool)}${tool.what}`),
    'Used up': materials.map(({ what, need }) => `${what}${need === undefined ? '' : `: ${need}`}`),
  };
  return Object.entries(lines).flatMap(([lead, items]) =>
    items.length === 0 ? [] : [{ kind: 'text' as const, lead, text: `${items.join('; ')}.` }],
  );
}

/** What stops the method as it stands, before anything that could be taken for a go-ahead. */
export const stopBlocks = ({ findings, impossible }: Pick<MethodPage, 'findings' | 'impossible'>): PaperBlock[] => {
  const stops = findings
    .filter(({ level, excepted }) => level === 'stop' && excepted === undefined)
    .map(({ number, message, wayOut }) => `${number === undefined ? '' : `Step ${number}: `}${message} ${wayOut}`);
  const untimed = impossible ? [`There is no timetable for it. ${impossible.why}`] : [];
  return [...stops, ...untimed].map((text) => ({
    kind: 'warning',
    level: 'danger',
    text: `Do not begin by this sheet. ${text}`,
  }));
};

/** Lines at the foot of a sheet: which text of which day it is, and whose rules stand above it. */
export const closingText = (page: MethodPage, made: string): string =>
  [
    ...(page.version === undefined ? [] : [`Method of ${page.version}.`]),
    `Printed ${made}.`,
    'Local codes, the makers’ data sheets and the machines’ manuals come before this sheet.',
  ].join(' ');

/**
 * The sheet that somebody with nothing else in hand works by.
 *
 * @param byOthers steps that somebody else does, by id: what stands first in them
 */
export function studentSheet(
  page: MethodPage,
  { made, for: reader, address }: PacketOptions,
  byOthers: ReadonlyMap<string, readonly string[]> = new Map(),
): SheetDocument {
  const said = { dangers: dangersOf(page), first: firstSaid(page) };
  const { makes, parameters, food } = page;
  const facts = [
    `${makes.pieces} × ${makes.what}`,
    ...parameters.map(({ words }) => words),
    ...(food ? [`Claim: ${food.claim}`] : []),
  ];
  return {
    id: 'student',
    sheet: 'student',
    steps: [],
    title: page.title,
    form: 'sheet',
    blocks: [
      reader
        ? { kind: 'text', lead: 'Made for', text: reader }
        : { kind: 'blanks', labels: ['Made for', 'Piece, date'] },
      ...stopBlocks(page),
      { kind: 'text', lead: 'This case', text: `${facts.join(' · ')}.` },
      ...(said.dangers.length > 0
        ? [
            { kind: 'heading' as const, text: 'What can hurt you: read this first' },
            { kind: 'columns' as const, blocks: said.dangers.map(dangerText) },
          ]
        : []),
      { kind: 'heading', text: 'Have ready' },
      ...readyBlocks(page),
      {
        kind: 'columns',
        blocks: [
          { kind: 'heading', text: 'Steps: tick each when it is right' },
          ...page.steps.map((step) => stepBlock(page, step, said, byOthers.get(step.id) ?? [])),
          ...(address === undefined
            ? []
            : [codeOf(address, 'This case, worked out, with what every number rests on:')]),
          { kind: 'text', text: closingText(page, made) },
        ],
      },
    ],
  };
}
