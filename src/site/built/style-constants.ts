import type { ChildNode, Declaration, Root, Rule } from 'postcss';

const reads = /var\(\s*(--[\w-]+)\s*(,|\))/g;

/** Selectors that are met by the root of a page and nothing else of the site. */
const roots: readonly string[] = [':root', '[data-theme=dark]', 'html[data-theme=dark]'];

const isOfRoots = (parent: Declaration['parent']): parent is Rule =>
  parent?.type === 'rule' && (parent as Rule).selectors.every((selector) => roots.includes(selector));

/** Whether a declaration holds on the root of every page, whatever its colours and on whatever it is shown. */
const isForAll = ({ parent }: Declaration): boolean =>
  isOfRoots(parent) && parent.selectors.includes(':root') && framesOf(parent).every((frame) => frame === 'layer');

/** The names of what stands around a rule, `media` and `layer`, from within. */
function framesOf(rule: Rule): string[] {
  const names: string[] = [];
  for (let at = rule.parent as ChildNode | undefined; at; at = at.parent as ChildNode | undefined)
    if (at.type === 'atrule') names.push(at.name);
  return names;
}

const isLayered = (rule: Rule): boolean => framesOf(rule).includes('layer');

/** Take a declaration away, and its rule where nothing is left in it. */
export function takeAway(declaration: Declaration): void {
  const { parent } = declaration;
  declaration.remove();
  if (parent?.nodes?.length === 0) parent.remove();
}

/**
 * Take away what the framework sets on the root of a page and our own style sets there again: what stands in a layer never holds against
 * what stands in none.
 *
 * @returns how many declarations
 */
export function dropOverruled(sheets: readonly Root[]): number {
  const ours = new Set<string>();
  const theirs: Declaration[] = [];
  for (const sheet of sheets) {
    sheet.walkDecls(/^--/, (declaration) => {
      if (!isOfRoots(declaration.parent)) return;
      if (isLayered(declaration.parent)) {
        if (!declaration.important) theirs.push(declaration);
      } else if (isForAll(declaration)) ours.add(declaration.prop);
    });
  }
  const overruled = theirs.filter(({ prop }) => ours.has(prop));
  for (const declaration of overruled) takeAway(declaration);
  return overruled.length;
}

/**
 * The custom properties of a site that are constants: set once, on the root of every page, to a value that asks for no other property but
 * constants, and named by nothing else than styles.
 *
 * @param sheets every style sheet of the site
 * @param named whether a page or a script names a property, without its two hyphens
 */
export function constantsOf(sheets: Iterable<Root>, named: (name: string) => boolean): Map<string, string> {
  const set = new Map<string, Declaration[]>();
  for (const sheet of sheets) {
    sheet.walkDecls(/^--/, (declaration) => {
      set.set(declaration.prop, [...(set.get(declaration.prop) ?? []), declaration]);
    });
  }
  const once = new Map<string, string>();
  for (const [name, declarations] of set) {
    const [only] = declarations;
    if (only === undefined || declarations.length > 1 || only.important || only.value.trim() === '') continue;
    if (isForAll(only) && !named(name.slice(2))) once.set(name, only.value);
  }
  const constants = new Map<string, string>();
  for (let before = -1; before !== constants.size; ) {
    before = constants.size;
    for (const [name, value] of once) {
      const written = writtenOut(value, constants);
      if (!/var\(/.test(written)) constants.set(name, written);
    }
  }
  return constants;
}

/**
 * A value with its constants written out; what names something to take in place of a property that is not set stays as it is. Values that
 * stand side by side without a space, as a minifier writes them, get one: `var(--a)0` is two values, and `10` would be one.
 */
const writtenOut = (value: string, constants: ReadonlyMap<string, string>): string =>
  value.replace(reads, (all, name: string, end: string, at: number) => {
    const constant = end === ')' ? constants.get(name) : undefined;
    if (constant === undefined) return all;
    const space = (joins: boolean) => (joins ? ' ' : '');
    const [before, after] = [value[at - 1] ?? '', value[at + all.length] ?? ''];
    return `${space(/[\w)%"']/.test(before))}${constant}${space(/[\w.#"'-]/.test(after))}`;
  });

/** Write constants where they are read, so that nothing reads their names any more; gives how often. */
export function writeOut(sheet: Root, constants: ReadonlyMap<string, string>): number {
  let count = 0;
  sheet.walkDecls((declaration) => {
    const written = writtenOut(declaration.value, constants);
    if (written === declaration.value) return;
    declaration.value = written;
    count += 1;
  });
  return count;
}

/**
 * Take away custom properties that nothing reads, and those that only they read.
 *
 * @param sheets those that may be changed
 * @param read whether something else than these sheets names a property, without its two hyphens
 * @returns how many declarations
 */
export function dropUnread(sheets: readonly Root[], read: (name: string) => boolean): number {
  let left = 0;
  for (let before = -1; before !== left; ) {
    before = left;
    const names = namesRead(sheets);
    for (const sheet of sheets) {
      sheet.walkDecls(/^--/, (declaration) => {
        const name = declaration.prop.slice(2);
        if (names.has(name) || read(name)) return;
        takeAway(declaration);
        left += 1;
      });
    }
  }
  return left;
}

/** The names of the custom properties that sheets read, without their two hyphens. */
function namesRead(sheets: Iterable<Root>): Set<string> {
  const names = new Set<string>();
  for (const sheet of sheets)
    sheet.walkDecls(({ value }) => {
      for (const [, name] of value.matchAll(/var\(\s*--([\w-]+)/g)) names.add(name as string);
    });
  return names;
}
