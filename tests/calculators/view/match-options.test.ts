import { expect, test } from 'vitest';
import { speciesOptions } from '../../../src/calculators/kit/species-field.ts';
import { matchOptions } from '../../../src/calculators/view/match-options.ts';

const first = (text: string) => matchOptions(speciesOptions, text)[0]?.value;

test.each([
  ['hard map', 'sugar-maple'],
  ['maple sugar', 'sugar-maple'],
  ['ash', 'white-ash'],
  ['Black Cherry', 'black-cherry'],
  ['juglans', 'black-walnut'],
  ['red oak', 'northern-red-oak'],
])('“%s” finds %s first', (text, id) => {
  expect(first(text)).toBe(id);
});

test('nothing typed shows the usual woods, and what nothing matches shows nothing', () => {
  expect(first('')).toBe('sugar-maple');
  expect(matchOptions(speciesOptions, 'zzzz')).toEqual([]);
});
