import { expect, test } from 'vitest';
import { told } from './base.ts';

test('boards are planed on the day they come in', async () => {
  expect(
    await told(`
steps:
  look:
    calculations:
      settling: { use: acclimatise, with: { thickness: 25 mm, moistureNow: 10 %, temperature: 20 °C, relativeHumidity: 40 % } }
`),
  ).toMatchInlineSnapshot(`
    [
      "worked-before-settled at /steps/look/calculations/settling: The wood comes to within one point of balance in about 10 d, and “Plane to thickness” may begin as soon as it has come in. Let “Plane to thickness” wait, with least: { from: /calculations/settling/events/ready }.",
    ]
  `);
});

test('a wait that is too short', async () => {
  expect(
    await told(
      `
steps:
  look:
    calculations:
      settling: { use: acclimatise, with: { thickness: 25 mm, moistureNow: 10 %, temperature: 20 °C, relativeHumidity: 40 % } }
`,
      `
steps: { thickness: { after: [{ step: look, least: 5 d }] } }
`,
    ),
  ).toMatchInlineSnapshot(`
    [
      "worked-before-settled at /steps/look/calculations/settling: The wood comes to within one point of balance in about 10 d, and “Plane to thickness” may begin 5 d after it has come in. Let “Plane to thickness” wait, with least: { from: /calculations/settling/events/ready }.",
    ]
  `);
});

test('boards that wait as long as it takes', async () => {
  expect(
    await told(
      `
steps:
  look:
    calculations:
      settling: { use: acclimatise, with: { thickness: 25 mm, moistureNow: 10 %, temperature: 20 °C, relativeHumidity: 40 % } }
`,
      `
steps: { thickness: { after: [{ step: look, least: { from: /calculations/settling/events/ready } }] } }
`,
    ),
  ).toEqual([]);
});

test('boards that have settled already', async () => {
  expect(
    await told(
      `
steps:
  look:
    calculations:
      settling: { use: acclimatise, with: { thickness: 25 mm, moistureNow: 10 %, temperature: 20 °C, relativeHumidity: 40 % } }
`,
      `
steps: { look: { calculations: { settling: { with: { moistureNow: 8 % } } } } }
`,
    ),
  ).toEqual([]);
});
