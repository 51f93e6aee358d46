import { expect, test } from 'vitest';
import { told } from './base.ts';

test('a grit that is left out', async () => {
  expect(
    await told(`
steps: { smooth: { calculations: { grits: { with: { drawer: "80, 120, 220, 320" } } } } }
`),
  ).toMatchInlineSnapshot(`
    [
      "grits-skipped at /steps/smooth/calculations/grits: From grit to grit (P80, P120, P220, P320) the largest step is 1.8 times the grain, and 1.7 times is the most. Buy P150: the step from P120 to P220 is too wide.",
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

test('a first grit that is too fine to begin with', async () => {
  const [only, ...more] = await told(`
steps: { smooth: { calculations: { grits: { with: { drawer: "120, 150, 220, 320" } } } } }
`);
  expect(more).toEqual([]);
  expect(only).toContain(
    'The sequence P120, P150, P220, P320 begins too fine: the marks of the tool will show through.',
  );
  expect(only).not.toContain('largest step');
});
