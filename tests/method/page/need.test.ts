import { expect, test } from 'vitest';
import type { WorkedMaterial } from '../../../src/method/case/types.ts';
import { needText } from '../../../src/method/page/steps.ts';
import { defaultUnits, inReaderUnits } from '../../../src/model/quantity/index.ts';

const boards = (spare: number): WorkedMaterial =>
  ({
    name: 'boards',
    record: { what: 'White ash', kind: 'wood' },
    spare,
    needs: [{ amount: 12, unit: '[bf_i]' }],
    path: ['materials', 'boards'],
  }) as unknown as WorkedMaterial;

const said = (material: WorkedMaterial) => inReaderUnits(needText(material) ?? '', defaultUnits);

test('what is needed and its spare are told apart, so that 12 here and 13.8 on the bill are one', () => {
  expect(said(boards(0.15))).toBe('12 bd ft and 15 % spare');
  expect(said(boards(0))).toBe('12 bd ft');
});

test('of what nothing is told, nothing is said of a spare', () => {
  expect(needText({ ...boards(0.15), needs: [] })).toBeUndefined();
});
