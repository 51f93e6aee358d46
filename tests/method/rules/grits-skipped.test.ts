import { expect, test } from 'vitest';
import { told } from './base.ts';

test('a grit that is left out', async () => {
  expect(
    await told(`
steps: { smooth: { calculations: { grits: { with: { drawer: "80, 120, 220, 320" } } } } }
`),
  ).toMatchInlineSnapshot(`
    [
      "grits-skipped at /steps/smooth/calculations/grits: From grit to grit (P80, P120, P220, P320) the largest step is 1.8 times the grain, or the first is too fine to begin with; 1.7 times is the most. Put a grit between, or begin with a coarser one; the grit-sequence calculator names it.",
    ]
  `);
});

test('steps that the sander takes', async () => {
  expect(
    await told(`
steps: { smooth: { calculations: { grits: { with: { drawer: "80, 120, 180, 220, 320" } } } } }
`),
  ).toEqual([]);
});

test('a last grit that the drawer lacks', async () => {
  expect(
    await told(`
steps: { smooth: { calculations: { grits: { with: { drawer: "80, 120, 150, 220" } } } } }
`),
  ).toMatchInlineSnapshot(`
    [
      "grits-skipped at /steps/smooth/calculations/grits: The sequence P80, P120, P150, P220, P320 takes P320, and the drawer has none. Buy the grit and list it in the drawer.",
    ]
  `);
});
