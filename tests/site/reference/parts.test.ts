import { describe, expect, test } from 'vitest';
import { gatherChecks, tableEntries } from '../../../src/site/plugin/reference.ts';
import { addressOfSet, hasOwnPage, roomAsShown } from '../../../src/site/reference/check-parts.ts';
import { addressOfPart, addressOfRow } from '../../../src/site/reference/table-parts.ts';
import { readAllTables } from '../../../src/store/index.ts';
import { dossiers } from '../../model/species/world.ts';

const tables = [...readAllTables().values()];
/** Every page of every table, by its address. */
const pages = new Map(
  tables.flatMap((table) =>
    tableEntries(table).map((entry) => [addressOfPart(table.definition.name, entry.part), entry] as const),
  ),
);

describe('the pages of a table', () => {
  test.each(tables.map((table) => [table.definition.name, table] as const))(
    'of %s hold every row once, in order, and each tells of all',
    (_, table) => {
      const entries = tableEntries(table);
      expect(entries.flatMap(({ rows }) => rows.map(({ line }) => line))).toEqual(table.rows.map(({ line }) => line));
      expect(entries.map(({ part }) => part)).toEqual(entries.map((_each, at) => at + 1));
      for (const { parts, part, rows } of entries) {
        expect(parts.reduce((sum, each) => sum + each.rows, 0)).toBe(table.rows.length);
        const own = parts[part - 1];
        expect(own?.rows).toBe(rows.length);
        expect(table.rows[(own?.from ?? 0) - 1]?.line).toBe(rows[0]?.line);
      }
    },
  );

  test('of the longest table are several, and none holds more cells than a browser draws at once', () => {
    const longest = tables.reduce((one, other) => (one.rows.length >= other.rows.length ? one : other));
    expect(tableEntries(longest).length).toBeGreaterThan(3);
    for (const [address, { rows, definition }] of pages)
      expect(rows.length * definition.columns.length, address).toBeLessThanOrEqual(3000);
  });

  test('hold each row that a wood was made from at the address that its page gives', () => {
    for (const wood of dossiers)
      for (const { table, line } of wood.rows) {
        const [address = '', anchor = ''] = addressOfRow(table, line).split('#line-');
        expect(
          pages.get(address)?.rows.some((row) => row.line === Number(anchor)),
          `${wood.id}: ${address}`,
        ).toBe(true);
      }
  });
});

describe('the pages of checks', () => {
  const { rooms } = gatherChecks();
  const sets = rooms.flatMap((room) => room.sets.map((entry) => ({ room, entry })));

  test('show every value of every check, in its room or on its own page', () => {
    const own = sets.filter(({ entry }) => hasOwnPage(entry));
    expect(own.length).toBeGreaterThan(3);
    for (const { room, entry } of sets) {
      const inRoom = roomAsShown(room).sets.find(({ set }) => set.id === entry.set.id);
      expect(entry.values).toBe(entry.rows.length);
      if (entry.set.kind === 'check' && !hasOwnPage(entry)) expect(inRoom?.rows).toEqual(entry.rows);
    }
    expect(new Set(own.map(({ room, entry }) => addressOfSet(room.id, entry))).size).toBe(own.length);
  });

  test('show what is out of tolerance in its room too', () => {
    for (const { room, entry } of sets) {
      const inRoom = roomAsShown(room).sets.find(({ set }) => set.id === entry.set.id);
      for (const row of entry.rows)
        if (row.verdict === 'fails' || row.verdict === 'known difference')
          expect(inRoom?.rows, `${entry.set.id} ${row.id}`).toContain(row);
    }
  });
});
