import { describe, expect, test } from 'vitest';
import { careCardCalculator } from '../../src/calculators/care-card/calculator.ts';
import { longest } from '../../src/calculators/care-card/inputs.ts';
import { cureClockCalculator } from '../../src/calculators/cure-clock/calculator.ts';
import { answer } from '../../src/calculators/kit/answer.ts';
import { documentText } from '../../src/calculators/kit/document-text.ts';
import type { Result } from '../../src/model/evidence/index.ts';
import { finishes } from '../../src/model/finish/kinds.ts';
import { promisesIn } from '../../src/model/food/index.ts';
import { defaultUnits, inReaderUnits } from '../../src/model/quantity/index.ts';

const plain = { species: 'sugar-maple', finish: 'mineral-oil', market: 'us' };
const ask = (raw: Record<string, unknown>) => answer(careCardCalculator, { ...plain, ...raw });
const calc = (raw: Record<string, unknown> = {}): Result => {
  const outcome = ask(raw);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
  return outcome.value.result;
};
const text = (result: Result) =>
  (result.documents ?? []).map((document) => documentText(document, defaultUnits)).join('\n');
const words = (result: Result) => text(result).replaceAll('\n', ' ');

test('a card of two woods names both, and none of its own lines is a promise', () => {
  const card = calc({ secondSpecies: 'black-cherry', resinPlace: 'beside-food' });
  expect(words(card)).toMatch(/maple and [a-z ]*cherry/);
  expect(promisesIn(words(card).slice(words(card).indexOf('No solvent')))).toEqual([]);
});

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

test('bare wood is not renewed', () => {
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
    ['Food-safe!', 'food safe'],
    ['100 % non toxic', 'non toxic'],
    ['Bisphenol: BPA-free', 'bpa free'],
    ['glass and fork', 'glass and fork'],
    ['Made by hand', undefined],
  ])('“%s”: a promise is found, and said first', (note, promise) => {
    const result = calc({ note });
    const warned = result.cautions.find(({ id }) => id === 'own-promise');
    expect(warned?.text.includes(`“${promise}”`) ?? false).toBe(promise !== undefined);
    expect(result.verdict?.level === 'good').toBe(promise === undefined);
  });
});

describe('a line with a promise', () => {
  const held = calc({ note: 'Safe for food, no BPA', shop: 'Lakeside workshop' });
  const lines = (result: Result) => text(result).split('\n');

  test('is not printed, and the answer says so and names every promise', () => {
    expect(words(held)).not.toMatch(/safe for food|no bpa/i);
    expect(lines(held)[0]).toBe('Lakeside workshop');
    expect(held.verdict?.text).toMatch(
      /^The line of your own is not printed: nobody has shown “safe for food” and “no bpa”\./,
    );
  });

  test('in the name of the shop holds the name back', () => {
    const result = calc({ note: 'Oil it in spring.', shop: 'Food-safe boards' });
    expect(words(result)).not.toMatch(/food.safe/i);
    expect(lines(result)).toContain('Oil it in spring.');
    expect(result.verdict?.text).toMatch(/^The name of the shop is not printed/);
  });
});

test('a coated end is named on the card as long as it is, and the length is asked of a coat alone', () => {
  const coated = {
    resinPlace: 'coat',
    coatedLength: '120 mm',
    resin: 'fast-coating-1-1',
    market: 'us',
    finish: 'mineral-oil',
  };
  const card = words(calc(coated));
  expect(inReaderUnits(card, defaultUnits)).toContain(
    'The coated end, 120 mm of the length, is epoxy resin: keep food on the bare wood.',
  );
  expect(card).not.toMatch(/inlay/i);
  expect(words(calc({ ...coated, resinPlace: 'beside-food' }))).not.toContain('coated');
});

