import { existsSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { calculatorIds } from '../../../src/calculators/registry.ts';
import { rules } from '../../../src/method/rules/index.ts';
import { findingsOf, told } from './base.ts';

test('a method that keeps every rule has no findings', async () => {
  expect(await findingsOf()).toEqual([]);
});

describe.each(rules.map((rule) => [rule.id, rule] as const))('the rule %s', (id, rule) => {
  test('says in sentences what it asks, looks at and is for', () => {
    expect(id).toMatch(/^[a-z]+(-[a-z]+)*$/);
    expect(rules.filter((other) => other.id === id || other.title === rule.title)).toHaveLength(1);
    expect(rule.title).toMatch(/^[A-Z].*[^.:]$/);
    for (const words of [rule.looksAt, rule.why]) expect(words).toMatch(/^[A-Z].*\.$/s);
    if (rule.neverExcepted !== undefined) expect(rule.neverExcepted).toMatch(/^[A-Z].*\.$/s);
  });
});

const widePiece = 'steps: { thickness: { piece: { width: 331 mm } } }';
const reason = 'The frame of our planer is open on one side.';
const except = (rule: string, step?: string) =>
  `exceptions: [{ rule: ${rule}, ${step ? `step: ${step}, ` : ''}reason: ${reason} }]`;

describe('an exception', () => {
  test('keeps what it meets and says why', async () => {
    expect(await findingsOf(widePiece, except('machine-width', 'thickness'))).toMatchObject([
      { rule: 'machine-width', level: 'stop', step: 'thickness', excepted: reason },
    ]);
  });

  test('without a step meets all that its rule finds', async () => {
    expect(await findingsOf(widePiece, except('machine-width'))).toMatchObject([{ excepted: reason }]);
  });

  test('at another step meets nothing, and is found with its place', async () => {
    expect(await told(widePiece, except('machine-width', 'hole'))).toMatchInlineSnapshot(`
      [
        "machine-width at /steps/thickness/piece/width: The piece is 331 mm wide, wider than the 330 mm that the tool takes (thickness planer). Take another tool, cut the piece down first, or say under wayRound how it is taken all the same.",
        "exception-not-needed at /exceptions/0: Nothing departs from “The machine takes the piece by its width” at “Bore the hanging hole”: the exception is not needed. Take the exception out.",
      ]
    `);
  });

  test('that nothing needs any more is found', async () => {
    const findings = await findingsOf(except('machine-width', 'thickness'));
    expect(findings).toMatchObject([
      { rule: 'exception-not-needed', level: 'stop', path: ['exceptions', 0], step: 'thickness' },
    ]);
  });

  test('from a rule that there is not is found, with the nearest', async () => {
    expect(await told(except('machine-with'))).toMatchInlineSnapshot(`
      [
        "exception-not-needed at /exceptions/0: There is no rule “machine-with”, so nothing departs from it. Did you mean machine-width? Otherwise take the exception out.",
      ]
    `);
  });

  test('from a rule that allows none is refused, and what it would have excused stands', async () => {
    expect(
      await told(
        'food: { claim: Food-safe }',
        'exceptions: [{ rule: promise-in-words, reason: Our customers ask for these very words. }]',
      ),
    ).toMatchInlineSnapshot(`
      [
        "promise-in-words at /food/claim: The words promise what nobody has shown of a board: “food safe”. Say what it is made of, what it is for and how it is kept; the food-contact calculator writes such a label.",
        "exception-refused at /exceptions/0: No exception is made from “Nothing is promised that nobody has shown”. A promise on a label stays a promise, whatever the reason for it. Take the exception out, and change the work so that the rule is kept.",
      ]
    `);
  });
});

test.each(rules.map(({ id }) => id))('%s has a module and a test of its own', (id) => {
  const missing = [`../../../src/method/rules/${id}.ts`, `./${id}.test.ts`].filter(
    (path) => !existsSync(new URL(path, import.meta.url)),
  );
  expect(missing).toEqual([]);
});

test('rules that protect people from heat, lead, blades and fire allow no exception', () => {
  const never = rules.filter(({ neverExcepted }) => neverExcepted !== undefined).map(({ id }) => id);
  expect(never).toEqual(
    expect.arrayContaining([
      'salvaged-not-searched',
      'rim-speed',
      'gloves-at-blade',
      'rags-without-can',
      'unsafe-answer',
      'calculation-unknown',
      'calculation-refuses',
    ]),
  );
});

test('the rules speak of calculators that there are', () => {
  const safety = rules.find(({ id }) => id === 'unsafe-answer')?.looksAt ?? '';
  const named = safety.match(/[a-z]+-[a-z]+(?:-[a-z]+)*/g) ?? [];
  expect(named.length).toBeGreaterThan(4);
  expect(named.filter((id) => !calculatorIds.some((known) => known === id))).toEqual([]);
});
