import { expect, test } from 'vitest';
import type { Calculator } from '../../../src/calculators/kit/calculator.ts';
import { type FoldedAnswer, foldedCase, foldedOf, rowsOnPaper } from '../../../src/calculators/kit/folded.ts';
import { answer, type Caution, type Result } from '../../../src/model/evidence/index.ts';
import { defaultUnits } from '../../../src/model/quantity/index.ts';
import { sample } from './sample.ts';

const caution = (id: string, level: Caution['level'], more: Partial<Caution> = {}): Caution => ({
  id,
  level,
  text: `Mind ${id}.`,
  basis: 'shop-practice',
  ...more,
});

const result: Result = {
  verdict: { level: 'care', text: 'It goes. Mind the tip; mind the rest.' },
  figures: {
    area: { label: 'Area', value: 1, unit: 'mm2', basis: 'derived', help: 'How large.', note: 'Hm.' },
    more: { label: 'More', value: 2, unit: 'mm', basis: 'memory', minor: true },
  },
  tables: [
    {
      id: 'rows',
      title: 'Rows',
      columns: [{ id: 'n', label: 'n' }],
      rows: Array.from({ length: rowsOnPaper + 3 }, (_, at) => [at]),
      basis: 'derived',
    },
  ],
  cautions: [
    caution('fire', 'danger'),
    caution('the blade', 'danger', { own: true }),
    caution('the tip', 'warning', { own: true }),
    caution('dents', 'warning'),
    caution('light', 'note'),
    caution('this case', 'note', { own: true }),
  ],
  evidence: [],
};

test('what can hurt or spoil stands in the open, but for what the page says above and what the sentence says word for word', () => {
  const { cautions } = foldedOf(sample, {}, result, defaultUnits, ['dents', 'the blade']);
  expect(cautions.map(({ id }) => id)).toEqual(['fire', 'the blade', 'this case']);
});

test('a danger is said as a danger, also where the sentence says it', () => {
  const verdict = { level: 'stop' as const, text: 'Mind fire. Stop.' };
  const { cautions } = foldedOf(sample, {}, { ...result, verdict }, defaultUnits, []);
  expect(cautions.map(({ id }) => id)).toContain('fire');
});

test('paper gets the figures that count, without their explanations, and the first rows of each table', () => {
  const { figures, tables } = foldedOf(sample, {}, result, defaultUnits, []);
  expect(figures).toEqual([{ label: 'Area', value: 1, unit: 'mm2', basis: 'derived' }]);
  expect(tables[0]?.rows).toHaveLength(rowsOnPaper);
  expect(tables[0]?.left).toBe(3);
});

test('a case of a page is one case in both systems, and its address holds all of it', () => {
  const calculator: Calculator = { ...sample, compute: () => answer({ ...result, figures: {} }) };
  const folded = foldedCase(calculator, { width: '200 mm' }, []) as FoldedAnswer;
  expect(folded.asked.given.map(({ words }) => words)).toEqual(['200 mm', '600 mm', 'One face']);
  expect(folded.askedInch?.given.map(({ words }) => words)).toEqual(['7 7/8 in', '24 in', 'One face']);
  expect(folded.search).toBe('?width=200+mm&length=600+mm&face=one');
  expect(foldedCase(sample, { width: 'wide' }, [])).toMatchObject({ errors: [{ field: 'width' }] });
});
