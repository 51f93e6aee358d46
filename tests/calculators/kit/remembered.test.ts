import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { calculatorById, calculators } from '../../../src/calculators/index.ts';
import { startingInputs } from '../../../src/calculators/kit/address.ts';
import { fieldsOf, readInputs } from '../../../src/calculators/kit/answer.ts';
import type { Calculator, RawInputs } from '../../../src/calculators/kit/calculator.ts';
import { fieldMeta } from '../../../src/calculators/kit/fields.ts';
import {
  forget,
  habitIds,
  habits,
  habitsFor,
  nothingRemembered,
  type Remembered,
  readRemembered,
  remember,
  withSheets,
  writeRemembered,
} from '../../../src/calculators/kit/remembered.ts';
import { defaultUnits } from '../../../src/model/quantity/index.ts';

const by = (id: string) => calculatorById(id) as Calculator;
const touching = (...names: string[]) => new Set(names);
const mine = '{"name":"Lakeside slow"}';
const other = '{"name":"Lakeside quick"}';

test.each(habitIds)('%s names fields that some calculator asks for, of the kind that it says', (id) => {
  const { fields, kind } = habits[id];
  const asking = calculators.filter((each) => fields.every((field) => field in fieldsOf(each)));
  const [first = ''] = fields;
  const kinds = asking.map((each) => fieldMeta(fieldsOf(each)[first] as never)?.kind);
  expect(kinds).toContain(kind);
  const kept: Remembered = { habits: { [id]: { [first]: 'x' } }, last: {} };
  expect(calculators.filter((each) => first in habitsFor(each, kept)).length).toBeGreaterThan(0);
});

describe('remembering a case', () => {
  test('keeps its inputs, and of the habits those that were touched', () => {
    const asked = { species: 'white-ash', width: '300 mm', place: 'oslo-no' };
    const untouched = remember(nothingRemembered, by('seasonal-movement'), asked, touching('width'));
    expect(untouched).toEqual({ habits: {}, last: { 'seasonal-movement': asked } });
    const touched = remember(untouched, by('seasonal-movement'), asked, touching('place'));
    expect(touched.habits).toEqual({ place: { place: 'oslo-no' } });
    expect(habitsFor(by('finish-and-moisture'), touched)).toEqual({ place: 'oslo-no' });
    expect(habitsFor(by('width-change'), touched)).toEqual({});
  });

  test('keeps a price with what it is for', () => {
    const asked = { rate: '7.20', ratePer: 'board-foot' };
    expect(remember(nothingRemembered, by('stock-order'), asked, touching('rate')).habits).toEqual({ price: asked });
  });

  test('keeps no choice that only bears the name of a habit, and nothing empty', () => {
    expect(remember(nothingRemembered, by('finish-coats'), { resin: 'inlay' }, touching('resin')).habits).toEqual({});
    expect(remember(nothingRemembered, by('pour-heat'), { resin: ' ' }, touching('resin')).habits).toEqual({});
  });

  test('a generic kind never takes the place of a data sheet of the reader’s own', () => {
    const before = remember(nothingRemembered, by('pour-heat'), { resin: 'slow-casting-2-1' }, touching('resin'));
    expect(before.habits.resin).toEqual({ resin: 'slow-casting-2-1' });
    const own = remember(before, by('pour-heat'), { resin: mine }, touching('resin'));
    expect(remember(own, by('pour-heat'), { resin: 'slow-casting-2-1' }, touching('resin')).habits.resin).toEqual({
      resin: mine,
    });
    expect(remember(own, by('cure-clock'), { resin: other }, touching('resin')).habits.resin).toEqual({ resin: other });
  });

  test('a board without resin in its worked case does not get one by itself', () => {
    const kept = withSheets(nothingRemembered, [mine]);
    const given = calculators.filter((each) => 'resin' in habitsFor(each, kept)).map(({ id }) => id);
    expect(given).toEqual(expect.arrayContaining(['resin-dose', 'pour-heat', 'working-time', 'cure-clock']));
    expect(given.filter((id) => !('resin' in by(id).example.metric))).toEqual([]);
  });

  test('a log of years is not kept', () => {
    const asked = { readings: 'x'.repeat(30_000) };
    expect(remember(nothingRemembered, by('seasonal-movement'), asked, touching('readings')).last).toEqual({});
  });
});

describe('the kept data sheets', () => {
  test('the only one is chosen, of several the one used last', () => {
    const one = withSheets(nothingRemembered, [mine]);
    expect(one.habits.resin).toEqual({ resin: mine });
    expect(withSheets(one, [mine, other]).habits.resin).toEqual({ resin: mine });
    expect(withSheets(one, [other]).habits.resin).toEqual({ resin: other });
  });

  test('one that is no longer kept is no longer chosen; a generic kind stays', () => {
    expect(withSheets({ habits: { resin: { resin: mine } }, last: {} }, []).habits).toEqual({});
    const kind: Remembered = { habits: { resin: { resin: 'slow-casting-2-1' } }, last: {} };
    expect(withSheets(kind, [])).toBe(kind);
  });
});

describe('beginning a case', () => {
  const start = (id: string, own: RawInputs, search = '', preset: RawInputs = {}) =>
    startingInputs(by(id), preset, defaultUnits, search, '', own);

  test('the reader’s own lies over the worked case, the page’s preset over both', () => {
    expect(start('seasonal-movement', { place: 'oslo-no' }).place).toBe('oslo-no');
    expect(start('seasonal-movement', { place: 'oslo-no' }, '', { place: 'duluth-mn' }).place).toBe('duluth-mn');
  });

  test('a link wins over it, also in what the link leaves out', () => {
    expect(start('seasonal-movement', { place: 'oslo-no' }, '?width=200+mm')).toEqual(
      start('seasonal-movement', {}, '?width=200+mm'),
    );
  });

  test('the worked case with a place of the reader’s own is read', () => {
    for (const id of ['seasonal-movement', 'finish-and-moisture']) {
      const read = readInputs(by(id), start(id, { place: 'oslo-no' }));
      expect(read.ok ? [] : read.errors).toEqual([]);
    }
  });
});

describe('what a browser keeps', () => {
  const texts = fc.dictionary(fc.string(), fc.string());
  const any: fc.Arbitrary<Remembered> = fc.record({
    habits: fc.dictionary(fc.constantFrom(...habitIds), texts),
    last: fc.dictionary(fc.string(), texts),
  });

  test('is read back as it was written', () => {
    fc.assert(
      fc.property(any, (kept) => {
        const read = readRemembered(writeRemembered(kept));
        expect(writeRemembered(read)).toBe(writeRemembered(kept));
      }),
    );
  });

  test('whatever stands there, reading never fails and gives texts only', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json(), fc.constant(null)), (text) => {
        const { habits: kept, last } = readRemembered(text);
        for (const one of [...Object.values(kept), ...Object.values(last)])
          expect(Object.values(one).every((value) => typeof value === 'string')).toBe(true);
      }),
    );
    expect(readRemembered('{"habits":{"place":{"place":7},"shoe":{"size":"9"}},"last":[]}')).toEqual(nothingRemembered);
  });

  test('is forgotten piece by piece', () => {
    const kept: Remembered = { habits: { place: { place: 'oslo-no' } }, last: { 'pour-heat': { depth: '9 mm' } } };
    expect(forget(kept, { habit: 'place' })).toEqual({ habits: {}, last: kept.last });
    expect(forget(kept, { last: 'pour-heat' })).toEqual({ habits: kept.habits, last: {} });
  });
});
