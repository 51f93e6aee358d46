import { expect, test } from 'vitest';
import { readingFault } from '../../../src/method/batch/reading-fault.ts';
import { told } from './kit.ts';

const day = { use: 'cure-clock', input: 'dayTemperature' } as const;
const faultOf = async (value: string) => told((await readingFault(day, value)) ?? '');

test.each(['16 °C', '60 °F', '16,5 °C'])('%s is a reading', async (value) => {
  expect(await faultOf(value)).toBe('');
});

test.each([
  ['abc °C', /abc/],
  ['1e9 °F', /1e9|more than/],
  ['-5 °C', /-5 °C is less than this takes/],
  ['60 °C', /60 °C.* is more than this takes/],
  ['16 mm', /16 mm/],
])('%s is refused in the words of the field', async (value, words) => {
  expect(await faultOf(value)).toMatch(words);
});
