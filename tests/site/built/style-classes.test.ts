import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, describe, expect, test } from 'vitest';
import { classOf, declarationsOf, styleClasses, withoutStyles } from '../../../src/site/built/style-classes.ts';

const made: string[] = [];
afterEach(() => {
  for (const folder of made.splice(0)) rmSync(folder, { recursive: true });
});

function site(pages: Readonly<Record<string, string>>, sheet = ''): string {
  const folder = mkdtempSync(join(tmpdir(), 'built-'));
  made.push(folder);
  mkdirSync(join(folder, 'assets', 'css'), { recursive: true });
  writeFileSync(join(folder, 'assets', 'css', 'styles.css'), sheet);
  for (const [name, body] of Object.entries(pages))
    writeFileSync(
      join(folder, name),
      `<!doctype html><html><head><link rel=stylesheet href=/boards/assets/css/styles.css></head><body>${body}</body></html>`,
    );
  return folder;
}

const page = (folder: string, name: string) => readFileSync(join(folder, name), 'utf8');
const sheetsOf = (folder: string) =>
  readdirSync(join(folder, 'assets', 'css')).filter((name) => name.startsWith('markup.'));

describe('a page without styles in its markup', () => {
  test.each([
    ['quoted', '<i style="color: red;">', `<i class="${classOf('color:red')}">`],
    ['bare, as a minifier writes it', '<i style=height:3em;>', `<i class="${classOf('height:3em')}">`],
    ['after a class', '<i class="a b" style="top:1px">', `<i class="a b ${classOf('top:1px')}">`],
    ['before a bare class', '<i style=top:1px class=a id=x>', `<i class="a ${classOf('top:1px')}" id=x>`],
    ['with an entity', '<i style="font-family:&quot;A&quot;">', `<i class="${classOf('font-family:"A"')}">`],
    ['empty', '<i style="" title="x">', '<i title="x">'],
    ['none', '<i title="style=a">', '<i title="style=a">'],
  ])('%s', (_, before, after) => {
    expect(withoutStyles(before).html).toBe(after);
  });

  test('what stands in a script, a style, a text area or a comment is left as it is', () => {
    const html =
      '<script>var a = "<i style=b>"</script><style>i{}</style><textarea><i style="c"></textarea><!-- <i style="d"> --><b style="top:0">x</b>';
    const { html: after, rules } = withoutStyles(html);
    expect([...rules.values()]).toEqual(['top:0']);
    expect(after).toBe(html.replace('<b style="top:0">', `<b class="${classOf('top:0')}">`));
  });

  test('one style written in two ways is one class, another style another', () => {
    expect(declarationsOf(' color :  red ;')).toBe('color:red');
    expect(declarationsOf('background:url(a;b);top:0')).toBe('background:url(a;b);top:0');
    expect(classOf('color:red')).not.toBe(classOf('color:blue'));
  });

  test.each(['a{b', 'x:</style>', '@import y', 'top:0/*', 'a:\\65'])(
    'a style that would leave its rule is refused: %s',
    (style) => {
      expect(() => declarationsOf(style)).toThrow(`“${style}”`);
    },
  );
});

describe('the step', () => {
  test('writes one sheet, asked for only by pages that need it, and the address of the site before it', async () => {
    const folder = site({ 'a.html': '<i style="top:0">', 'b.html': '<b>plain</b>', 'c.html': '<i style=top:0>' });
    const before = page(folder, 'b.html');
    await styleClasses.run(folder);
    const [sheet, ...others] = sheetsOf(folder);
    expect(others).toEqual([]);
    expect(page(folder, `assets/css/${sheet}`)).toBe(`.${classOf('top:0')}:not(#s#s#s){top:0}\n`);
    for (const name of ['a.html', 'c.html'])
      expect(page(folder, name)).toContain(`<link rel="stylesheet" href="/boards/assets/css/${sheet}"></head>`);
    expect(page(folder, 'b.html')).toBe(before);
  });

  test('a page asks for its own styles alone', async () => {
    const folder = site({ 'a.html': '<i style="top:0">', 'b.html': '<i style="top:1px"><i style="top:0">' });
    await styleClasses.run(folder);
    const asked = (name: string) => /markup\.[0-9a-f]{8}\.css/.exec(page(folder, name))?.[0];
    expect(page(folder, `assets/css/${asked('a.html')}`)).not.toContain(classOf('top:1px'));
    expect(page(folder, `assets/css/${asked('b.html')}`)).toContain(classOf('top:1px'));
    expect(sheetsOf(folder)).toHaveLength(2);
  });

  test('a style that the sheet of the site holds takes its class and asks for no more', async () => {
    const folder = site({ 'a.html': '<svg style="display: none;"></svg>' }, '.x{top:0}.y,.never-shown{display:none}');
    await styleClasses.run(folder);
    expect(page(folder, 'a.html')).toContain('<svg class="never-shown">');
    expect(sheetsOf(folder)).toEqual([]);
  });

  test('run again on what it wrote, it changes nothing', async () => {
    const folder = site({ 'a.html': '<i style="top:0">' });
    await styleClasses.run(folder);
    const after = page(folder, 'a.html');
    await styleClasses.run(folder);
    expect(page(folder, 'a.html')).toBe(after);
    expect(sheetsOf(folder)).toHaveLength(1);
  });

  test('names the page of a style that it cannot write', async () => {
    await expect(async () => styleClasses.run(site({ 'a.html': '<i style="a{b">' }))).rejects.toThrow(
      'a.html: a style',
    );
  });
});
