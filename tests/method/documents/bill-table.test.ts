import { describe, expect, test } from 'vitest';
import { billTable } from '../../../src/method/documents/bill-table.ts';
import { teacherSheet } from '../../../src/method/documents/teacher.ts';
import { answerMethod, MethodMemory } from '../../../src/method/page/answer.ts';
import { readMethodTexts } from '../../../src/store/index.ts';

const oil = { what: 'Oil', need: '70 ml', buy: '1 × 250 ml', cost: '12.00 USD' };
const cloths = { what: 'Cloths', need: '12', buy: '', cost: '', missing: 'no price in the shop record' };

const parts = (...asked: Parameters<typeof billTable>) => {
  const blocks = billTable(...asked);
  const [table] = blocks.flatMap((block) => (block.kind === 'table' ? [block.table] : []));
  return {
    columns: table?.columns.map(({ label }) => label),
    rows: table?.rows,
    said: blocks.flatMap((block) => (block.kind === 'text' ? [block.text] : [])),
  };
};

describe('a table of what to buy', () => {
  test('says below it, once, why lines have no cost', () => {
    const { columns, rows, said } = parts('bill', [oil, cloths, { ...cloths, what: 'Tape' }], true);
    expect(columns).toEqual(['What', 'Needed, with spare', 'Buy', 'Cost']);
    expect(rows?.[1]).toEqual(['Cloths', '12', '', '']);
    expect(said).toEqual(['No price in the shop record: Cloths; Tape.']);
  });

  test('leaves out a column that is empty for all', () => {
    expect(parts('bill', [cloths], true)).toEqual({
      columns: ['What', 'Needed, with spare'],
      rows: [['Cloths', '12']],
      said: ['No price in the shop record: so it is with all of it.'],
    });
  });

  test('on a teacher’s sheet without a shop record has no empty column, and names no record that there is not', async () => {
    const text = readMethodTexts().find(({ id }) => id === 'first-tray')?.text ?? '';
    const answered = await answerMethod({ text, file: 'methods/first-tray.yaml' }, new MethodMemory());
    if (!answered.ok) throw new Error('the tray does not answer');
    const { blocks } = teacherSheet(answered.page, { made: '2026-11-30' } as Parameters<typeof teacherSheet>[1]);
    const bill = blocks.flatMap((block) =>
      block.kind === 'table' && block.table.id === 'bill' ? [block.table] : [],
    )[0];
    expect(bill?.rows.length).toBeGreaterThan(5);
    for (const [at] of (bill?.columns ?? []).entries()) expect(bill?.rows.some((row) => row[at] !== '')).toBe(true);
    expect(JSON.stringify(bill)).not.toContain('shop record');
  });
});
