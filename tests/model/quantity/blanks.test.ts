import { expect, test } from 'vitest';
import { answer } from '../../../src/calculators/kit/answer.ts';
import { stavesField } from '../../../src/calculators/kit/staves-field.ts';
import { resinDoseCalculator } from '../../../src/calculators/resin-dose/calculator.ts';
import { withCommas } from '../../../src/model/quantity/lists.ts';

// Parts of a list that only blanks part: the error shows the very text with commas put in, and that text is read.

test.each([
  ['channel 30 2', 'channel, 30, 2'],
  ['60 30 60', '60, 30, 60'],
  ['oval 90 mm 60 mm 4', 'oval, 90 mm, 60 mm, 4'],
  ['channel 16 1/2 in 1 1/2 in', 'channel, 16 1/2 in, 1 1/2 in'],
  ['channel 8 ft 3 in 2 in', 'channel, 8 ft 3 in, 2 in'],
  ['channel, 30 2', 'channel, 30, 2'],
  ['channel, 30, 2', 'channel, 30, 2'],
])('%s', (typed, mended) => expect(withCommas(typed)).toBe(mended));

const shapes = (text: string) =>
  answer(resinDoseCalculator, { resin: 'slow-casting-2-1', depth: '5 mm', shapes: text });

test.each(['channel 30 2', 'channel, 30 2', 'oval 90 mm 60 mm 4', 'channel 16 1/2 in 1 1/2 in', 'ring 80 60'])(
  'shapes: %s',
  (typed) => {
    const refused = shapes(typed);
    expect(refused.ok).toBe(false);
    if (refused.ok) return;
    expect(refused.errors[0]?.message).toContain(`Write ${withCommas(typed)}.`);
    const again = shapes(withCommas(typed));
    expect(again.ok || again.errors.every(({ field }) => field !== 'shapes')).toBe(true);
  },
);

const staves = stavesField({ label: 'Staves' });

test.each([
  ['white-ash 60 flatsawn', 'Write white-ash, 60, flatsawn.'],
  ['black cherry 40 mm quartersawn', 'Write black cherry, 40 mm, quartersawn.'],
  ['white-ash, 60 mm flatsawn', 'Write white-ash, 60 mm, flatsawn.'],
  ['60 30 60', 'such as white-ash, 60; white-ash, 30; white-ash, 60.'],
])('staves: %s', (typed, wayOut) => {
  const message = staves.safeParse(typed).error?.issues[0]?.message ?? '';
  expect(message).toContain(wayOut);
  const offered = /(?:Write|such as) (.*)\.$/.exec(message)?.[1] ?? '';
  expect(staves.safeParse(offered).success).toBe(true);
});

test('what is parted by commas is read as before', () => {
  for (const text of ['white-ash, 2 1/2 in, flatsawn', 'black cherry, 40 mm', 'white-ash, 60'])
    expect(staves.safeParse(text).success, text).toBe(true);
});
