import { expect, test } from 'vitest';
import { documentText } from '../../../src/calculators/kit/document-text.ts';
import type { ResultDocument } from '../../../src/model/evidence/index.ts';
import { amount, defaultUnits } from '../../../src/model/quantity/index.ts';

const sheet: ResultDocument = {
  id: 'sheet',
  title: 'Cup sheet',
  form: 'sheet',
  blocks: [
    { kind: 'warning', level: 'danger', text: `No cup above ${amount(0.4, 'L', 2)}.` },
    { kind: 'heading', text: 'Cups' },
    {
      kind: 'table',
      ticks: ['a'],
      write: ['B in at'],
      table: {
        id: 'cups',
        title: 'Cups in turn',
        columns: [
          { id: 'cup', label: 'Cup' },
          { id: 'a', label: 'Part A', unit: 'g', kept: true },
        ],
        rows: [
          [1, 100],
          [2, null],
        ],
        basis: 'derived',
      },
    },
    { kind: 'list', heading: 'Wear', items: ['gloves', 'goggles'] },
    { kind: 'ticks', items: ['Scale at zero'] },
    { kind: 'blanks', labels: ['Piece', 'Date'] },
  ],
};

test('a document reads as plain text, boxes and lines to write on and all', () => {
  expect(documentText(sheet, defaultUnits).split('\n')).toEqual([
    'Cup sheet',
    '',
    'Danger. No cup above 400 ml.',
    '',
    'Cups',
    '',
    'Cups in turn',
    'Cup  Part A     B in at',
    '---  ---------  --------',
    '  1  [ ] 100 g  ________',
    '  2             ________',
    '',
    'Wear:',
    '- gloves',
    '- goggles',
    '',
    '[ ] Scale at zero',
    '',
    'Piece: ________________',
    'Date: ________________',
  ]);
});

test('quantities are in the units of whoever reads it', () => {
  const inches = documentText(sheet, { system: 'inch', inches: 'sixteenths' });
  expect(inches).toContain('No cup above 14 fl oz.');
  expect(inches).toContain('[ ] 100 g');
});

test('a card bears no title, and a piece without words leaves no gap', () => {
  const card: ResultDocument = {
    ...sheet,
    form: 'card',
    blocks: [
      { kind: 'text', text: 'One' },
      { kind: 'list', items: [] },
      { kind: 'text', text: 'Two' },
    ],
  };
  expect(documentText(card, defaultUnits)).toBe('One\nTwo');
});
