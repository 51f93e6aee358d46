import type { AbrasiveRecord } from './record.ts';
import committed from './sanding.json' with { type: 'json' };

type Of<Is extends AbrasiveRecord['is']> = Omit<Extract<AbrasiveRecord, { is: Is }>, 'is' | 'order'>;

/** What a tool leaves on wood or resin, and the grade that takes its marks out. */
export type StartSurface = Of<'surface'>;

/** A finish and the last grade before it: the sheet of the finish wins. */
export type FinishKind = Of<'finish'>;

/** How the sanding is done, and how fast: minutes for a square metre and one grade, and square metres from one disc or sheet. */
export type SandingMethod = Of<'method'>;

function those<Is extends AbrasiveRecord['is']>(which: Is): Of<Is>[] {
  return (committed as AbrasiveRecord[])
    .filter(({ is }) => is === which)
    .map(({ is, order, ...rest }) => rest as unknown as Of<Is>);
}

/** Surfaces that sanding starts from, coarsest first. */
export const startSurfaces: readonly StartSurface[] = those('surface');

/** The starting surface of this id. */
export function startSurfaceById(id: string): StartSurface | undefined {
  return startSurfaces.find((surface) => surface.id === id);
}

/** Finishes, by what they ask of the surface. */
export const finishKinds: readonly FinishKind[] = those('finish');

/** The finish of this id. */
export function finishKindById(id: string): FinishKind | undefined {
  return finishKinds.find((finish) => finish.id === id);
}

/** Ways of sanding. Common practice, to a factor of two. */
export const sandingMethods: readonly SandingMethod[] = those('method');

/** The method of this id. */
export function sandingMethodById(id: string): SandingMethod | undefined {
  return sandingMethods.find((method) => method.id === id);
}
