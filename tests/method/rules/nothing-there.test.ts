import { expect, test } from 'vitest';
import { told, withResin } from './base.ts';

test('a wait for an event that this case does not have', async () => {
  expect(
    await told(
      `
steps:
  look:
    calculations:
      settling: { use: acclimatise, with: { thickness: 25 mm, moistureNow: 10 %, temperature: 20 °C, relativeHumidity: 40 % } }
`,
      `
steps: { look: { calculations: { settling: { with: { moistureNow: 8 % } } } }, thickness: { after: [{ step: look, least: { from: /calculations/settling/events/half-way } }] } }
`,
    ),
  ).toMatchInlineSnapshot(`
    [
      "nothing-there at /steps/thickness/after/0/least/from: “settling” tells of no event “half-way” in this case. There is the event ready. The answer says: Ready: at 8 % it is within one point of the 7.7 % of this room. Refer to something that this case has, or change the case so that it is there.",
    ]
  `);
});

test('a wait for one that it has', async () => {
  expect(
    await told(
      `
steps:
  look:
    calculations:
      settling: { use: acclimatise, with: { thickness: 25 mm, moistureNow: 10 %, temperature: 20 °C, relativeHumidity: 40 % } }
`,
      `
steps: { look: { calculations: { settling: { with: { moistureNow: 8 % } } } }, thickness: { after: [{ step: look, least: { from: /calculations/settling/events/ready } }] } }
`,
    ),
  ).toEqual([]);
});

test('where the calculation has no answer, that is said, once', async () => {
  expect(
    await told(
      withResin,
      `
steps: { fill: { calculations: { inlay: { with: { inlayWidth: 260 mm } } } } }
materials: { discs: { needs: [{ from: /calculations/inlay/figures/swing, per: piece }] } }
`,
    ),
  ).toMatchInlineSnapshot(`
    [
      "calculation-refuses at /steps/fill/calculations/inlay/with/inlayWidth: An inlay 260 mm wide leaves no wood of a board of 250 mm. Measure the inlay across the grain, or leave it out. Mend inlayWidth of inlay; the page of seasonal-movement says what it asks.",
    ]
  `);
});
