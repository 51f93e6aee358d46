import { describe, expect, test } from 'vitest';
import { aOrAn } from '../../../src/method/case/article.ts';
import { parametersOf } from '../../../src/method/case/parameters.ts';
import { readMethod } from '../../../src/method/read.ts';
import { amount, defaultUnits, inReaderUnits } from '../../../src/model/quantity/index.ts';
import { readMethodTexts } from '../../../src/store/index.ts';

const records = readMethodTexts().flatMap(({ id, text }) => {
  const { record } = readMethod(text, `methods/${id}.yaml`);
  return record ? [[id, record] as const] : [];
});

describe.each(records)('the limits of %s', (_, record) => {
  const ranged = Object.entries(record.parameters).filter(([, { kind }]) => kind === 'quantity');
  test('are taken as the page shows them, in every way of writing inches', () => {
    const usual = parametersOf(record, {}).parameters;
    for (const [name, parameter] of ranged)
      for (const end of ['least', 'most'] as const) {
        if (parameter.kind !== 'quantity') continue;
        const limit = String(parameter[end]);
        const at = parametersOf(record, { set: { [name]: limit } }).parameters[name]?.value;
        const unit = usual[name]?.value.kind === 'quantity' ? usual[name].value.unit : '';
        if (at?.kind !== 'quantity') throw new Error(`${name} has no ${end}`);
        for (const inches of ['sixteenths', 'thirty-seconds', 'sixty-fourths', 'decimal'] as const) {
          const shown = inReaderUnits(amount(at.value, unit), { system: 'inch', inches });
          const taken = parametersOf(record, { set: { [name]: shown } });
          expect(taken.faults).toEqual([]);
          const value = taken.parameters[name]?.value;
          const [low, high] = [parameter.least, parameter.most].map((each) => {
            const read = parametersOf(record, { set: { [name]: String(each) } }).parameters[name]?.value;
            return read?.kind === 'quantity' ? read.value : Number.NaN;
          });
          expect(value?.kind === 'quantity' && value.value).toBeGreaterThanOrEqual(low ?? Number.NaN);
          expect(value?.kind === 'quantity' && value.value).toBeLessThanOrEqual(high ?? Number.NaN);
        }
      }
  });
});

describe('a value beyond a limit', () => {
  const tray = new Map(records).get('first-tray');
  const faultOf = (length: string) =>
    tray
      ? parametersOf(tray, { set: { length } })
          .faults.map(({ message }) => message)
          .join()
      : '';
  test.each(['23 11/16 in', '605 mm', '601 mm', '12 in'])(
    '%s is refused, and no number stands on both sides',
    (length) => {
      const told = inReaderUnits(faultOf(length), { ...defaultUnits, system: 'inch' });
      expect(told).toMatch(/as set: .* is (more|less) than the method allows, /);
      const [, typed, low, high] =
        /as set: (.*) is (?:more|less) than the method allows, (.*) to (.*)\. /.exec(told) ?? [];
      expect([low, high]).not.toContain(typed);
    },
  );
});

test('what is measured has its article', () => {
  expect(['area', 'length', 'mass-per-area'].map(aOrAn)).toEqual(['an area', 'a length', 'a mass per area']);
});
