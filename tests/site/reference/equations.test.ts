import { expect, test } from 'vitest';
import { checkRooms } from '../../../src/model/checks.ts';
import * as moisture from '../../../src/model/moisture/equations.ts';
import * as movement from '../../../src/model/movement/equations.ts';
import * as stock from '../../../src/model/stock/equations.ts';
import { equationRooms } from '../../../src/site/plugin/equations.ts';

const shown = equationRooms.flatMap(({ equations }) => equations.map(({ id }) => id));

test('every equation of the model stands in one room and no other', () => {
  expect(shown.filter((id, at) => shown.indexOf(id) !== at)).toEqual([]);
  for (const room of [movement, moisture, stock])
    for (const { record } of room.equations) expect(shown, record.title).toContain(record.id);
  expect(shown.length).toBeGreaterThan(40);
});

test('rooms have something in them, and the names of the rooms of the checks', () => {
  const titles = new Map(checkRooms.map(({ id, title }) => [id, title]));
  for (const { id, title, equations } of equationRooms) {
    expect(titles.get(id), id).toBe(title);
    expect(equations.length, id).toBeGreaterThan(0);
  }
});

test('no room bears the name of an equation, so that an anchor means one thing', () => {
  expect(equationRooms.map(({ id }) => id).filter((id) => shown.includes(id))).toEqual([]);
});
