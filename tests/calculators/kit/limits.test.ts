import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { calculators } from '../../../src/calculators/index.ts';
import { startingInputs, writeAddress } from '../../../src/calculators/kit/address.ts';
import { answer, fieldsOf } from '../../../src/calculators/kit/answer.ts';
import { fieldMeta } from '../../../src/calculators/kit/fields.ts';
import { isTooLong, longestOf } from '../../../src/calculators/kit/limits.ts';
import { defaultUnits, inReaderUnits } from '../../../src/model/quantity/index.ts';

/** Characters of what was typed that a message may repeat. */
const mostRepeated = 60;

/** Fields of all calculators, each with what it is. */
const fields = calculators.flatMap((calculator) =>
  Object.entries(fieldsOf(calculator)).map(([name, schema]) => {
    const meta = fieldMeta(schema);
    if (!meta) throw new Error(`${calculator.id}: ${name} says nothing of itself`);
    return { calculator, name, meta };
  }),
);

/** The messages of an answer to the worked case with this text in one field. */
function messages(calculator: (typeof calculators)[number], name: string, text: string): string[] {
  const outcome = answer(calculator, { ...calculator.example.metric, [name]: text });
  return outcome.ok ? [] : outcome.errors.map(({ message }) => inReaderUnits(message, defaultUnits));
}

/** The longest stretch of a text, without blanks, that a message repeats. */
function repeated(message: string, text: string): number {
  const [said, typed] = [message, text].map((one) => one.replace(/\s+/g, ' '));
  let longest = 0;
  for (let from = 0; from < (said as string).length; from += 1)
    while (
      (typed as string).includes((said as string).slice(from, from + longest + 1)) &&
      from + longest < (said as string).length
    )
      longest += 1;
  return longest;
}

/** Words that nobody repeats by chance: `qa0 qa1 …`, joined in the ways that readers of lists part. */
const strange = (length: number, join: string) => {
  let text = '';
  for (let count = 0; text.length < length; count += 1) text += `${count === 0 ? '' : join}q${count.toString(36)}z`;
  return text.slice(0, length);
};

describe('what is typed into a field', () => {
  test.each(fields.map(({ calculator, name, meta }) => [`${calculator.id} ${name}`, calculator, name, meta] as const))(
    '%s: a text that is too long is refused with its length, what is allowed, and little of itself',
    (_, calculator, name, meta) => {
      const most = longestOf(meta);
      const text = strange(Math.min(most, 300), '').padEnd(most + 1, '7');
      const found = messages(calculator, name, text).join(' ');
      expect(found.length, 'a refusal').toBeGreaterThan(0);
      if (meta.kind !== 'drawing') {
        expect(found).toContain(`${most + 1} characters`);
        expect(found).toContain(`at most ${most}`);
      }
      expect(found.length).toBeLessThan(700);
      expect(repeated(found, text.slice(0, 300))).toBeLessThanOrEqual(mostRepeated);
    },
  );

  test.each(fields.map(({ calculator, name, meta }) => [`${calculator.id} ${name}`, calculator, name, meta] as const))(
    '%s: a message repeats little of a text that is long and makes no sense',
    (_, calculator, name, meta) => {
      for (const join of ['', ' ', ', ', '; ', ': ', '\n', ' in, ', '<b>'])
        for (const message of messages(calculator, name, strange(Math.min(longestOf(meta), 1500), join)))
          expect(repeated(message, strange(1500, join)), message).toBeLessThanOrEqual(mostRepeated);
    },
  );

  test('no text of any sort makes a calculator throw', () => {
    const hostile = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 300 }),
      fc.constantFrom(
        '__proto__',
        'constructor',
        '<svg onload=alert(1)>',
        '#{1}',
        '{{1}}',
        '\u0000',
        '1e999',
        '-0',
        '٣٤',
      ),
      fc
        .tuple(fc.constantFrom('1', ',', ';', '\n', '/', '"', '(', '.', ' '), fc.integer({ min: 1, max: 5000 }))
        .map(([sign, count]) => sign.repeat(count)),
    );
    fc.assert(
      fc.property(fc.constantFrom(...fields), hostile, ({ calculator, name }, text) => {
        messages(calculator, name, text);
      }),
      { numRuns: 150 },
    );
  });
});

describe('an address', () => {
  test('holds no text that its field would not read back', () => {
    for (const { calculator, name, meta } of fields) {
      if (meta.kind === 'drawing') continue;
      const text = '7'.repeat(longestOf(meta) + 1);
      expect(writeAddress(calculator, { [name]: text }, defaultUnits), `${calculator.id} ${name}`).toBe('');
      expect(isTooLong(meta, text)).toBe(true);
    }
  });

  test('with a text that is too long opens the page, and the field says so', () => {
    const calculator = calculators.find(({ id }) => id === 'seasonal-movement') as (typeof calculators)[number];
    const raw = startingInputs(calculator, {}, { ...defaultUnits, system: 'inch' }, `?width=${'7'.repeat(100_000)}`);
    const outcome = answer(calculator, raw);
    expect(outcome.ok ? '' : outcome.errors.map(({ message }) => message).join()).toContain('at most 200');
  });
});
