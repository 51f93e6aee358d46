import { allSpecies } from './all.ts';
import type { FigureName, Species } from './types.ts';

/**
 * What alternatives are compared by, each with the spread that counts as one step: side hardness varies by about 20 %
 * between pieces of one wood and shrinkage by about 15 %, so a smaller difference means little.
 */
const measures: readonly { name: FigureName; spread: number }[] = [
  { name: 'sideHardness12', spread: 0.2 },
  { name: 'radialCoefficient', spread: 0.15 },
  { name: 'tangentialCoefficient', spread: 0.15 },
];

/** Where a wood stands by each measure, in steps of its spread, or null where one of the figures is not published. */
function placeOf({ figures }: Species): number[] | null {
  const place = measures.map(({ name, spread }) => Math.log(figures[name]?.value ?? Number.NaN) / spread);
  return place.some(Number.isNaN) ? null : place;
}

const between = (one: readonly number[], other: readonly number[]) =>
  Math.hypot(...one.map((steps, at) => steps - (other[at] ?? Number.NaN)));

/** Distance between two woods in steps of the usual spread, or null where one of the figures is not published. */
export function distance(one: Species, other: Species): number | null {
  const [first, second] = [placeOf(one), placeOf(other)];
  return first && second && between(first, second);
}

/** The woods that can be compared, worked out once: who asks for one wood's alternatives often asks for those of all. */
let placed: readonly { wood: Species; kind: Species['kind']; place: readonly number[] }[] | undefined;

const comparable = () =>
  (placed ??= allSpecies.flatMap((wood) => {
    const place = placeOf(wood);
    return place ? [{ wood, kind: wood.kind, place }] : [];
  }));

/**
 * Woods nearest in hardness and movement, the nearest first; hardwoods for a hardwood, softwoods for a softwood.
 *
 * @param species the wood to replace
 * @param count how many at most
 * @returns none where the wood's hardness or coefficients are not published
 */
export function nearestAlternatives(species: Species, count: number): Species[] {
  const { id, kind } = species;
  const place = placeOf(species);
  if (!place) return [];
  const nearest: { wood: Species; far: number }[] = [];
  for (const other of comparable()) {
    if (other.kind !== kind || other.wood.id === id) continue;
    const far = between(place, other.place);
    const isNearer = (than: { wood: Species; far: number }) =>
      far < than.far || (far === than.far && other.wood.id < than.wood.id);
    const at = nearest.findIndex(isNearer);
    if (at < 0 && nearest.length >= count) continue;
    nearest.splice(at < 0 ? nearest.length : at, 0, { wood: other.wood, far });
    if (nearest.length > count) nearest.pop();
  }
  return nearest.map(({ wood }) => wood);
}
