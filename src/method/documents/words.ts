import type { PaperBlock } from '../../model/evidence/index.ts';
import { amount } from '../../model/quantity/index.ts';
import { minute } from '../../model/quantity/seconds.ts';
import type { MethodPage, ShownBlock, ShownMoment, ShownPart, ShownStep } from '../page/types.ts';

/** Minutes as a marked quantity. */
export const timeWords = (minutes: number): string => amount(minutes * minute, 's', 2);

/** A line without its marks: paper has no links, and values stand where references stood. */
export function plainParts(parts: readonly ShownPart[]): string {
  return parts
    .map((part) => {
      switch (part.kind) {
        case 'text':
        case 'code':
        case 'value':
          return part.text;
        case 'break':
          return ' ';
        case 'link':
          return /^https:/.test(part.href) ? `${plainParts(part.parts)} (${part.href})` : plainParts(part.parts);
        default:
          return plainParts(part.parts);
      }
    })
    .join('')
    .replace(/\s+/g, ' ')
    .trim();
}

const itemText = (blocks: readonly ShownBlock[]): string =>
  blocks
    .map((block) =>
      block.kind === 'paragraph'
        ? plainParts(block.parts)
        : block.items
            .map((item, at) => `${block.start === undefined ? '' : `${block.start + at}. `}${itemText(item)}`)
            .join('; '),
    )
    .join(' ');

/** A text of a method as pieces of a document. */
export function plainBlocks(blocks: readonly ShownBlock[]): PaperBlock[] {
  return blocks.map((block): PaperBlock => {
    if (block.kind === 'paragraph') return { kind: 'text', text: plainParts(block.parts) };
    const { start, items } = block;
    return {
      kind: 'list',
      items: items.map((item, at) => `${start === undefined ? '' : `${start + at}. `}${itemText(item)}`),
    };
  });
}

/** A text of a method in one line. */
export const oneLine = (blocks: readonly ShownBlock[]): string => itemText(blocks);

/** Numbers of steps as they stand in brackets: `2, 4 to 6`. */
export function numbersText(numbers: readonly number[]): string {
  const runs: [number, number][] = [];
  for (const number of [...new Set(numbers)].sort((one, two) => one - two)) {
    const last = runs.at(-1);
    if (last && number === last[1] + 1) last[1] = number;
    else runs.push([number, number]);
  }
  return runs
    .map(([from, to]) => (from === to ? `${from}` : to === from + 1 ? `${from}, ${to}` : `${from} to ${to}`))
    .join(', ');
}

/** `step 4`, `steps 4, 6 to 8`. */
export const stepsText = (numbers: readonly number[]): string =>
  `${numbers.length === 1 ? 'step' : 'steps'} ${numbersText(numbers)}`;

/** A comma before this many characters ends nothing: `Rags, pads and paper` is not to be cut to its first word. */
const leastHead = 24;

/** The first clause of a warning, to recall one that stands in full elsewhere on the paper. */
export function headOf(text: string): string {
  const ends = [/[.;](?=\s|$)/g, /,(?=\s)/g].map((end, at) =>
    [...text.matchAll(end)].map(({ index }) => index).find((index) => at === 0 || index >= leastHead),
  );
  const cut = Math.min(...ends.map((end) => end ?? text.length));
  return text.slice(0, cut);
}

/** What a thing is, without what stands in brackets and what is said of it behind a comma. */
export const shortName = (what: string): string =>
  what
    .replace(/\s*\([^()]*\)/g, '')
    .replace(/\s*,.*$/, '')
    .trim();

/** A mark of the timetable as a reader says it: `Tue 2027-01-19, 18:30`, or `day 8, 18:30` where no day was asked for. */
export function momentText({ date, weekday, time, day }: ShownMoment, relative: boolean): string {
  if (relative) return `day ${day}, ${time}`;
  return `${weekday[0]?.toUpperCase() ?? ''}${weekday.slice(1)} ${date}, ${time}`;
}

/** What is fetched more than once: everything but what belongs to the room, and what is named for everybody. */
const ofTheRoom: readonly string[] = ['ventilation', 'eye-wash', 'fire-extinguisher', 'air-cleaner'];

/** How many of a thing are fetched, where that says something. */
export function countWords({ what, kind, count }: { what: string; kind: string; count: number }): string {
  if (count <= 1 || ofTheRoom.includes(kind) || /\bfor everybody\b/.test(what)) return '';
  return `${count} × `;
}

/** When a step is planned to begin; undefined where there is no timetable. */
export function whenOf({ timetable }: MethodPage, { id }: ShownStep): string | undefined {
  const planned = timetable?.steps.find((step) => step.id === id);
  const moment = planned && timetable?.moments[planned.start];
  return timetable && moment ? momentText(moment, timetable.relative) : undefined;
}

/** Hands-on time of a step over all pieces, min. */
export const handsOf = ({ hands, people }: ShownStep, pieces: number): number =>
  people * (hands.setUp + hands.each * pieces);
