import type { MethodPage, ShownCalculation } from './types.ts';

/**
 * What of a page is not as it was told last: another value, or changes within what stands there, by name or place. Most answers change a few figures
 * of a few steps, and a timetable none.
 */
export type PagePatch =
  | { is: unknown }
  | { within: readonly (readonly [string, PagePatch])[]; gone: readonly string[] };

/** Calculations without their papers, by those with them: the same one is the same again. */
const bare = new WeakMap<ShownCalculation, ShownCalculation>();

/** Without looking at its papers and its drawings, which would be made for it. */
function withoutItsDocuments(calculation: ShownCalculation): ShownCalculation {
  const known = bare.get(calculation);
  if (known) return known;
  const made = withDrawings(calculation, () => calculation.drawings);
  bare.set(calculation, made);
  return made;
}

/** A calculation with other drawings, which are looked at when they are asked for, and without papers. */
function withDrawings(calculation: ShownCalculation, drawings: () => ShownCalculation['drawings']): ShownCalculation {
  const parts = Object.getOwnPropertyDescriptors(calculation);
  const own = { enumerable: true, configurable: true };
  return Object.defineProperties({} as ShownCalculation, {
    ...parts,
    drawings: { ...own, get: drawings },
    documents: { ...own, value: [], writable: true },
  });
}

/** A page without what only a printed sheet shows. */
export const withoutDocuments = (page: MethodPage): MethodPage => ({
  ...page,
  steps: page.steps.map((step) => ({ ...step, calculations: step.calculations.map(withoutItsDocuments) })),
});

type Tree = Readonly<Record<string, unknown>>;
const isTree = (value: unknown): value is Tree => typeof value === 'object' && value !== null;

/** Whether changes can be told within: lists of another length are told anew. */
const isAlike = (one: Tree, other: Tree) =>
  Array.isArray(one) === Array.isArray(other) && (!Array.isArray(one) || one.length === other['length']);

/** Whether two have the same names in the same order, as nearly all that is told twice. */
const hasSameNames = (one: readonly string[], other: readonly string[]) =>
  one.length === other.length && one.every((name, at) => name === other[at]);

/** What of plain data differs from the data before; undefined where nothing does. */
function changeOf(before: unknown, after: unknown): PagePatch | undefined {
  if (Object.is(before, after)) return undefined;
  if (!isTree(before) || !isTree(after) || !isAlike(before, after)) return { is: after };
  const [old, names] = [Object.keys(before), Object.keys(after)];
  const isSame = hasSameNames(old, names);
  const within: [string, PagePatch][] = [];
  for (const name of names) {
    const change = isSame || Object.hasOwn(before, name) ? changeOf(before[name], after[name]) : { is: after[name] };
    if (change) within.push([name, change]);
  }
  const gone = isSame ? [] : old.filter((name) => !Object.hasOwn(after, name));
  // What is new comes last, and a page shows figures in their order: one that is new among the others is told with all of them.
  const kept = isSame ? names : old.filter((name) => Object.hasOwn(after, name));
  if (!isSame && names.some((name, at) => at < kept.length && name !== kept[at])) return { is: after };
  return within.length > 0 || gone.length > 0 ? { within, gone } : undefined;
}

function changed(before: unknown, patch: PagePatch): unknown {
  if ('is' in patch) return patch.is;
  const { within, gone } = patch;
  if (within.length === 0 && gone.length === 0) return before;
  const after = (Array.isArray(before) ? [...before] : { ...(before as Tree) }) as Record<string, unknown>;
  for (const name of gone) delete after[name];
  // A name of a method's own may be one that every object has.
  for (const [name, change] of within)
    Object.defineProperty(after, name, {
      value: changed(Object.hasOwn(after, name) ? after[name] : undefined, change),
      enumerable: true,
      configurable: true,
      writable: true,
    });
  return after;
}

/** The page, and while its own timetable is worked out the one before, so that what stands below stays where it is. */
export function withTimetableOf(page: MethodPage, before: MethodPage | undefined): MethodPage {
  const { toCome, timetable, ...rest } = page;
  if (toCome !== 'judgement' && toCome !== 'timetable') return page;
  if (timetable || !before?.timetable) return page;
  const { lasts } = before.brief;
  const brief = lasts === undefined ? page.brief : { ...page.brief, lasts };
  // In the order in which a page with a timetable of its own has them: what is told is what differs.
  return { ...rest, brief, timetable: before.timetable, toCome };
}

/** The page with the drawings of the one before, until its figures are told: a drawing of an outline takes as long as all that it is drawn from. */
function withDrawingsOf(page: MethodPage, before: MethodPage | undefined): MethodPage {
  if (page.toCome !== 'judgement' || !before) return page;
  const steps = page.steps.map((step) => {
    const drawn = before.steps.find(({ id }) => id === step.id)?.calculations ?? [];
    return {
      ...step,
      calculations: step.calculations.map((calculation) => {
        const old = drawn.find(({ name }) => name === calculation.name);
        return old === undefined || old === calculation ? calculation : withDrawings(calculation, () => old.drawings);
      }),
    };
  });
  return { ...page, steps };
}

/** Tells pages one after another to somebody who keeps the last one. A page that was told is not changed any more. */
export class PageTeller {
  #told: MethodPage | undefined;

  /**
   * What is other than in the page before; all of the first.
   *
   * @param follows true where the timetable and the drawings before are to stand until the page has its own
   */
  tell(told: MethodPage, follows = false): PagePatch {
    const page = follows ? withDrawingsOf(withTimetableOf(told, this.#told), this.#told) : told;
    const change = changeOf(this.#told, page) ?? { within: [], gone: [] };
    this.#told = page;
    return change;
  }
}

/** The page that a patch makes of the one before; what did not change is the same object as before, so that a view need not draw it again. */
export const patched = (before: MethodPage | undefined, patch: PagePatch): MethodPage =>
  changed(before, patch) as MethodPage;
