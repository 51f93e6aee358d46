import { describe, expect, test } from 'vitest';
import { calculators } from '../../src/calculators/index.ts';
import { howToOrder } from '../../src/site/how-to-order.ts';
import { calculatorsOfPage, emergencies, jobs, pagesOfCalculator } from '../../src/site/jobs.ts';
import { howTo, howTos, workedCases } from '../docs/how-to.ts';

const names = howTos.map(({ name }) => name);

describe('the work in its order', () => {
  test('has every calculator in one job, and no other', () => {
    const placed = jobs.flatMap((job) => Object.keys(job.calculators));
    expect([...placed].sort()).toEqual(calculators.map(({ id }) => id).sort());
  });

  test('names pages that exist', () => {
    const named = jobs.flatMap((job) => [job.page, ...Object.values(job.calculators).flat()]);
    expect(named.filter((name) => !names.includes(name))).toEqual([]);
  });

  test.each(calculators.map(({ id }) => id))('%s has its how-to page, which lists it', (id) => {
    const pages = pagesOfCalculator(id);
    expect(pages.length).toBeGreaterThan(0);
    for (const page of pages) expect(calculatorsOfPage(page)).toContain(id);
  });

  test.each(names)('%s lists the calculators that stand in it, which lead back', (name) => {
    const within = workedCases.filter(({ page }) => page === name).map(({ calculator }) => calculator);
    expect(calculatorsOfPage(name)).toEqual(expect.arrayContaining([...new Set(within)]));
    for (const id of calculatorsOfPage(name)) expect(pagesOfCalculator(id)).toContain(name);
  });
});

test.each(emergencies)('$label leads to a heading that is there', ({ to }) => {
  const [, page = '', heading = ''] = /^\/how-to\/([a-z-]+)#([a-z]+)$/.exec(to) ?? [];
  expect(howTo(page).source).toContain(`{/* #${heading} */}`);
});

test('the pages on safety stand before all pages on the work', () => {
  expect(howToOrder[0]?.pages).toEqual(['one-tray']);
  expect(howToOrder[1]?.pages).toContain('oily-rags');
});
