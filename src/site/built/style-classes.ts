import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Step } from './finish.ts';
import { baseOf, pagesIn, said, tagsOf } from './markup.ts';

/**
 * Every `style` attribute of the pages becomes a class of a sheet of its page, so that the policy of the site may forbid styles in markup.
 *
 * A rule takes the place that the attribute had among the others: above every rule of a sheet, below what is `!important`, and below what
 * a script sets on the element later, as the size of the type on a card or the colour of code in the dark. Three ids that no element has
 * lift it there; `!important` would also beat what the reader's own page sets.
 */
export const styleClasses: Step = { does: 'Styles of markup as classes', run: turnStylesIntoClasses };

/** Above every rule of a sheet: nothing on the site has this id. */
const lift = ':not(#s#s#s)';

/** Declarations that a class of the site's own sheet holds already, so that pages with no other style ask for no sheet more. */
const held: ReadonlyMap<string, string> = new Map([['display:none', 'never-shown']]);

/**
 * The declarations of a `style` attribute, written in one way.
 *
 * @throws Error where they could not stand in a rule
 */
export function declarationsOf(style: string): string {
  if (/[{}<>@\\]|\/\*/.test(style)) throw new Error(`a style that cannot stand in a rule: “${style}”`);
  return style
    .split(/;(?![^(]*\))/)
    .map((one) =>
      one
        .trim()
        .replace(/\s+/g, ' ')
        .replace(/\s*:\s*/, ':'),
    )
    .filter((one) => one !== '')
    .join(';');
}

/** The class that holds some declarations: the same wherever and whenever they are met. It is short, as it travels with every page: two styles with one class stop the build. */
export const classOf = (declarations: string): string =>
  `s${Number.parseInt(createHash('sha256').update(declarations).digest('hex').slice(0, 8), 16).toString(36)}`;

/** A page without `style` attributes, and the rules that it needs instead, by class. */
export function withoutStyles(
  html: string,
  ready: ReadonlyMap<string, string> = new Map(),
): { html: string; rules: Map<string, string> } {
  const rules = new Map<string, string>();
  let text = '';
  let done = 0;
  for (const tag of tagsOf(html)) {
    const style = tag.attributes.find(({ name }) => name === 'style');
    if (!style) continue;
    const declarations = declarationsOf(style.value);
    const name = ready.get(declarations) ?? classOf(declarations);
    if (declarations !== '' && !ready.has(declarations)) rules.set(name, declarations);
    const had = tag.attributes.find((one) => one.name === 'class');
    const classes = [...(said(tag, 'class')?.split(/\s+/) ?? []), ...(declarations === '' ? [] : [name])].filter(
      Boolean,
    );
    const edits = [
      { ...style, put: had || classes.length === 0 ? '' : written(classes) },
      ...(had ? [{ ...had, put: written(classes) }] : []),
    ].sort((a, b) => a.from - b.from);
    for (const { from, to, put } of edits) {
      // The space before an attribute that goes away goes with it.
      text += put === '' ? html.slice(done, from).replace(/\s$/, '') : html.slice(done, from) + put;
      done = to;
    }
  }
  return { html: text + html.slice(done), rules };
}

const written = (classes: readonly string[]) => `class="${classes.join(' ').replaceAll('"', '&quot;')}"`;

function turnStylesIntoClasses(folder: string): string {
  const ready = new Map([...held].filter(([declarations, name]) => holds(folder, name, declarations)));
  const rules = new Map<string, string>();
  const changed: { page: string; html: string; sheet: string }[] = [];
  for (const page of pagesIn(folder)) {
    const before = readFileSync(join(folder, page), 'utf8');
    const made = tryPage(page, () => withoutStyles(before, ready));
    for (const [name, declarations] of made.rules) {
      if ((rules.get(name) ?? declarations) !== declarations)
        throw new Error(`${page}: two styles have the same class ${name}: “${rules.get(name)}” and “${declarations}”`);
      rules.set(name, declarations);
    }
    if (made.html !== before) changed.push({ page, html: made.html, sheet: sheetOf(made.rules) });
  }
  const files = new Map<string, string>();
  for (const { page, html, sheet } of changed) {
    if (sheet !== '')
      files.set(sheet, `assets/css/markup.${createHash('sha256').update(sheet).digest('hex').slice(0, 8)}.css`);
    writeFileSync(join(folder, page), sheet === '' ? html : linked(html, page, files.get(sheet) as string));
  }
  for (const [sheet, file] of files) writeFileSync(join(folder, file), `${sheet}\n`);
  const styled = changed.filter(({ sheet }) => sheet !== '').length;
  return `${changed.length} pages, ${rules.size} classes in ${files.size} sheets that ${styled} pages ask for`;
}

/** The sheet of some rules; empty where there are none. */
const sheetOf = (rules: ReadonlyMap<string, string>): string =>
  [...rules]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([name, declarations]) => `.${name}${lift}{${declarations}}`)
    .join('\n');

function linked(html: string, page: string, file: string): string {
  const end = html.indexOf('</head>');
  if (end < 0) throw new Error(`${page}: has no </head>, where the sheet of its styles would be asked for`);
  return `${html.slice(0, end)}<link rel="stylesheet" href="${baseOf(html, page)}${file}">${html.slice(end)}`;
}

/** Whether the site's own sheet has a class that holds these declarations alone. */
function holds(folder: string, name: string, declarations: string): boolean {
  const css = join(folder, 'assets', 'css');
  const rule = new RegExp(`(?:^|[},])\\.${name}(?:,[^{}]*)?\\{([^{}]*?);?\\}`);
  return readdirSync(css).some(
    (file) => file.endsWith('.css') && rule.exec(readFileSync(join(css, file), 'utf8'))?.[1] === declarations,
  );
}

function tryPage<T>(page: string, work: () => T): T {
  try {
    return work();
  } catch (fault) {
    throw new Error(`${page}: ${fault instanceof Error ? fault.message : fault}`);
  }
}
