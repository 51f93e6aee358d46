import { readFileSync } from 'node:fs';
import { expect, test } from '@playwright/test';
import { barePage, budgets } from '../../bench/budgets.ts';
import { weigh, withoutFaces } from '../../bench/weigh.ts';

/** What only the code of a calculator, a whole list or the validator holds, by words that stand in it. */
const onceAsked: Readonly<Record<string, string>> = {
  'the list of woods': 'Acer saccharum;',
  'the list of places': 'Minneapolis',
  'the list of sources': 'container-title',
  'the validator': '_zod',
};

test('the plain page that pages are compared with is that of the framework in use', () => {
  const { version } = JSON.parse(readFileSync('node_modules/@docusaurus/core/package.json', 'utf8'));
  expect(barePage.framework).toBe(version);
});

test('a page of each kind keeps its budget, and carries no list before somebody asks', async ({ baseURL }) => {
  const weights = await weigh(
    baseURL as string,
    budgets.map(({ path }) => path),
  );
  for (const { kind, path, most, mostInAll, style } of budgets) {
    const weight = weights.get(path) as NonNullable<ReturnType<typeof weights.get>>;
    const { css, total, faces, scripts } = weight;
    expect.soft(faces, `bytes of the site’s own faces of ${kind}, ${path}`).toBeGreaterThan(0);
    expect.soft(withoutFaces(weight) / barePage.total, `${kind}, ${path}, without faces`).toBeLessThanOrEqual(most);
    expect.soft(total / barePage.total, `${kind}, ${path}, all`).toBeLessThanOrEqual(mostInAll);
    expect.soft(css / 1024, `KB of style of ${kind}, ${path}`).toBeLessThanOrEqual(style);
    for (const [what, word] of Object.entries(onceAsked)) {
      const carries = scripts.some((text) => text.includes(word));
      expect.soft(carries, `${kind}, ${path}, carries ${what}`).toBe(false);
    }
  }
});
