import { describe, expect, test } from 'vitest';
import { told } from './base.ts';

const doing = (does: string, more = '') =>
  told(`steps: { smooth: { does: "${does}" } }`, ...(more ? [more] : [])).then((lines) =>
    lines.filter((line) => line.startsWith('tool-named-not-listed')),
  );

test('a pencil that no list has, told once', async () => {
  expect(
    await told('steps: { smooth: { does: Draw pencil lines. }, hole: { does: Mark it with a pencil. } }'),
  ).toMatchInlineSnapshot(`
    [
      "tool-named-not-listed at /steps/hole/does: “Bore the hanging hole” names “pencil”, and so does one step more, and no list of the method has it. Add it to the tools (kind: other), and list it in the steps that take it.",
    ]
  `);
});

describe('just keeps', () => {
  test.each([
    [
      'a list that has it',
      'Draw pencil lines.',
      'tools: { marks: { what: "Pencil and rule", kind: other } }\nsteps: { smooth: { tools: [sander, extractor, goggles, muffs, mask, marks] } }',
    ],
    [
      'a material that is one',
      'Ring the faults with chalk.',
      'materials: { chalk: { what: Chalk, kind: other, needs: [{ amount: 1, per: batch }] } }\nsteps: { smooth: { uses: [maple, discs, chalk] } }',
    ],
    ['what is turned away', 'Never lever it off with a chisel.', ''],
    ['words that mean something else', 'Level it until it is one plane; the scale decides, square to the rule.', ''],
    ['part of another word', 'A chalky, awless, pencilled look.', ''],
  ])('%s', async (_what, does, lists) => {
    expect(await doing(does, lists)).toEqual([]);
  });
});
