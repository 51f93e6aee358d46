import { expect, test } from 'vitest';
import { pourTooDeep } from '../../../src/method/rules/pour-too-deep.ts';
import { told, withResin, workedIn } from './base.ts';

const deep = (depth: string) => `steps: { fill: { calculations: { heat: { with: { depth: ${depth} } } } } }`;

test('a pour just deeper than the resin bears', async () => {
  expect(await told(withResin, deep('19.5 mm'))).toMatchInlineSnapshot(`
    [
      "pour-too-deep at /steps/fill/calculations/heat/with/depth: The pour is 19.5 mm deep in one go; 19 mm is the most in this shop. Pour it in 2 layers, as heat says, or in a cooler shop.",
    ]
  `);
});

test('one just within it', async () => {
  expect(await told(withResin, deep('18.9 mm'))).toEqual([]);
});

test('a pour within its depth that would heat itself further than the sheet’s deepest', async () => {
  const worked = await workedIn({}, withResin);
  const figure = worked.calculations.heat?.result?.figures.heatIndex;
  if (!figure) throw new Error('the pour has no heat index');
  const indexOf = (value: number) => {
    Object.assign(figure, { value });
    return pourTooDeep.find(worked).map(({ message }) => message);
  };
  expect(indexOf(1)).toEqual([]);
  expect(indexOf(1.4)).toEqual([expect.stringContaining('1.4 times as far as the deepest')]);
});

test('what stands proud of the face is poured and heats too', async () => {
  const proud = 'steps: { fill: { calculations: { heat: { with: { depth: 18.9 mm, proud: 0.6 mm } } } } }';
  expect(await told(withResin, proud)).toEqual([expect.stringContaining('The pour is 19.5 mm deep in one go')]);
});