describe('handing over', () => {
  const inlaid = { resinPlace: 'beside-food', resin: 'slow-casting-2-1' };
  const verdict = (raw: Record<string, unknown>) => {
    const { level, text } = calc(raw).verdict ?? {};
    return { level, text: inReaderUnits(text ?? '', defaultUnits) };
  };
  test('a board of mineral oil and an inlay waits for its resin', () => {
    const result = calc({ ...inlaid, roomTemperature: '22 °C' });
    expect(result.figures.resinCure).toMatchObject({ value: 7, unit: 'd' });
    expect(result.cautions[0]?.id).toBe('resin-cure-first');
    expect(verdict({ ...inlaid, roomTemperature: '22 °C' }).text).toMatch(
      /^Hand the board over 7 days after the last pour; renew the finish every \d+ to \d+ months in a home\./,
    );
  });
  test('by the clock of the cure clock, in a room with cold nights too', () => {
    const room = { roomTemperature: '20 °C', nightTemperature: '12 °C' };
    const clock = answer(cureClockCalculator, {
      resin: 'slow-casting-2-1',
      dayTemperature: '20 °C',
      nightTemperature: '12 °C',
    });
    const days = clock.ok ? (clock.value.result.figures.foodService?.value ?? 0) / 86_400 : 0;
    expect(days).toBeGreaterThan(14);
    expect(calc({ ...inlaid, ...room }).figures.resinCure?.value).toBe(Math.ceil(days));
  });
  test('in a room where it never cures it is not handed over', () => {
    const cold = calc({ ...inlaid, roomTemperature: '8 °C', finish: 'tung-oil' });
    expect(cold.verdict?.level).toBe('stop');
    expect(cold.cautions[0]).toMatchObject({ id: 'never-cured', level: 'danger' });
    expect(Object.keys(cold.figures)).toEqual(['upkeep']);
  });
  test('of a resin that was not named no day is given, whatever the finish needs', () => {
    const unnamed = calc({ resinPlace: 'underside', finish: 'tung-oil' });
    expect(unnamed.verdict?.level).toBe('unknown');
    for (const name of ['fullCure', 'resinCure']) expect(unnamed.figures[name], name).toBeUndefined();
  });
  test('has its day counted from the last work on the board, and none where one is not known', () => {
    const days = (raw: Record<string, unknown>) => {
      const { timeline } = calc(raw);
      return timeline && [timeline.zero, ...timeline.events.map(({ id, at }) => `${id} ${at / 86_400}`)];
    };
    const warm = { ...inlaid, roomTemperature: '22 °C' };
    expect(days(warm)).toEqual(['the last pour', 'food 7', 'hand-over 7']);
    expect(days({ ...warm, finish: 'tung-oil' })).toEqual(['the last coat', 'food 28', 'hand-over 28']);
    // What better bears no food goes to the buyer all the same.
    expect(days({ finish: 'shellac', food: 'moist' })?.filter((line) => line.startsWith('food'))).toEqual([]);
    expect(days({ resinPlace: 'underside', finish: 'tung-oil' })).toBeUndefined();
    expect(days({ ...inlaid, roomTemperature: '8 °C', finish: 'tung-oil' })).toBeUndefined();
  });
  test('renewing is said in months, never in 180 days', () => {
    expect(calc({ finish: 'tung-oil' }).figures.upkeep).toMatchObject({ value: 6, low: 3, high: 12, unit: 'mo' });
    expect(verdict({ finish: 'tung-oil' }).text).toContain('every 3 to 12 months');
  });
});

describe('what does not go together', () => {
  test('shellac is wiped, never washed in hot water, and serves dry food alone', () => {
    const card = words(calc({ finish: 'shellac' }));
    expect(card).toContain('barely damp');
    expect(card).not.toMatch(/After use, (?:hot|warm) water/);
    expect(calc({ finish: 'shellac', food: 'moist' }).cautions.find(({ id }) => id === 'food-level')?.text).toContain(
      'Better not',
    );
  });
  test('no card keeps food on the wood and off the board', () => {
    for (const market of ['us', 'eu'])
      for (const resinPlace of ['under-food', 'beside-food', 'coat', 'underside'])
        for (const finish of finishes.map(({ id }) => id))
          for (const species of ['sugar-maple', 'cocobolo', 'pacific-yew']) {
            const card = words(calc({ market, resinPlace, finish, species }));
            if (/Not for (?:contact with )?food|on a plate/.test(card))
              expect(card, `${market} ${resinPlace} ${finish} ${species}`).not.toMatch(
                /keep food on the (?:bare )?wood|food on the other face/,
              );
          }
  });
  test('whatever dries by oxygen always brings the caution on rags', () => {
    for (const finish of finishes.filter(({ sets }) => sets === 'by-oxygen'))
      expect(
        calc({ finish: finish.id }).cautions.map(({ id }) => id),
        finish.id,
      ).toContain('oily-rags');
  });
});
