import type { MethodPage, ShownStep } from './types.ts';

/** What of a page is not as it was told last: most answers change a few steps of thirty, and a timetable none. */
export interface PagePatch {
  /** The parts that are new or other. */
  parts: Partial<Omit<MethodPage, 'steps'>>;
  /** Names of the parts that are there no longer. */
  gone: readonly string[];
  /** Every step in its order: itself, or its place from 0 among those told last. */
  steps: readonly (ShownStep | number)[];
}

/** A page without what only a printed sheet shows. */
export const withoutDocuments = (page: MethodPage): MethodPage => ({
  ...page,
  steps: page.steps.map((step) => ({
    ...step,
    calculations: step.calculations.map((calculation) => ({ ...calculation, documents: [] })),
  })),
});

/** Tells pages one after another to somebody who keeps the last one. */
export class PageTeller {
  #parts = new Map<string, string>();
  #steps: readonly string[] = [];

  /** What is other than in the page before; all of the first. */
  tell({ steps, ...rest }: MethodPage): PagePatch {
    const parts = new Map(
      Object.entries(rest).flatMap(([name, value]): [string, string][] =>
        value === undefined ? [] : [[name, JSON.stringify(value)]],
      ),
    );
    const written = steps.map((step) => JSON.stringify(step));
    const places = new Map(this.#steps.map((text, at) => [text, at]));
    const patch: PagePatch = {
      parts: Object.fromEntries(
        Object.entries(rest).filter(([name]) => parts.get(name) !== this.#parts.get(name)),
      ) as PagePatch['parts'],
      gone: [...this.#parts.keys()].filter((name) => !parts.has(name)),
      steps: steps.map((step, at) => places.get(written[at] as string) ?? step),
    };
    this.#parts = parts;
    this.#steps = written;
    return patch;
  }
}

/** The page that a patch makes of the one before; what did not change is the same object as before, so that a view need not draw it again. */
export function patched(before: MethodPage | undefined, { parts, gone, steps }: PagePatch): MethodPage {
  const left = Object.fromEntries(Object.entries(before ?? {}).filter(([name]) => !gone.includes(name)));
  return {
    ...left,
    ...parts,
    steps: steps.map((step) => (typeof step === 'number' ? (before?.steps[step] as ShownStep) : step)),
  } as MethodPage;
}
