import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import postcss from 'postcss';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { dropEmptyLayers, keepRulesInUse, namesInUse, stylesInUse } from '../../../src/site/built/styles-in-use.ts';

/** A sheet without the rules that no page can use. */
function rulesInUse(css: string): string {
  const sheet = postcss.parse(css);
  keepRulesInUse([sheet], names);
  return sheet.toString();
}

const names = namesInUse(
  ['<p class="note wide"><a class=link href=x>go</a></p>'],
  ['e.className="open"; const kind = "alert--" + level'],
);

describe('a rule stays', () => {
  test.each([
    ['its class is on a page', '.note{color:red}'],
    ['its class stands there without quotes', '.link{color:red}'],
    ['a script names its class', '.open{color:red}'],
    ['a script completes its class', '.alert--danger{color:red}'],
    ['it asks for no class', 'table td{color:red}'],
    ['the class that is missing stands in :not()', '.note:not(.gone){color:red}'],
    ['one of several alternatives is there', ':is(.gone,.note) p{color:red}'],
    ['the theme shows it later', '@layer docusaurus.infima{.table-of-contents__link--active{color:red}}'],
    ['it is a step of an animation', '@keyframes turn{0%{opacity:0}to{opacity:1}}'],
  ])('where %s', (_, css) => expect(rulesInUse(css)).toBe(css));
});

test.each([
  ['a class that nothing names', '.gone{color:red}.note{color:blue}', '.note{color:blue}'],
  ['a part of one that is named', '.note .gone{color:red}', ''],
  ['one selector of two', '.gone,.note{color:red}', '.note{color:red}'],
  ['a class that stands alone in :where()', ':where(.gone):hover{color:red}.note{color:blue}', '.note{color:blue}'],
  [
    'a part of the theme that a script names and no page shows',
    '@layer docusaurus.infima{.open{color:red}.note{color:blue}}',
    '@layer docusaurus.infima{.note{color:blue}}',
  ],
  [
    'what the theme says of an element that no page has',
    '@layer docusaurus.infima{p{color:red}blockquote{color:red}blockquote,a:hover{color:blue}}blockquote{color:red}',
    '@layer docusaurus.infima{p{color:red}a:hover{color:blue}}blockquote{color:red}',
  ],
  [
    'a class of formulas that a script names and no page shows',
    '.katex .open{color:red}.note{color:blue}',
    '.note{color:blue}',
  ],
])('%s goes', (_, css, left) => expect(rulesInUse(css)).toBe(left));

test('an order of layers names those that some sheet fills, in its order', () => {
  const sheets = [
    '@layer a.one,a.two , a.three,b;@layer c{x{color:red}}',
    '@layer a.three{x{color:red}}@layer a.one{y{color:red}}@layer d;',
  ].map((text) => postcss.parse(text));
  dropEmptyLayers(sheets);
  expect(sheets.map(String)).toEqual([
    '@layer a.one,a.three;@layer c{x{color:red}}',
    '@layer a.three{x{color:red}}@layer a.one{y{color:red}}',
  ]);
});

describe('on the folder of a site', () => {
  let folder: string;
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'styles-'));
    for (const part of ['assets/css', 'assets/js', 'page']) mkdirSync(join(folder, part), { recursive: true });
    writeFileSync(join(folder, 'assets/css/styles.0a1b2c3d.css'), '.note{color:red}.gone{color:blue}');
    writeFileSync(join(folder, 'assets/css/7.99998888.css'), '.later{color:red}.gone{color:blue}');
    writeFileSync(
      join(folder, 'assets/js/main.11112222.js'),
      'load("assets/css/7."+{7:"99998888"}[e]+".css");e.className="later"',
    );
    const page =
      '<link rel="stylesheet" href="/assets/css/styles.0a1b2c3d.css"><p class="note"><script src=/assets/js/main.11112222.js></script>';
    writeFileSync(join(folder, 'page/index.html'), page);
  });
  afterEach(() => rmSync(folder, { recursive: true }));
  const sheets = () => readdirSync(join(folder, 'assets/css')).sort();
  const page = () => readFileSync(join(folder, 'page/index.html'), 'utf8');

  test('the sheet of the pages gets a name of its new bytes, which every page then asks for', async () => {
    await stylesInUse.run(folder);
    const [, sheet] = sheets() as [string, string];
    expect(sheet).not.toBe('styles.0a1b2c3d.css');
    expect(readFileSync(join(folder, 'assets/css', sheet), 'utf8')).toBe('.note{color:red}');
    expect(page()).toContain(`href="/assets/css/${sheet}"`);
  });

  test('a script that fetches a sheet asks for its new name, and has a new one itself', async () => {
    await stylesInUse.run(folder);
    const [sheet = ''] = sheets();
    expect(readFileSync(join(folder, 'assets/css', sheet), 'utf8')).toBe('.later{color:red}');
    const [script = ''] = readdirSync(join(folder, 'assets/js'));
    expect(script).not.toBe('main.11112222.js');
    expect(readFileSync(join(folder, 'assets/js', script), 'utf8')).toContain(`{7:"${sheet.split('.')[1]}"}`);
    expect(page()).toContain(`/assets/js/${script}>`);
  });

  test('a script that is fetched by its old name may not get a new one', () => {
    writeFileSync(join(folder, 'assets/js/other.33334444.js'), 'load("assets/js/main."+{1:"11112222"}[e]+".js")');
    expect(() => stylesInUse.run(folder)).toThrow(/main\.11112222\.js fetches sheets and is itself fetched/);
  });

  test('what no rule reads any more goes with the frame around it, and so does a face that no rule names', async () => {
    writeFileSync(
      join(folder, 'assets/css/styles.0a1b2c3d.css'),
      ':root{--a:1px;--b:var(--a);--c:2px}@media print{.gone{margin:var(--b)}}.note{margin:var(--c);font-family:Kept}' +
        '@font-face{font-family:Gone;src:url(g.woff2)format("woff2")}' +
        '@font-face{font-family:Kept;src:url(k.woff2)format("woff2"),url(k.ttf)format("truetype")}',
    );
    await stylesInUse.run(folder);
    expect(readFileSync(join(folder, 'assets/css', sheets()[1] as string), 'utf8')).toBe(
      '.note{margin:2px;font-family:Kept}@font-face{font-family:Kept;src:url(k.woff2)format("woff2")}',
    );
  });

  test('a second run changes nothing', async () => {
    await stylesInUse.run(folder);
    const before = [...sheets(), page()];
    await stylesInUse.run(folder);
    expect([...sheets(), page()]).toEqual(before);
  });
});
