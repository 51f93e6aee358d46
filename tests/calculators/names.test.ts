import { describe, expect, test } from 'vitest';
import { calculators } from '../../src/calculators/index.ts';
import { answer } from '../../src/calculators/kit/answer.ts';
import type { RawInputs } from '../../src/calculators/kit/calculator.ts';
import type { Result } from '../../src/model/evidence/index.ts';

/** The answer of a calculator to its own example, with some inputs changed. */
function answerOf(id: string, changed: RawInputs = {}): Result {
  const calculator = calculators.find((each) => each.id === id);
  if (!calculator) throw new Error(`no calculator ${id}`);
  const asked = Object.entries({ ...calculator.example.metric, ...changed }).filter(([, value]) => value !== '');
  const outcome = answer(calculator, Object.fromEntries(asked));
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
  return outcome.value.result;
}

const eventsOf = (result: Result) => (result.timeline?.events ?? []).map(({ id }) => id);
const usesOf = (result: Result) => (result.uses ?? []).map(({ id }) => id);
const sum = (amounts: readonly number[]) => amounts.reduce((total, each) => total + each, 0);

// Whoever keeps a name of an answer, as a file that asks for `recoat-opens`, must find it again: a name changes here or nowhere.
const named: readonly { id: string; changed?: RawInputs; events?: readonly string[]; uses?: readonly string[] }[] = [
  { id: 'stock-order', uses: ['boards', 'board-feet'] },
  { id: 'board-yield', uses: ['board-1', 'board-2', 'board-3'] },
  { id: 'acclimatise', events: ['half-way', 'ready'] },
  {
    id: 'grit-sequence',
    uses: ['discs-p80', 'discs-p120', 'discs-p150', 'discs-p220', 'discs-p320', 'sanding-time'],
  },
  {
    id: 'resin-dose',
    events: ['seal-coat', 'fill'],
    uses: ['part-a', 'part-b', 'mix-seal-coat', 'mix-colour-1', 'mix-colour-2', 'colour-1', 'colour-2', 'cups'],
  },
  { id: 'pour-heat', events: ['layer-1', 'layer-2'] },
  {
    id: 'pour-heat',
    changed: { depth: '6 mm' },
    events: ['pour-work', 'pour-hottest', 'pour-first-gel', 'pour-last-gel', 'pour-cool'],
  },
  {
    id: 'finish-coats',
    events: ['coat-1', 'wipe-1', 'coat-2', 'wipe-2', 'coat-3', 'wipe-3', 'handle', 'finish-ready'],
    uses: ['finish'],
  },
  {
    id: 'finish-coats',
    changed: { coats: '1', resin: 'none' },
    events: ['coat-1', 'wipe-1', 'handle', 'food', 'hand-over'],
    uses: ['finish'],
  },
  { id: 'working-time', events: ['spread', 'cup-work', 'cup-gel', 'work', 'film-gel'] },
  {
    id: 'cure-clock',
    events: ['work', 'gel', 'recoat-opens', 'recoat-closes', 'sandable', 'light-use', 'full-cure', 'oil', 'food'],
  },
  { id: 'flood-coat', uses: ['part-a', 'part-b', 'cups'] },
  { id: 'care-card', events: ['food', 'hand-over'] },
];

describe('names by which an answer is asked', () => {
  test.each(named)('$id $changed', ({ id, changed, events = [], uses = [] }) => {
    const result = answerOf(id, changed);
    expect(eventsOf(result)).toEqual(events);
    expect(usesOf(result)).toEqual(uses);
  });

  test.each(calculators.map(({ id }) => id))(
    '%s: figures in camel case, all else in small letters and hyphens, none twice',
    (id) => {
      const result = answerOf(id);
      for (const name of Object.keys(calculators.find((each) => each.id === id)?.figures ?? {}))
        expect(name).toMatch(/^[a-z][A-Za-z0-9]*$/);
      const lists = [
        eventsOf(result),
        usesOf(result),
        ...[result.tables, result.documents, result.series].map((each) => (each ?? []).map((one) => one.id)),
      ];
      for (const names of lists) {
        for (const name of names) expect(name).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
        expect(new Set(names).size).toBe(names.length);
      }
      for (const { within = [] } of result.uses ?? [])
        expect(usesOf(result)).toEqual(expect.arrayContaining([...within]));
      for (const { after } of result.timeline?.events ?? []) if (after) expect(eventsOf(result)).toContain(after);
    },
  );
});

describe('what a plan of the work takes from an answer', () => {
  test('the mix of each colour and of the seal coat is the whole mix, and no bill counts it twice', () => {
    const { uses = [], figures } = answerOf('resin-dose');
    const mixes = uses.filter(({ id }) => id.startsWith('mix-'));
    expect(mixes.every(({ within }) => within?.join() === 'part-a,part-b')).toBe(true);
    expect(sum(mixes.map(({ amount }) => amount))).toBeCloseTo(figures.mass?.value ?? 0, 6);
    const [, green, amber] = mixes.map(({ amount }) => amount);
    expect((green ?? 0) / (amber ?? 1)).toBeCloseTo(7 / 3, 6);
    const parts = uses.filter(({ id }) => id.startsWith('part-'));
    expect(sum(parts.map(({ amount }) => amount))).toBeCloseTo(figures.mass?.value ?? 0, 6);
  });

  test('board feet are the same boards', () => {
    expect(answerOf('stock-order').uses?.find(({ id }) => id === 'board-feet')?.within).toEqual(['boards']);
  });

  test('the area that is sanded, of all pieces, and the coats that go on', () => {
    expect(answerOf('grit-sequence').figures.area).toMatchObject({ value: 12 * 0.27e6, unit: 'mm2' });
    expect(answerOf('finish-coats', { coats: '' }).figures.coats).toMatchObject({ value: 3, basis: 'shop-practice' });
    expect(answerOf('finish-coats', { coats: '2' }).figures.coats).toMatchObject({ value: 2, basis: 'derived' });
  });

  test('the last layer is due as often the wait after the first as there are layers after it', () => {
    const { figures, timeline } = answerOf('pour-heat', { depth: '45 mm' });
    expect(figures.layers?.value).toBeGreaterThan(2);
    expect(figures.lastLayer?.value).toBe(((figures.layers?.value ?? 0) - 1) * (figures.waitBetween?.value ?? 0));
    expect(timeline?.events.at(-1)?.at).toBe(figures.lastLayer?.value);
    expect(answerOf('pour-heat', { depth: '6 mm' }).figures.lastLayer).toBeUndefined();
  });
});
