import { type Basis, bases, type Figure } from '../evidence/index.ts';
import { allSpecies } from './all.ts';
import { type FigureName, figureNames, type Species } from './types.ts';

/** Number of resolved figures of each basis, and of names without a figure. */
export interface BasisCounts {
  figures: Readonly<Record<Basis, number>>;
  notPublished: number;
}

/** Count the resolved figures of woods by basis. */
export function countByBasis(woods: readonly Species[] = allSpecies): BasisCounts {
  const figures = Object.fromEntries(bases.map((basis) => [basis, 0])) as Record<Basis, number>;
  let notPublished = 0;
  for (const wood of woods) {
    for (const name of figureNames) {
      const figure = wood.figures[name];
      if (figure === null) notPublished += 1;
      else figures[figure.basis] += 1;
    }
  }
  return { figures, notPublished };
}

/** Figures that still rest on memory, wood by wood, for a reader who has the book to check. */
export function memoryFigures(
  woods: readonly Species[] = allSpecies,
): { wood: Species; name: FigureName; figure: Figure }[] {
  return woods.flatMap((wood) =>
    figureNames.flatMap((name) => {
      const figure = wood.figures[name];
      return figure?.basis === 'memory' ? [{ wood, name, figure }] : [];
    }),
  );
}
