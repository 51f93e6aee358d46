import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readResin } from '../../../src/calculators/kit/resin-field.ts';
import { readResinSheet, resinSheetForm, tidySheet } from '../../../src/calculators/kit/resin-sheet.ts';

const whole = resinSheetForm.example.metric;

function refusal(value: Parameters<typeof readResin>[0]): string {
  const read = readResin(value);
  if (read.ok) throw new Error(`read ${JSON.stringify(value)}`);
  return `${read.problem}. ${read.wayOut}`;
}

describe('a resin in an address or a file', () => {
  test('is a kind by its id', () => {
    expect(readResin(' Slow-Casting-2-1 ')).toMatchObject({ ok: true, value: { kind: 'slow-casting-2-1' } });
  });

  test('is a data sheet as JSON text and as an object, alike', () => {
    const asText = readResin(JSON.stringify(whole));
    expect(asText).toEqual(readResin(whole));
    expect(asText).toMatchObject({ ok: true, value: { fromSheet: true, name: whole.name } });
  });

  test('numbers of an object are in the canonical unit', () => {
    const read = readResin({ name: 'Bench', potLife: 1800, densityA: 1160, densityB: 0.97 });
    if (!read.ok) throw new Error(read.problem);
    expect(read.value.figures.potLife?.value).toBe(1800);
    expect(read.value.figures.densityA?.value).toBeCloseTo(1.16, 9);
    expect(read.value.figures.densityB?.value).toBe(0.97);
  });

  test('both example sheets are read and say the same', () => {
    const [metric, inch] = [resinSheetForm.example.metric, resinSheetForm.example.inch].map(readResinSheet);
    if (!metric?.ok || !inch?.ok) throw new Error('an example is refused');
    for (const [name, value] of Object.entries(metric.value.figures)) {
      // The inch sheet is printed in round inches and ounces.
      expect((inch.value.figures[name as 'densityA'] ?? 0) / value).toBeCloseTo(1, 1);
    }
  });

  test.each([
    ['an unknown kind', 'slow-casting-2-2', /is not a kind of resin.*Did you mean slow-casting-2-1\?/],
    ['a text cut off', '{"name":"Bench","potLi', /not whole.*Copy the whole link again/],
    ['an unknown entry', { name: 'Bench', potlife: '6 h' }, /“potlife”: There is no input.*Did you mean potLife\?/],
    ['a sheet without a name', { potLife: '6 h' }, /name of the sheet: Nothing was given/],
    ['a name of signs', { name: '—' }, /name of the sheet: “—” has no letter or digit/],
    ['a long name', { name: 'x'.repeat(81) }, /name of the sheet: The name has 81 characters/],
    ['a bad quantity', { name: 'Bench', potLife: 'soon' }, /pot life: “soon” is not a time/],
    ['a quantity out of range', { name: 'Bench', densityA: '9 g/ml' }, /density of part a.*more than this takes/i],
    ['a bad ratio', { name: 'Bench', mixByVolume: 'equal' }, /mix ratio by volume: “equal” is not a mix ratio/],
    ['a nested value', { name: 'Bench', potLife: { hours: 6 } }, /cannot be read as pot life/],
    [
      'a bare mass of a pot life',
      { name: 'Bench', potLife: '30 min', potLifeMass: '100' },
      /mass that it is stated for: “100” has no unit, and may be g or oz\. Write 100 g, or 100 oz/i,
    ],
    ['a bare greatest mass', { name: 'Bench', greatestMass: '10' }, /“10” has no unit, and may be g or oz/],
    ['a mass without its pot life', { name: 'Bench', potLifeMass: '100 g' }, /pot life: Nothing is given/],
  ])('%s is refused, and the entry named', (_, value, message) => {
    expect(refusal(value)).toMatch(message);
  });

  test('names that belong to every object are no entries', () => {
    expect(refusal('{"name":"Bench","__proto__":{"potLife":"6 h"}}')).toContain('There is no input of this name');
    expect(refusal({ name: 'Bench', constructor: 'x' })).toContain('There is no input of this name');
  });

  test('any JSON is read or refused with a sentence', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.json(),
          fc.string(),
          fc.object().map((value) => JSON.stringify(value)),
        ),
        (text) => {
          const read = readResin(text);
          if (!read.ok) expect(`${read.problem}. ${read.wayOut}`.trim()).toMatch(/[.?]$/);
        },
      ),
    );
  });
});

test('a number of a program gets the unit that it was in, and reads the same', () => {
  const raw = {
    name: 'Bench',
    potLife: 1800,
    potLifeTemperature: 25,
    densityA: 1160,
    densityB: 0.97,
    greatestDepth: 12,
  };
  const tidy = tidySheet(raw);
  expect(tidy.potLife).toBe('1800 s');
  expect(readResinSheet(tidy)).toEqual(readResinSheet(raw));
});

test('a tidied sheet holds its entries in the order of the form, without empty ones', () => {
  expect(Object.keys(tidySheet({ densityA: 1.16, name: ' Bench ', potLife: ' ', stray: 'x' }))).toEqual([
    'name',
    'densityA',
  ]);
});
