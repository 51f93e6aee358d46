import { describe, expect, test } from 'vitest';
import { calculators } from '../../src/calculators/index.ts';
import { answerTo, fieldsOf, isOptional, readInputs } from '../../src/calculators/kit/answer.ts';
import { exampleFor } from '../../src/calculators/kit/example.ts';
import { fieldMeta } from '../../src/calculators/kit/fields.ts';
import { resinSheetForm } from '../../src/calculators/kit/resin-sheet.ts';
import {
  defaultUnits,
  inReaderUnits,
  parseQuantity,
  type ReaderUnits,
  readerUnit,
  wordsInReaderUnits,
} from '../../src/model/quantity/index.ts';

const inches: readonly ReaderUnits[] = (['sixteenths', 'thirty-seconds', 'sixty-fourths', 'decimal'] as const).map(
  (style) => ({ system: 'inch', inches: style }),
);

const forms = [...calculators, { ...resinSheetForm, id: 'resin-sheet' }];

/** Every field of every form, with its metadata. */
const fields = forms.flatMap((form) =>
  Object.entries(fieldsOf(form)).flatMap(([name, schema]) => {
    const meta = fieldMeta(schema);
    return meta ? [{ form, name, meta }] : [];
  }),
);

/** A text in the units of the inch system, as its spelling shows. */
const inMetric = /\d ?(?:mm|cm|°C|g\/m²|cm²)(?![\p{L}\p{N}])/u;
/** A length or a temperature of the metric system. */
const lengthOrDegrees = /(?:\d ?(?:mm|cm|°C)|millimetres?)(?![\p{L}\p{N}])/u;
const inInches = /\d ?(?:in|inch|inches|ft|oz|fl oz|lb|gal|°F|sq ft|in²|ft²)(?![\p{L}])/u;

describe('a reader of inches', () => {
  test.each(calculators.map((each) => [each.id, each] as const))('%s: no sentence says “in in”', (_, calculator) => {
    for (const example of [calculator.example.metric, calculator.example.inch]) {
      const outcome = answerTo(calculator, example);
      expect(outcome.ok).toBe(true);
      for (const units of inches) {
        const words = JSON.stringify(wordsInReaderUnits(outcome, units));
        expect(/.{0,60}\bin\.? in\b.{0,40}/.exec(words)?.[0]).toBeUndefined();
      }
    }
  });

  test.each(calculators.map((each) => [each.id, each] as const))(
    '%s: no sentence of its worked case is in metric lengths or degrees alone',
    (_, calculator) => {
      for (const units of inches) {
        const outcome = wordsInReaderUnits(answerTo(calculator, calculator.example.inch), units);
        if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
        const { verdict, cautions, figures } = outcome.value;
        const sentences = [
          verdict.text,
          ...cautions.flatMap(({ text, why = '' }) => [text, why]),
          ...Object.values(figures).flatMap(({ note = '', band = '' }) => [note, band]),
        ].flatMap((text) => text.split(/(?<=[.;:]) /));
        for (const sentence of sentences) if (lengthOrDegrees.test(sentence)) expect(sentence).toMatch(inInches);
      }
    },
  );

  test.each(fields.map(({ form, name, meta }) => [form.id, name, meta] as const))(
    '%s, %s: its help is in inches where it names a quantity',
    (_, __, meta) => {
      for (const units of inches) {
        const help = inReaderUnits(meta.help ?? '', units);
        if (inMetric.test(help)) expect(help).toMatch(inInches);
      }
    },
  );

  test.each(fields.map(({ form, name, meta }) => [form.id, name, form, meta] as const))(
    '%s, %s: the example can be typed, and is in inches where it has a unit of either system',
    (_, name, form, meta) => {
      for (const units of [defaultUnits, ...inches]) {
        const example = exampleFor(meta, units);
        if (example === undefined) continue;
        const read = readInputs(form, { [name]: example });
        // The others were not given: nothing may be wrong with this one.
        expect(
          read.ok ? [] : read.errors.filter(({ field, message }) => field === name && !/too\b/.test(message)),
        ).toEqual([]);
        if (units.system === 'metric') expect(inInches.test(example)).toBe(false);
        else expect(inMetric.test(example)).toBe(false);
      }
    },
  );

  test.each(
    fields
      .filter(({ form, name }) => !isOptional(form, name))
      .map(({ form, name, meta }) => [form.id, name, form, meta] as const),
  )('%s, %s: where nothing stands in it the error gives an example in the reader’s units', (_, name, form, meta) => {
    const outcome = readInputs(form, {});
    for (const units of [defaultUnits, ...inches]) {
      const told = wordsInReaderUnits(outcome, units);
      const message = told.ok ? '' : (told.errors.find(({ field }) => field === name)?.message ?? '');
      const [, example = ''] = /for example, (.*)\.$/.exec(message) ?? [];
      expect(example).not.toBe('');
      const again = readInputs(form, { [name]: example });
      expect(again.ok ? [] : again.errors.filter(({ field }) => field === name)).toEqual([]);
      if (meta.kind !== 'quantity' || !meta.dimension) continue;
      const usual = readerUnit(meta.dimension, units);
      const read = parseQuantity(example, { dimension: meta.dimension, bareUnit: usual });
      expect(read.ok && read.unit.includes('[')).toBe(usual.includes('['));
    }
  });

  test.each(fields.map(({ form, name, meta }) => [form.id, name, form, meta] as const))(
    '%s, %s: whatever is refused, the way out is in the reader’s units',
    (_, name, form) => {
      for (const text of ['words', '-7', '0', '123456789', '½ ½', '1, 2; 3'])
        for (const units of inches) {
          const read = wordsInReaderUnits(readInputs(form, { [name]: text }), units);
          const message = read.ok ? '' : (read.errors.find(({ field }) => field === name)?.message ?? '');
          if (inMetric.test(message)) expect(message).toMatch(inInches);
        }
    },
  );
});
