import { expect, test } from '@playwright/test';
import { strange } from './signs.ts';
import { everyPath, htmlOf } from './site.ts';

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
