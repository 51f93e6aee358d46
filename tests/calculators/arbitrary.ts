import fc from 'fast-check';
import { fieldsOf } from '../../src/calculators/kit/answer.ts';
import type { Calculator } from '../../src/calculators/kit/calculator.ts';
import { type FieldMeta, fieldMeta, isBare } from '../../src/calculators/kit/fields.ts';
import { resinSheetForm } from '../../src/calculators/kit/resin-sheet.ts';
import type { Result } from '../../src/model/evidence/index.ts';
import { climates } from '../../src/model/moisture/climates.ts';
import { resinKinds } from '../../src/model/resin/kinds.ts';
import { allSpecies } from '../../src/model/species/index.ts';

/** Texts that a field may meet: sensible, at the edge, and neither. */
export function texts(meta: FieldMeta): fc.Arbitrary<string> {
  const junk = fc.oneof(
    fc.string(),
    fc.string({ unit: 'binary' }),
    fc.constantFrom('', '∞', '1e999', '-0', 'NaN', '9/0', '<script>'),
  );
  const sensible: Record<FieldMeta['kind'], fc.Arbitrary<string>> = {
    // A time without a unit is refused, and so is what must name it; other texts try that.
    quantity: fc
      .oneof(
        fc.constantFrom(...meta.examples),
        fc.double({ min: meta.minimum ?? 0, max: meta.maximum ?? 100, noNaN: true }).map(String),
        fc.integer({ min: Math.floor(meta.minimum ?? 0), max: Math.ceil(meta.maximum ?? 100) }).map((n) => `${n}`),
        fc.constantFrom(String(meta.minimum), String(meta.maximum)),
      )
      .map((text) => {
        if (!isBare(text)) return text;
        if (meta.dimension === 'time') return `${text} s`;
        return meta.unitAsked ? `${text} g` : text;
      }),
    choice: fc.constantFrom(...(meta.options ?? []).map((option) => option.value), ''),
    species: fc.constantFrom(...allSpecies.map((species) => species.id)),
    climate: fc.constantFrom(...climates.map((climate) => climate.id), 'own'),
    // Lines of the examples, some with a word or a number changed, one or many.
    list: fc
      .array(
        fc.tuple(
          fc.constantFrom(...meta.examples.flatMap((example) => example.split(/[;\n]/))),
          fc.nat({ max: 30 }),
          fc.constantFrom('', '0', '7', '-3', '1e9', '1/0', ',', 'oak'),
        ),
        { minLength: 1, maxLength: 6 },
      )
      .map((lines) => lines.map(([line, at, word]) => (at < 6 ? line.replace(/\d+/, word) : line)).join('; ')),
    text: fc.constantFrom(...meta.examples),
    drawing: fc.constantFrom(...meta.examples),
    // Kinds, whole sheets, sheets with an entry changed or left out, and sheets cut off.
    resin: fc.oneof(
      { weight: 4, arbitrary: fc.constantFrom(...resinKinds.map(({ kind }) => kind)) },
      {
        weight: 1,
        arbitrary: fc.constantFrom(...Object.values(resinSheetForm.example).map((sheet) => JSON.stringify(sheet))),
      },
      {
        weight: 1,
        arbitrary: fc
          .tuple(
            fc.subarray(Object.keys(resinSheetForm.example.metric)),
            fc.constantFrom(...Object.keys(resinSheetForm.example.metric)),
            fc.constantFrom(undefined, undefined, '', '0', '1e9', '3:1', '2 mm', '12 h', '30 °C', 'usable'),
            fc.constantFrom(1, 1, 1, 0.5),
          )
          .map(([entries, changed, value, part]) => {
            const { name, ...example } = resinSheetForm.example.metric;
            const kept = Object.fromEntries(Object.entries(example).filter(([entry]) => entries.includes(entry)));
            const text = JSON.stringify({ name, ...kept, ...(value === undefined ? {} : { [changed]: value }) });
            return text.slice(0, Math.ceil(text.length * part));
          }),
      },
    ),
    readings: fc
      .array(fc.tuple(fc.integer({ min: -40, max: 60 }), fc.integer({ min: 0, max: 100 })), { maxLength: 14 })
      .map((rows) => rows.map(([t, h], index) => `${index + 1}, ${t} °C, ${h} %`).join('; ')),
  };
  // A calculator of thirty fields must be answered now and then.
  return fc.oneof({ weight: 40, arbitrary: sensible[meta.kind] }, { weight: 1, arbitrary: junk });
}

/** Addresses that mostly keep to one set of alternatives, and name most fields. */
export function addresses(calculator: Calculator): fc.Arbitrary<Record<string, string>> {
  const alternatives = calculator.alternatives ?? [];
  const entries = Object.entries(fieldsOf(calculator)).map(([name, schema]) => {
    const field = texts(fieldMeta(schema) as FieldMeta);
    return [name, fc.option(field, { freq: 12, nil: undefined })] as const;
  });
  const picks = fc.tuple(...alternatives.map(({ sets }) => fc.nat({ max: sets.length - 1 })));
  return fc
    .tuple(fc.record(Object.fromEntries(entries)), picks, fc.integer({ min: 0, max: 9 }))
    .map(([all, picked, stray]) => {
      const left = alternatives.flatMap(({ sets }, index) =>
        sets.flatMap((set, at) => (at === picked[index] ? [] : set.fields)),
      );
      // One address in ten keeps fields of several sets.
      const kept = Object.entries(all).filter(
        ([name, text]) => text !== undefined && (stray === 0 || !left.includes(name)),
      );
      return Object.fromEntries(kept) as Record<string, string>;
    });
}

/** Every number of an answer. */
export function numbersOf(result: Result): number[] {
  return [
    ...Object.values(result.figures).flatMap((figure) => [figure.value, figure.low ?? 0, figure.high ?? 0]),
    ...(result.series ?? []).flatMap((series) =>
      series.lines.flatMap((line) => [...line.values, ...(line.low ?? []), ...(line.high ?? [])]),
    ),
    ...(result.drawings ?? []).flatMap((drawing) => drawing.shapes.flatMap((shape) => shape.points.flat())),
  ];
}
