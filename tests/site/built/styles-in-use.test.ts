import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { inUse, namesInUse, stylesInUse } from '../../../src/site/built/styles-in-use.ts';

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
    ['it is a step of an animation', '@keyframes turn{0%{opacity:0}to{opacity:1}}'],
  ])('where %s', (_, css) => expect(inUse(css, names)).toBe(css));
});

test.each([
  ['a class that nothing names', '.gone{color:red}.note{color:blue}', '.note{color:blue}'],
  ['a part of one that is named', '.note .gone{color:red}', ''],
  ['one selector of two', '.gone,.note{color:red}', '.note{color:red}'],
  ['a rule for print, with its empty frame', '@media print{.gone{color:red}}', ''],
  [
    'a property that nothing reads, and what only it reads',
    ':root{--a:1px;--b:var(--a);--c:2px}p{margin:var(--c)}',
    ':root{--c:2px}p{margin:var(--c)}',
  ],
])('%s goes', (_, css, left) => expect(inUse(css, names)).toBe(left));

describe('on the folder of a site', () => {
  let folder: string;
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'styles-'));
    for (const part of ['assets/css', 'assets/js', 'page']) mkdirSync(join(folder, part), { recursive: true });
    writeFileSync(join(folder, 'assets/css/styles.0a1b2c3d.css'), '.note{color:red}.gone{color:blue}');
    writeFileSync(join(folder, 'assets/css/7.99998888.css'), '.later{color:red}');
    writeFileSync(join(folder, 'assets/js/main.11112222.js'), 'load("assets/css/7."+{7:"99998888"}[e]+".css")');
    const page = '<link rel="stylesheet" href="/assets/css/styles.0a1b2c3d.css"><p class="note">';
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

  test('a sheet that a script fetches by its name stays as it is', async () => {
    await stylesInUse.run(folder);
    expect(readFileSync(join(folder, 'assets/css/7.99998888.css'), 'utf8')).toBe('.later{color:red}');
  });

  test('a second run changes nothing', async () => {
    await stylesInUse.run(folder);
    const before = [...sheets(), page()];
    await stylesInUse.run(folder);
    expect([...sheets(), page()]).toEqual(before);
  });
});
