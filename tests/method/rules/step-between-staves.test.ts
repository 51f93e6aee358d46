import { expect, test } from 'vitest';
import { told } from './base.ts';

test('a flatsawn stave beside a quartersawn one', async () => {
  expect(
    await told(`
steps:
  look:
    calculations:
      year: { with: { thickness: 15 mm, species: null, width: null, cut: null, staves: "sugar-maple, 60 mm, flatsawn; sugar-maple, 60 mm, quartersawn" } }
`),
  ).toMatchInlineSnapshot(`
    [
      "step-between-staves at /steps/look/calculations/year: Neighbouring staves come to differ by 0.17 mm in thickness through the year; from 0.15 mm a finger feels it. Keep to staves of one wood and one cut, or sand to final thickness in the middle of the season.",
    ]
  `);
});

test('the same in a thinner panel', async () => {
  expect(
    await told(`
steps:
  look:
    calculations:
      year: { with: { thickness: 13 mm, species: null, width: null, cut: null, staves: "sugar-maple, 60 mm, flatsawn; sugar-maple, 60 mm, quartersawn" } }
`),
  ).toEqual([]);
});

test('staves of one cut', async () => {
  expect(
    await told(`
steps:
  look:
    calculations:
      year: { with: { species: null, width: null, cut: null, staves: "sugar-maple, 60 mm, flatsawn; sugar-maple, 60 mm, flatsawn" } }
`),
  ).toEqual([]);
});
