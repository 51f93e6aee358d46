import { expect, test } from 'vitest';
import { defaultUnits, inReaderUnits } from '../../../src/model/quantity/index.ts';
import { findingsIn } from './base.ts';

const pocket = (does: string) => `
parameters: { hole: { kind: quantity, label: Size of the hole, default: 12 mm, least: 8 mm, most: 30 mm } }
steps: { hole: { does: "${does}", piece: { length: { from: /parameters/hole } } } }
`;
const at = async (hole: string, does: string) =>
  (await findingsIn({ set: { hole } }, pocket(does)))
    .filter(({ rule }) => rule !== 'calculation-care')
    .map(({ rule, path, message, wayOut }) =>
      inReaderUnits(`${rule} at /${path.join('/')}: ${message} ${wayOut}`, defaultUnits),
    );

test('a size that is written out and changes', async () => {
  expect(await at('20 mm', 'Bore a hole of 12 mm into waste.')).toMatchInlineSnapshot(`
    [
      "words-differ at /steps/hole/does: The text says 12 mm; “Size of the hole” is 20 mm in this case. Write {/parameters/hole} in its place, and it follows.",
    ]
  `);
});

test('the same in inches, to its own digits', async () => {
  expect(await at('20 mm', 'Bore a hole of 15/32 in into waste.')).toHaveLength(1);
  expect(await at('20 mm', 'Bore a hole of 1/2 in into waste.')).toEqual([]);
});

test('the same while it holds, to the digits written', async () => {
  expect(await at('12 mm', 'Bore a hole of 12 mm into waste.')).toEqual([]);
  expect(await at('12.4 mm', 'Bore a hole of 12 mm into waste.')).toEqual([]);
  expect(await at('12.6 mm', 'Bore a hole of 12 mm into waste.')).toHaveLength(1);
});

test('another size, another dimension, and a reference', async () => {
  expect(await at('20 mm', 'Bore 3 mm beside the line, for 12 min at most.')).toEqual([]);
  expect(await at('20 mm', 'Bore a hole of {/parameters/hole} with P12 mm.')).toEqual([]);
});

test('what is something else in its step', async () => {
  const told = await findingsIn(
    { set: { hole: '20 mm' } },
    pocket('Take the bit of 12 mm.'),
    'tools: { bit: { limits: { diameter: 12 mm } } }',
  );
  expect(told.filter(({ rule }) => rule === 'words-differ')).toEqual([]);
});

test('a number that is only near the default, and one that a bracket says again', async () => {
  expect(await at('20 mm', 'Leave 12.2 mm of wood around it.')).toEqual([]);
  expect(await at('20 mm', 'Leave 11 mm (15/32 in) of wood around it.')).toEqual([]);
  expect(await at('20 mm', 'Bore a hole of {/parameters/hole} (12 mm).')).toHaveLength(1);
});

test('a quantity in braces is written out too', async () => {
  expect(await at('20 mm', 'Bore a hole of {12 mm} into waste.')).toMatchInlineSnapshot(`
    [
      "words-differ at /steps/hole/does: The text says 12 mm; “Size of the hole” is 20 mm in this case. Write {/parameters/hole} in its place, and it follows.",
    ]
  `);
  expect(await at('20 mm', 'Bore a hole of {15/32 in} into waste.')).toHaveLength(1);
  expect(await at('20 mm', 'Leave {11 mm} (15/32 in) of wood around it.')).toEqual([]);
  expect(await at('20 mm', 'Leave {11 mm} of wood around it.')).toEqual([]);
});
