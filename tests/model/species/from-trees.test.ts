import { expect, test } from 'vitest';
import { dossier } from './world.ts';

test('one mean stands for all taxa of a wood, each weighing by its trees, with the lowest and highest tree', () => {
  // Milicia excelsa: 15 trees, 649 (550 to 740); M. regia: 4 trees, 630 (560 to 710). (15 × 649 + 4 × 630) / 19 = 645.
  const density = dossier('iroko').figures.density12;
  expect(density).toMatchObject({
    value: 645,
    low: 550,
    high: 740,
    basis: 'derived',
    citation: { source: 'cirad-krvf0e', locator: 'Milicia excelsa, Milicia regia', seen: 'source-text' },
    note: 'Mean of 19 trees, computed here.',
  });
});

test('fewer than five trees are single lots, which anything else outranks', () => {
  expect(dossier('imbuia').figures.density12?.note).toBe('Mean of 20 trees, computed here.');
  // Three trees of kapur; the handbook prints its volume.
  const kapur = dossier('kapur');
  expect(kapur.others.some(({ figure }) => figure.citation?.source === 'cirad-krvf0e')).toBe(true);
  expect(kapur.figures.volumetricShrinkage?.citation?.source).not.toBe('cirad-krvf0e');
});

test('measured fibre saturation stands among the other figures, and does not move the start that the handbook assumes', () => {
  const teak = dossier('teak');
  expect(teak.figures.shrinkageStart?.value).toBe(22);
  const measured = teak.others.find(({ figure }) => figure.label === 'Fibre saturation point, as measured');
  expect(measured?.figure).toMatchObject({ value: 24, low: 19, high: 39, unit: '%', basis: 'derived' });
});
