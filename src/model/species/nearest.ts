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

/** Distance between two woods in steps of the usual spread, or null where one of the figures is not published. */
export function distance(one: Species, other: Species): number | null {
  let sum = 0;
  for (const { name, spread } of measures) {
    const first = one.figures[name]?.value;
    const second = other.figures[name]?.value;
    if (first === undefined || second === undefined) return null;
    sum += (Math.log(first / second) / spread) ** 2;
  }
  return Math.sqrt(sum);
}

/**
 * Woods nearest in hardness and movement, the nearest first; hardwoods for a hardwood, softwoods for a softwood.
 *
 * @param species the wood to replace
 * @param count how many at most
 * @returns none where the wood's hardness or coefficients are not published
 */
export function nearestAlternatives(species: Species, count: number): Species[] {
  return allSpecies
    .flatMap((wood) => {
      if (wood.id === species.id || wood.kind !== species.kind) return [];
      const far = distance(species, wood);
      return far === null ? [] : [{ wood, far }];
    })
    .sort((one, other) => one.far - other.far || (one.wood.id < other.wood.id ? -1 : 1))
    .slice(0, Math.max(0, count))
    .map(({ wood }) => wood);
}
