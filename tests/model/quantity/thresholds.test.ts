import { expect, test } from 'vitest';
import { findNamed } from '../../../src/model/quantity/find-named.ts';
import { defaultUnits, formatQuantity, type ReaderUnits } from '../../../src/model/quantity/index.ts';

// Each boundary at which a value is written in another unit, with a value just below it and one just above.

const hour = 3600;
const inches: ReaderUnits = { ...defaultUnits, system: 'inch' };

test.each<[what: string, unit: string, below: [number, string], above: [number, string], reader: ReaderUnits]>([
  ['minutes', 's', [59, '59 s'], [60, '1 min'], defaultUnits],
  ['hours', 's', [59 * 60, '59 min'], [hour, '1 h'], defaultUnits],
  ['days, from three', 's', [71 * hour, '71 h'], [72 * hour, '3 d'], defaultUnits],
  ['days, from three, of a reader in inches', 's', [71 * hour, '71 h'], [72 * hour, '3 d'], inches],
  ['kilograms', 'g', [999, '999 g'], [1000, '1 kg'], defaultUnits],
  ['litres', 'mL', [999, '999 ml'], [1000, '1 l'], defaultUnits],
  ['square centimetres', 'mm2', [99, '99 mm²'], [100, '1 cm²'], defaultUnits],
  ['square metres', 'mm2', [999_000, '9990 cm²'], [1_000_000, '1 m²'], defaultUnits],
  ['pounds', 'g', [450, '15.9 oz'], [453, '1 lb'], inches],
  ['gallons', 'mL', [3768, '127 fl oz'], [3780, '1 gal'], inches],
])('%s', (_, unit, [below, belowText], [above, aboveText], reader) => {
  expect(formatQuantity(below, unit, reader)).toBe(belowText);
  expect(formatQuantity(above, unit, reader)).toBe(aboveText);
});

test.each([
  ['no slip in three letters', 'Elm', 'eln', false],
  ['one slip in four', 'Teak', 'teck', true],
  ['no two slips in four', 'Teak', 'tock', false],
  ['one slip in five', 'Beech', 'beach', true],
  ['no two slips in five', 'Beech', 'bauch', false],
  ['two slips in six', 'Walnut', 'wolnat', true],
  ['no three slips in six', 'Walnut', 'wolmat', false],
])('a name is found with %s', (_, name, typed, found) => {
  expect(findNamed([{ name }], typed, (item) => ({ name: item.name, others: [] }))).toHaveLength(found ? 1 : 0);
});
