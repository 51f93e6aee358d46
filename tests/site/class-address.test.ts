import { expect, test } from 'vitest';
import { classOfAddress } from '../../src/site/class/class-address.ts';

test('a class begins with the case of the address; what belongs to addresses is no parameter of it', () => {
  expect(classOfAddress('?method=first-tray&pieces=2&wood=white-ash&paper=letter&start=2027-01-12')).toEqual({
    method: { id: 'first-tray' },
    common: { set: { wood: 'white-ash' }, sessions: '' },
    places: [
      { id: '1', set: {} },
      { id: '2', set: {} },
    ],
  });
  expect(classOfAddress('?method=first-tray&calendar=six-tuesdays')).toMatchObject({ calendar: 'six-tuesdays' });
  expect(classOfAddress('?method=first-tray&calendar=../../x')).not.toHaveProperty('calendar');
  expect(classOfAddress('?pieces=2')).toBeUndefined();
});
