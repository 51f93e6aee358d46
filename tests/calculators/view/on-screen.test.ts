import { expect, test } from 'vitest';
import { onScreen } from '../../../src/calculators/view/on-screen.ts';
import type { Block } from '../../../src/model/evidence/index.ts';

const blanks: Block = { kind: 'blanks', labels: ['Piece'] };
const gloves: Block = { kind: 'warning', level: 'danger', text: 'Gloves on.' };
const goggles: Block = { kind: 'warning', level: 'danger', text: 'Goggles on.' };
const facts: Block = { kind: 'text', text: 'A : B by weight 100 : 43' };
const clock: Block = { kind: 'text', text: 'Every cup out within 2 h.', large: true };
const cups = (id: string): Block => ({
  kind: 'table',
  table: { id, title: id, columns: [{ id: 'cup', label: 'Cup' }], rows: [[1]], basis: 'derived' },
});

test('the rows come first under the line that is read from afar, and what the answer says is not said again', () => {
  const [seal, fill] = [cups('seal'), cups('fill')];
  expect(onScreen([blanks, gloves, goggles, facts, clock, seal, fill], ['Gloves on.'])).toEqual([
    clock,
    seal,
    fill,
    goggles,
    facts,
    blanks,
  ]);
});

test('a sheet with headings keeps its order', () => {
  const heading: Block = { kind: 'heading', text: 'Cups' };
  const table = cups('cups');
  expect(onScreen([goggles, heading, facts, table], ['Gloves on.'])).toEqual([goggles, heading, facts, table]);
});
