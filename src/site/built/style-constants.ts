import type { Declaration, Root } from 'postcss';

const reads = /var\(\s*(--[\w-]+)\s*(,|\))/g;

const isForAll = ({ parent }: Declaration): boolean =>
  parent?.type === 'rule' && (parent as { selector?: string }).selector === ':root' && parent.parent?.type === 'root';

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

/** A value with its constants written out; what names something to take in place of a property that is not set stays as it is. */
const writtenOut = (value: string, constants: ReadonlyMap<string, string>): string =>
  value.replace(reads, (all, name: string, end: string) => (end === ')' ? (constants.get(name) ?? all) : all));

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
