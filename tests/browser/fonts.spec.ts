import { expect, test } from '@playwright/test';
import { faceFiles } from '../../src/site/fonts/faces.ts';
import { everyPath, htmlOf, open, pageKinds } from './site.ts';

/** Characters of a CSS unicode-range. */
function inRanges(ranges: readonly string[]): (code: number) => boolean {
  const parts = ranges
    .flatMap((range) => range.split(','))
    .map((part) => {
      const [first = '', last = first] = part.replace('U+', '').split('-');
      return [Number.parseInt(first, 16), Number.parseInt(last, 16)] as const;
    });
  return (code) => parts.some(([first, last]) => code >= first && code <= last);
}

const held = inRanges(faceFiles.filter(({ family }) => family === 'Kerf Sans').map(({ range }) => range));
/** Signs that no file of ours holds. Zero-width spaces and line ends are not drawn. */
const strange = (text: string) =>
  [...new Set(text.replace(/[\n\t\u200b]/g, ''))].filter((sign) => !held(sign.codePointAt(0) ?? 0));

test('no page without a formula shows a sign that the faces lack', () => {
  for (const path of everyPath()) {
    const html = htmlOf(path);
    // Formulas have faces of their own; the pages that hold them are read in the browser below.
    if (/class="?katex/.test(html)) continue;
    const text = html
      .replace(/<head>.*?<\/head>|<script.*?<\/script>|<style.*?<\/style>/gs, '')
      .replace(/<[^>]+>/g, '')
      .replace(/&#x([0-9a-f]+);/gi, (_, code) => String.fromCodePoint(Number.parseInt(code, 16)));
    expect(strange(text), path).toEqual([]);
  }
});

for (const path of pageKinds()) {
  test(`${path} draws in our faces, of no more than 60 kB`, async ({ page }) => {
    const loaded = new Map<string, number>();
    page.on('response', async (response) => {
      const file = response.url().split('/').at(-1) ?? '';
      if (file.startsWith('kerf-')) loaded.set(file, (await response.body()).length);
    });
    await open(page, path);
    await page.evaluate(() => document.fonts.ready);
    await page.waitForLoadState('networkidle');
    const weight = [...loaded.values()].reduce((sum, bytes) => sum + bytes, 0);
    expect([...loaded.keys()]).toEqual(expect.arrayContaining(['kerf-book.woff2', 'kerf-sans.woff2']));
    expect(weight, [...loaded].join(' ')).toBeLessThanOrEqual(61_440);
    const text = await page.evaluate(() => {
      for (const other of document.querySelectorAll('.katex, script, style')) other.remove();
      return document.body.textContent;
    });
    expect(strange(text)).toEqual([]);
  });
}
