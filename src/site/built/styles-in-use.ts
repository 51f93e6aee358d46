import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import postcss, { type ChildNode, type Root, type Rule } from 'postcss';
import type { Step } from './finish.ts';
import { constantsOf, dropOverruled, dropUnread, writeOut } from './style-constants.ts';
import { keepFacesInUse } from './style-faces.ts';

/** The words by which a page or a script may name a class, and the beginnings of words that a script completes, as `alert--`. */
export interface NamesInUse {
  /** Classes that pages have as they are sent. */
  shown: ReadonlySet<string>;
  /** Elements that pages have as they are sent. */
  elements: ReadonlySet<string>;
  /** These, and every word of the scripts. */
  words: ReadonlySet<string>;
  beginnings: readonly string[];
}

/** Words shorter than this begin too much. */
const shortestBeginning = 4;

/** Gather the names that pages use as classes, and every word of the scripts, which may be one. */
export function namesInUse(pages: Iterable<string>, scripts: Iterable<string>): NamesInUse {
  const shown = new Set<string>();
  const elements = new Set<string>();
  for (const page of pages) {
    for (const [, name] of page.matchAll(/<([a-z][\w-]*)/g)) elements.add(name as string);
    for (const [, quoted, bare] of page.matchAll(/\sclass=(?:"([^"]*)"|([^\s>"']+))/g)) {
      for (const word of (quoted ?? bare ?? '').split(/\s+/)) shown.add(word);
    }
  }
  const words = new Set(shown);
  for (const script of scripts) for (const [word] of script.matchAll(/[A-Za-z_][\w-]*/g)) words.add(word);
  const beginnings = [...words].filter((word) => word.endsWith('-') && word.length >= shortestBeginning);
  return { shown, elements, words, beginnings };
}

/**
 * What the framework's theme shows only later, or not as a page is sent: where somebody reads, what is unfolded, its bar of progress, its page
 * of an error. Its scripts name far more, of parts that this site does not have, so that their words say nothing. Buttons of these kinds are ours.
 */
const shownLater =
  /^(?:bar|button--(?:primary|secondary)|table-of-contents__link--active|menu__\w+(?:-\w+)*--active|tocCollapsible\w+|isBrowser_\w+|errorBoundaryError_\w+|col--6|col--offset-3|hero__title|margin-vert--[lx]\w|shadow--lw)$/;

/** Formulas are set when the site is built, so that every class of theirs stands in the pages. */
const ofFormulas = 'katex';

/** The classes that an element must have for a selector to match: what stands in `:not()` or among alternatives is not asked of it. */
function classesAsked(selector: string): string[] {
  let plain = selector
    .replace(/\\./g, '')
    .replace(/\[[^\]]*\]/g, '')
    .replace(/:(?:is|where)\(([^(),]*)\)/g, '$1');
  for (let before = ''; before !== plain; ) {
    before = plain;
    plain = plain.replace(/:[a-z-]+\([^()]*\)/g, '');
  }
  return [...plain.matchAll(/\.(-?[_a-zA-Z][\w-]*)/g)].map(([, name]) => name as string);
}

/** A selector that asks for an element and nothing else. Of the framework's, those for what no page has go: its quotation, where nobody quotes. */
const asksElementAlone = /^[a-z][a-z\d]*$/;

/** Whether a rule is of the framework, which keeps its style in layers of its own. */
function isOfFramework(rule: Rule): boolean {
  for (let at = rule.parent as ChildNode | undefined; at; at = at.parent as ChildNode | undefined)
    if (at.type === 'atrule' && at.name === 'layer' && at.params.startsWith('docusaurus.')) return true;
  return false;
}

/**
 * Take out of style sheets the rules that no page can use: those that ask for a class which no page has and no script names.
 *
 * @returns how many selectors were taken away
 */
export function keepRulesInUse(sheets: readonly Root[], { shown, elements, words, beginnings }: NamesInUse): number {
  const isNamed = (name: string) => words.has(name) || beginnings.some((beginning) => name.startsWith(beginning));
  const isShown = (name: string) => shown.has(name) || shownLater.test(name);
  let left = 0;
  for (const sheet of sheets) {
    sheet.walkRules((rule) => {
      // Steps of an animation are no selectors.
      if (rule.parent?.type === 'atrule' && /keyframes$/.test((rule.parent as { name?: string }).name ?? '')) return;
      const theirs = isOfFramework(rule);
      const kept = rule.selectors.filter((selector) => {
        if (theirs && asksElementAlone.test(selector) && !elements.has(selector)) return false;
        const classes = classesAsked(selector);
        return classes.every(theirs || classes.includes(ofFormulas) ? isShown : isNamed);
      });
      left += rule.selectors.length - kept.length;
      if (kept.length === 0) rule.remove();
      else if (kept.length < rule.selectors.length) rule.selectors = kept;
    });
  }
  return left;
}

