import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import postcss, { type Root, type Rule } from 'postcss';
import type { Step } from './finish.ts';
import { constantsOf, writeOut } from './style-constants.ts';

/** The words by which a page or a script may name a class, and the beginnings of words that a script completes, as `alert--`. */
export interface NamesInUse {
  words: ReadonlySet<string>;
  beginnings: readonly string[];
}

/** Words shorter than this begin too much. */
const shortestBeginning = 4;

/** Gather the names that pages use as classes, and every word of the scripts, which may be one. */
export function namesInUse(pages: Iterable<string>, scripts: Iterable<string>): NamesInUse {
  const words = new Set<string>();
  for (const page of pages) {
    for (const [, quoted, bare] of page.matchAll(/\sclass=(?:"([^"]*)"|([^\s>"']+))/g)) {
      for (const word of (quoted ?? bare ?? '').split(/\s+/)) words.add(word);
    }
  }
  for (const script of scripts) for (const [word] of script.matchAll(/[A-Za-z_][\w-]*/g)) words.add(word);
  const beginnings = [...words].filter((word) => word.endsWith('-') && word.length >= shortestBeginning);
  return { words, beginnings };
}

/** The classes that an element must have for a selector to match: what stands in `:not()` or among alternatives is not asked of it. */
function classesAsked(selector: string): string[] {
  let plain = selector.replace(/\\./g, '').replace(/\[[^\]]*\]/g, '');
  for (let before = ''; before !== plain; ) {
    before = plain;
    plain = plain.replace(/:[a-z-]+\([^()]*\)/g, '');
  }
  return [...plain.matchAll(/\.(-?[_a-zA-Z][\w-]*)/g)].map(([, name]) => name as string);
}

/**
 * A style sheet without the rules that no page can use: those that ask for a class which no page has and no script names.
 *
 * @returns the same text where every rule may be used
 */
export function inUse(css: string, { words, beginnings }: NamesInUse): string {
  const isNamed = (name: string) => words.has(name) || beginnings.some((beginning) => name.startsWith(beginning));
  const sheet = postcss.parse(css);
  let left = 0;
  sheet.walkRules((rule: Rule) => {
    // Steps of an animation are no selectors.
    if (rule.parent?.type === 'atrule' && /keyframes$/.test((rule.parent as { name?: string }).name ?? '')) return;
    const kept = rule.selectors.filter((selector) => classesAsked(selector).every(isNamed));
    left += rule.selectors.length - kept.length;
    if (kept.length === 0) rule.remove();
    else if (kept.length < rule.selectors.length) rule.selectors = kept;
  });
  left += dropUnusedProperties(sheet, words);
  sheet.walkAtRules((rule) => {
    if (rule.nodes?.length === 0) rule.remove();
  });
  return left === 0 ? css : sheet.toString();
}

/** Leave out custom properties that nothing reads, and those that only they read; gives how many. */
function dropUnusedProperties(sheet: Root, words: ReadonlySet<string>): number {
  let left = 0;
  for (let more = true; more; ) {
    more = false;
    const read = new Set<string>();
    sheet.walkDecls(({ value }) => {
      for (const [, name] of value.matchAll(/var\(\s*--([\w-]+)/g)) read.add(name as string);
    });
    sheet.walkDecls(/^--/, (declaration) => {
      const name = declaration.prop.slice(2);
      if (read.has(name) || words.has(name)) return;
      const { parent } = declaration;
      declaration.remove();
      if (parent?.nodes?.length === 0) parent.remove();
      left += 1;
      more = true;
    });
  }
  return left;
}

function* filesOf(folder: string, ending: string): Generator<string> {
  for (const entry of readdirSync(folder, { recursive: true, withFileTypes: true })) {
    if (entry.isFile() && entry.name.endsWith(ending)) yield join(entry.parentPath, entry.name);
  }
}

const kilobytes = (bytes: number) => `${(bytes / 1024).toFixed(0)} KB`;

/** The hash in the name of a sheet. */
const hashed = /\.([0-9a-f]+)\.css$/;

/** Take out of the style sheet of every page what no page uses: most of it is the theme's, for parts that this site does not have. */
export const stylesInUse: Step = {
  does: 'Style that no page uses',
  run(folder) {
    const pages = new Map([...filesOf(folder, '.html')].map((file) => [file, readFileSync(file, 'utf8')]));
    const scripts = [...filesOf(join(folder, 'assets', 'js'), '.js')].map((file) => readFileSync(file, 'utf8'));
    // What only a script fetches is the style of a part by itself, whose every rule is of that part; a script knows it by its hash.
    const known = scripts.join('\n');
    const isOfPart = (name: string) => {
      const hash = hashed.exec(name)?.[1];
      return hash === undefined || known.includes(hash);
    };
    const names = namesInUse(pages.values(), scripts);
    const sheets = [...filesOf(join(folder, 'assets', 'css'), '.css')].map((file) => ({
      file,
      name: file.slice(file.lastIndexOf('/') + 1),
      css: readFileSync(file, 'utf8'),
    }));
    const trees = sheets.map(({ css }) => postcss.parse(css));
    const namedByPage = new Set<string>();
    for (const page of pages.values())
      for (const [, name] of page.matchAll(/--([\w-]+)/g)) namedByPage.add(name as string);
    const constants = constantsOf(
      trees,
      (name) => names.words.has(name) || known.includes(`--${name}`) || namedByPage.has(name),
    );
    const elsewhere = new Set<string>();
    for (const [at, sheet] of sheets.entries()) {
      const tree = trees[at] as Root;
      if (!isOfPart(sheet.name) && writeOut(tree, constants) > 0) sheet.css = tree.toString();
    }
    for (const { css } of sheets)
      for (const [, name] of css.matchAll(/var\(\s*--([\w-]+)/g)) elsewhere.add(name as string);
    for (const page of pages.values())
      for (const [, name] of page.matchAll(/var\(\s*--([\w-]+)/g)) elsewhere.add(name as string);
    const all: NamesInUse = { ...names, words: new Set([...names.words, ...elsewhere]) };
    let [before, after] = [0, 0];
    const renamed = new Map<string, string>();
    for (const { file, name, css } of sheets) {
      if (isOfPart(name)) continue;
      const used = inUse(css, all);
      const sent = readFileSync(file, 'utf8');
      before += sent.length;
      after += used.length;
      if (used === sent) continue;
      const next = `${name.replace(hashed, '')}.${createHash('sha256').update(used).digest('hex').slice(0, 8)}.css`;
      writeFileSync(file, used);
      renameSync(file, file.slice(0, -name.length) + next);
      renamed.set(name, next);
    }
    for (const [file, page] of pages) {
      let text = page;
      for (const [from, to] of renamed) text = text.replaceAll(`/${from}`, `/${to}`);
      if (text !== page) writeFileSync(file, text);
    }
    return `${kilobytes(before)} to ${kilobytes(after)}`;
  },
};
