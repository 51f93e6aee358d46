import { describe, expect, test } from 'vitest';
import { careCardCalculator, longest } from '../../src/calculators/care-card/calculator.ts';
import { promiseIn } from '../../src/calculators/care-card/card.ts';
import { answer } from '../../src/calculators/kit/answer.ts';
import type { Result } from '../../src/model/evidence/index.ts';
import { finishes } from '../../src/model/finish/kinds.ts';

const plain = { species: 'sugar-maple', finish: 'mineral-oil', market: 'us' };
const ask = (raw: Record<string, unknown>) => answer(careCardCalculator, { ...plain, ...raw });
const calc = (raw: Record<string, unknown> = {}): Result => {
  const outcome = ask(raw);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
  return outcome.value.result;
};
const words = (result: Result) => (result.tables?.[0]?.rows ?? []).map((row) => row[1]).join(' ');

describe.each(finishes.map((finish) => [finish.id, finish] as const))('%s', (id, finish) => {
  test('is renewed as its record says, or not at all where it is a film', () => {
    const card = words(calc({ finish: id }));
    expect(card).toContain('No dishwasher, no soaking');
    expect(card.includes(finish.upkeepWords)).toBe(finish.wiped);
    expect(card.includes('Do not oil it')).toBe(!finish.wiped);
    expect(card).not.toMatch(/\bsafe\b|approved|undefined/i);
  });

  test('whose cloths can take fire sends them into water, wherever the buyer is told to use it', () => {
    const fire = words(calc({ finish: id })).includes('can catch fire by themselves');
    expect(fire).toBe(finish.wiped && finish.rags.hazard === 'self-heating');
  });
});

test('the headline is the time between renewals of the finish', () => {
  expect(calc().figures.upkeep?.value).toBe(finishes.find(({ id }) => id === 'mineral-oil')?.figures.upkeep?.value);
  expect(calc({ finish: 'none' }).figures.upkeep).toBeUndefined();
});

test('lines are counted only where nothing else can be', () => {
  expect(calc().figures.lines).toBeUndefined();
  expect(Object.keys(calc({ finish: 'none' }).figures)).toEqual(['lines']);
});

test('the foot is that of the market: the Union asks for the maker’s address and a batch', () => {
  expect(words(calc({ market: 'eu' }))).toContain('Maker’s address:');
  expect(words(calc())).toContain('Not tested or certified by any authority.');
});

test('a sensitising wood warns whoever would sand it', () => {
  const card = words(calc({ species: 'cocobolo' }));
  expect(card).toContain('Do not sand it: the dust of this wood');
  expect(card).toContain('For serving on a plate or paper');
});

describe('the reader’s own words', () => {
  test('stand as they were typed, on one line, marks and all', () => {
    const card = words(calc({ shop: '  <b>Łódź & Söhne</b>\t🪵 ', note: 'Ours,\nsince\u0000 2019' }));
    expect(card).toContain('<b>Łódź & Söhne</b> 🪵');
    expect(card).toContain('Ours, since 2019');
  });

  test('are refused where the card has no room, with the length that it has', () => {
    expect(ask({ note: 'x'.repeat(longest.note) }).ok).toBe(true);
    const outcome = ask({ note: 'x'.repeat(longest.note + 1) });
    expect(outcome).toMatchObject({ ok: false, errors: [{ field: 'note' }] });
    if (!outcome.ok) expect(outcome.errors[0]?.message).toContain(`room for ${longest.note}`);
  });

  test.each([
    ['Food-safe!', 'Food-safe'],
    ['100 % non toxic', 'non toxic'],
    ['FDA approved', 'FDA'],
    ['Bisphenol: BPA-free', 'BPA-free'],
    ['Made by hand', undefined],
  ])('“%s”: a promise is found', (note, promise) => {
    expect(promiseIn(note)).toBe(promise);
    const warned = calc({ note }).cautions.some(({ id }) => id === 'own-promise');
    expect(warned).toBe(promise !== undefined);
  });
});