/** Take away frames that hold nothing any more, `@media` around no rule; an order of layers holds nothing from the start. */
function dropEmptyFrames(sheet: Root): void {
  for (let before = -1, count = 0; before !== count; ) {
    before = count;
    sheet.walkAtRules((rule) => {
      if (rule.nodes?.length !== 0) return;
      rule.remove();
      count += 1;
    });
  }
}

/** Name in an order of layers only those that some sheet fills: the framework names those of all its plugins, and the rest keep their order. */
export function dropEmptyLayers(sheets: readonly Root[]): void {
  const filled = new Set<string>();
  for (const sheet of sheets) sheet.walkAtRules('layer', ({ nodes, params }) => void (nodes && filled.add(params)));
  const isFilled = (name: string) => [...filled].some((one) => one === name || one.startsWith(`${name}.`));
  for (const sheet of sheets)
    sheet.walkAtRules('layer', (order) => {
      if (order.nodes) return;
      const names = order.params.split(/\s*,\s*/).filter(isFilled);
      if (names.length === 0) order.remove();
      else order.params = names.join(',');
    });
}

function* filesOf(folder: string, ending: string): Generator<string> {
  for (const entry of readdirSync(folder, { recursive: true, withFileTypes: true })) {
    if (entry.isFile() && entry.name.endsWith(ending)) yield join(entry.parentPath, entry.name);
  }
}

const kilobytes = (bytes: number) => `${(bytes / 1024).toFixed(0)} KB`;

/** The hash in the name of a sheet or a script. */
const hashed = /\.([0-9a-f]+)\.(css|js)$/;

const hashOf = (text: string) => createHash('sha256').update(text).digest('hex').slice(0, 8);

interface File {
  path: string;
  /** Its name alone. */
  name: string;
  text: string;
}

const readFiles = (folder: string, ending: string): File[] =>
  [...filesOf(folder, ending)].map((path) => ({
    path,
    name: path.slice(path.lastIndexOf('/') + 1),
    text: readFileSync(path, 'utf8'),
  }));

/** Write a file anew under a name that tells its new bytes; gives that name. */
function writeAnew({ path, name }: File, text: string): string {
  const next = name.replace(hashed, `.${hashOf(text)}.$2`);
  writeFileSync(path, text);
  renameSync(path, path.slice(0, -name.length) + next);
  return next;
}

/** Take out of the style sheets what no page uses: most of it is the theme's, for parts that this site does not have. */
export const stylesInUse: Step = {
  does: 'Style that no page uses',
  run(folder) {
    const pages = new Map([...filesOf(folder, '.html')].map((file) => [file, readFileSync(file, 'utf8')]));
    const scripts = readFiles(join(folder, 'assets', 'js'), '.js');
    const sheets = readFiles(join(folder, 'assets', 'css'), '.css').map((file) => ({
      ...file,
      tree: postcss.parse(file.text),
    }));
    const trees = sheets.map(({ tree }) => tree);
    const names = namesInUse(
      pages.values(),
      scripts.map(({ text }) => text),
    );
    keepRulesInUse(trees, names);
    dropOverruled(trees);
    const properties = new Set<string>();
    for (const text of [...pages.values(), ...scripts.map((script) => script.text)])
      for (const [, name] of text.matchAll(/--([\w-]+)/g)) properties.add(name as string);
    const isNamed = (name: string) => names.words.has(name) || properties.has(name);
    const constants = constantsOf(trees, isNamed);
    for (const tree of trees) writeOut(tree, constants);
    dropUnread(trees, isNamed);
    keepFacesInUse(trees);
    for (const tree of trees) dropEmptyFrames(tree);
    dropEmptyLayers(trees);

    let [before, after] = [0, 0];
    const renamed = new Map<string, string>();
    /** What a script knows a sheet by that it fetches. */
    const hashes = new Map<string, string>();
    for (const sheet of sheets) {
      const used = sheet.tree.toString();
      before += sheet.text.length;
      after += used.length;
      if (used === sheet.text) continue;
      const next = writeAnew(sheet, used);
      renamed.set(sheet.name, next);
      const hash = hashed.exec(sheet.name)?.[1];
      if (hash !== undefined) hashes.set(hash, hashOf(used));
    }
    for (const script of scripts) {
      const text = script.text.replace(/"([0-9a-f]{8})"/g, (_, hash) => `"${hashes.get(hash) ?? hash}"`);
      if (text === script.text) continue;
      const hash = hashed.exec(script.name)?.[1];
      if (hash !== undefined && scripts.some((other) => other.text.includes(`"${hash}"`)))
        throw new Error(
          `${script.name} fetches sheets and is itself fetched by a script, which would look for it under its old name. Look at src/site/built/styles-in-use.ts.`,
        );
      renamed.set(script.name, writeAnew(script, text));
    }
    for (const [file, page] of pages) {
      const text = page.replace(/\/([\w~.-]+\.(?:css|js))/g, (all, name) =>
        renamed.has(name) ? `/${renamed.get(name)}` : all,
      );
      if (text !== page) writeFileSync(file, text);
    }
    return `${kilobytes(before)} to ${kilobytes(after)}`;
  },
};
