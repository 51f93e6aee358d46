import { describe, expect, test } from 'vitest';
import { canonicalUnit, type Dimension, parseQuantity, units } from '../../../src/model/quantity/index.ts';
import { readAnyQuantity } from '../../../src/model/quantity/read-any.ts';

/** Every dimension that a text may have, by trying all. */
function tried(text: string) {
  return (Object.keys(canonicalUnit) as Dimension[])
    .filter((dimension) => !['count', 'money', 'number'].includes(dimension))
    .flatMap((dimension) => {
      const read = parseQuantity(text, { dimension, bareUnit: canonicalUnit[dimension] });
      return read.ok ? [{ dimension, value: read.value, unit: canonicalUnit[dimension] }] : [];
    });
}

describe('a quantity by its own unit', () => {
  const spellings = units.flatMap(({ label, names }) => [label, ...names]).filter((spelling) => spelling !== '');
  test.each([...new Set(spellings)])('3 %s is what trying every dimension finds', (spelling) => {
    const read = readAnyQuantity(`3 ${spelling}`);
    expect(read.ok ? read.value : []).toEqual(tried(`3 ${spelling}`));
  });

  test.each(['1\' 3 1/2"', '2 lb 3 oz', '9-7/8"', '½ in', '1 h 30 min', '−5 °C', '2,5 mm', '100g'])(
    '%s too',
    (text) => {
      const read = readAnyQuantity(text);
      expect(read.ok && read.value).toEqual(tried(text));
    },
  );

  test.each([
    [12, 12],
    ['1,5', 1.5],
    [' 7 ', 7],
  ])('%s is a bare number', (entry, value) => {
    expect(readAnyQuantity(entry)).toEqual({ ok: true, value: [{ dimension: 'number', value, unit: '1' }] });
  });

  test.each(['', 'foo', '3 foo', '1e999', '12 in 3'])('%j is none, and the way out is said', (text) => {
    const read = readAnyQuantity(text);
    expect(read.ok).toBe(false);
    if (!read.ok) expect(read.wayOut).toContain('305 mm');
  });
});
