import { expect, test } from 'vitest';
import { documentText } from '../../../src/calculators/kit/document-text.ts';
import { batchLabelDocument, batchLabelLines } from '../../../src/method/sale/index.ts';
import { defaultUnits } from '../../../src/model/quantity/index.ts';

const tray = { what: 'Tray', woods: ['sugar maple (Acer saccharum)'], finishes: ['Mineral oil'] };

test('before it is made, days and lots are lines to write on', () => {
  const text = documentText(batchLabelDocument({ ...tray, resin: 'amber epoxy resin' }), defaultUnits);
  expect(text).toMatch(/^What: Tray\nWood: sugar maple \(Acer saccharum\)\nResin: amber epoxy resin/);
  for (const name of ['Lot of the resin', 'Made on', 'Cured on', 'Batch']) expect(text).toContain(`${name}: ____`);
});

test('without resin nothing is said of its lot and its cure', () => {
  expect(batchLabelLines({ ...tray, made: '2027-01-28', batch: 'January' }).map(({ name }) => name)).toEqual([
    'What',
    'Wood',
    'Finish',
    'Made on',
    'Batch',
  ]);
  const text = documentText(batchLabelDocument({ ...tray, made: '2027-01-28', batch: 'January' }), defaultUnits);
  expect(text).not.toContain('____');
});
