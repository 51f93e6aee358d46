import { describe, expect, test } from 'vitest';
import { rungOf, rungs } from '../../../src/model/species/authority.ts';
import { dossier, dossiers } from './world.ts';

test('the newest handbook speaks first, a single old lot last, and nothing that nobody read comes before what was read', () => {
  const order = [
    rungOf('fpl-gtr-282', 'published'),
    rungOf('fpl-gtr-190', 'published'),
    rungOf('fpl-fact-sheets', 'published'),
    rungOf('cirad-krvf0e', 'derived'),
    rungOf('queensland-timber', 'published'),
    rungs.derived,
    rungOf('fpl-gtr-282', 'memory'),
    rungOf('record-1914', 'published'),
  ];
  expect(order).toEqual([...order].sort((one, other) => one - other));
  expect(new Set(order).size).toBe(order.length);
});

describe('one old lot does not outrank the handbook merely because it was read', () => {
  test.each([
    // Table 5-3b of 2021; Record's lots have 0.695, 0.541, 0.466 and 0.504.
    ['honeylocust', 'specificGravityGreen', 0.6],
    ['slippery-elm', 'specificGravityGreen', 0.48],
    ['black-ash', 'specificGravityGreen', 0.45],
    ['hackberry', 'specificGravityGreen', 0.49],
    // Table 4-3, from memory, against the 8.6 % of one lot, which radial 4.2 and tangential 6.6 % contradict.
    ['honeylocust', 'volumetricShrinkage', 10.8],
  ] as const)('%s: %s is %d, and the lot stands beside it', (id, name, value) => {
    const wood = dossier(id);
    expect(wood.figures[name]?.value).toBe(value);
    const lots = wood.others.filter((each) => each.name === name && each.figure.citation?.source === 'record-1914');
    expect(lots.length).toBe(1);
    expect(lots[0]?.figure.note).toContain('One shipment, often of five trees.');
  });
});

test('a lot stands only where nothing else was found, and says that it is one', () => {
  const alone = dossiers.flatMap(({ figures }) =>
    Object.values(figures).flatMap((figure) => (figure?.citation?.source === 'record-1914' ? [figure] : [])),
  );
  expect(alone.length).toBeGreaterThan(0);
  for (const { note } of alone) expect(note).toMatch(/shipment|^Derived|^By Eq/);
});

test('of two editions that were read the newer is shown: white oak and northern red oak have rows of their own in 2021', () => {
  expect(dossier('white-oak').figures.tangentialCoefficient).toMatchObject({
    value: 0.00376,
    citation: { source: 'fpl-gtr-282', locator: 'Table 13-5, White oak' },
  });
  expect(dossier('northern-red-oak').figures.radialCoefficient).toMatchObject({
    value: 0.00137,
    citation: { source: 'fpl-gtr-282', locator: 'Table 13-5, Northern red oak' },
  });
});

test('what disagrees is shown beside: the sheet of sande and the row from memory', () => {
  const sande = dossier('sande');
  expect(sande.figures.radialShrinkage).toMatchObject({ value: 3.9, citation: { source: 'fpl-fact-sheets' } });
  expect(sande.others).toContainEqual(
    expect.objectContaining({
      name: 'radialShrinkage',
      figure: expect.objectContaining({ value: 4.6, basis: 'memory' }),
    }),
  );
});

test('no figure or statement is cited from a page that names no source', () => {
  const named = dossiers.flatMap(({ figures, effects }) => [...Object.values(figures), ...effects]);
  for (const each of named) {
    if (each?.basis === 'published')
      expect(each.citation?.locator ?? '').not.toMatch(/merchant|names no source|not named/);
  }
});
