import { describe, expect, test } from 'vitest';
import { documentsAt } from '../../src/method/case/seal-coat.ts';
import { workMethod } from '../../src/method/case/work.ts';
import { defaultUnits, inReaderUnits } from '../../src/model/quantity/index.ts';
import { methodFiles } from './files.ts';

// A seal coat is brushed on and the pour follows in its window: nothing beside it may speak of it as of a pour, or make its window wait.

const read = (text: string) => inReaderUnits(text, defaultUnits);
const sealed = await Promise.all(
  methodFiles.map(async ({ name, read: reading }) => {
    const outcome = await workMethod(reading);
    if (!outcome.ok) throw new Error(`${name} is not worked out.`);
    return { name, steps: outcome.worked.steps.filter(({ act }) => act.id === 'seal') };
  }),
);
const mixed = sealed.flatMap(({ name, steps }) =>
  steps.flatMap((step) =>
    // What is asked for by the place it covers knows its depth.
    step.calculations.flatMap(({ use, raw, result }) =>
      use === 'resin-dose' && raw.mass !== undefined ? [{ name, step, result }] : [],
    ),
  ),
);

describe.each(mixed)('the seal coat of $name', ({ step, result }) => {
  test('is told of as a thin coat, not by the depth of a pour', () => {
    expect(result?.cautions.map(({ id }) => id)).toContain('no-depth');
    const texts = step.cautions.map(({ text }) => read(text));
    expect(texts.filter((text) => /No depth was given|layer of it deeper/.test(text))).toEqual([]);
    expect(texts).toContainEqual(expect.stringMatching(/^Brush the seal coat on thin/));
  });

  test('nor on its mixing sheet', () => {
    const sheet = read(JSON.stringify(documentsAt(step, result)));
    expect(sheet).not.toMatch(/No depth was given|no layer deeper|layer of it deeper/);
    expect(sheet).toMatch(/Brush the seal coat on thin/);
  });
});

test('where a shop cures late, the whole wait is for machine, oil and food, and the next coat keeps its window', () => {
  const ash = sealed.find(({ name }) => name === 'salvaged-ash-amber.yaml')?.steps[0];
  const late = ash?.cautions.filter(({ id }) => id === 'cures-late').map(({ text }) => read(text));
  expect(late).toEqual([
    'Before machine, oil or food wait the whole 12 d from the last coat or pour, or warm it for a day once it has gelled through and is cold again: 7 d at 22 °C are not enough in this shop.',
  ]);
});

test('and there is more than one such method', () => {
  expect(mixed.length).toBeGreaterThan(2);
});
