import { amount, listed } from '../../model/quantity/index.ts';
import { sealCoatName } from '../../model/resin/dose.ts';
import type { FillShape } from '../../model/resin/shapes.ts';
import type { DosePlan } from './plan.ts';

/** Places that are alike, by their numbers in the list of shapes, and the mix that goes into each. */
export interface Alike {
  from: number;
  to: number;
  /** What they are called, where they have names: no number then stands for one of them. */
  names: readonly string[];
  shape: FillShape;
  /** g into each of them: as seal coat, and in all layers and colours together. */
  seal: number;
  fill: number;
}

/** The places of a plan, those alike and next to each other as one; empty where it was not given as shapes. */
export function alikeOf({ place: { pieces = [] }, dose }: DosePlan): Alike[] {
  const rows: Alike[] = [];
  for (const [index, { name, shape, fill, bare }] of pieces.entries()) {
    const names = name === undefined ? [] : [name];
    const last = rows.at(-1);
    if (last && JSON.stringify(last.shape) === JSON.stringify(shape)) {
      last.to = index + 1;
      last.names = [...last.names, ...names];
    } else rows.push({ from: index + 1, to: index + 1, names, shape, seal: dose.seal * bare, fill: dose.fill * fill });
  }
  return rows;
}

/** Names of some places, or their numbers where they have none: `3`, or `1 to 12`. */
export const calledOf = ({ from, to, names }: Pick<Alike, 'from' | 'to' | 'names'>): string => {
  if (names.length > 0) return listed(names);
  return from === to ? `${from}` : `${from} to ${to}`;
};

/** How a column of what a cup fills is headed: a number alone must be said to be one of a piece. */
export const fillsLabel = ({ place: { pieces = [] } }: DosePlan): string =>
  pieces.some(({ name }) => name !== undefined) ? 'Fills' : 'Fills pieces';

/** A shape as words, its lengths in the reader's units. */
export function shapeWords(shape: FillShape): string {
  const [one, two] = shape.kind === 'ring' ? [shape.outer, shape.inner] : [shape.length, shape.width];
  return `${shape.kind}, ${amount(one, 'mm', 4)} by ${amount(two, 'mm', 4)}`;
}

const closeTo = 1e-6;

/**
 * Which places each cup fills, in the order of mixing; empty texts where it cannot be said: places not given as shapes, or several
 * colours, of which nobody says where they lie.
 */
export function filledBy({ cups, colours, place: { pieces = [] } }: DosePlan): string[] {
  if (pieces.length < 2 || colours.length > 1) return cups.map(() => '');
  const masses = new Map<string, number>();
  for (const { stage, mass } of cups) masses.set(stage, (masses.get(stage) ?? 0) + mass);
  const done = new Map<string, number>();
  return cups.map(({ stage, mass }) => {
    const from = done.get(stage) ?? 0;
    const to = from + mass / (masses.get(stage) as number);
    done.set(stage, to);
    return spanWords(
      pieces.map(({ name, bare, fill }) => ({ name, share: stage === sealCoatName ? bare : fill })),
      from,
      to,
    );
  });
}

/** The places between two shares of the whole: `1 to 3`, `1 to 3 and part of 4`, `Oak tray and part of Ash tray`. */
function spanWords(pieces: readonly { name: string | undefined; share: number }[], from: number, to: number): string {
  let end = 0;
  const whole: number[] = [];
  const part: number[] = [];
  for (const [index, { share }] of pieces.entries()) {
    const start = end;
    end += share;
    const [low, high] = [Math.max(start, from), Math.min(end, to)];
    // A sliver is what rounding makes of a cup that just fills its places.
    if (high - low < 0.02 * share + closeTo) continue;
    (high - low > 0.98 * share - closeTo ? whole : part).push(index + 1);
  }
  const [first, last] = [whole[0], whole.at(-1)];
  return listed([
    ...(first !== undefined && last !== undefined
      ? [calledOf({ from: first, to: last, names: namesOf(pieces.slice(first - 1, last)) })]
      : []),
    ...part.map((number) => `part of ${pieces[number - 1]?.name ?? number}`),
  ]);
}

const namesOf = (pieces: readonly { name: string | undefined }[]) => pieces.flatMap(({ name }) => name ?? []);
