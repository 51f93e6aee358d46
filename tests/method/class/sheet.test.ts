import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { placesText, readPlaces } from '../../../src/method/class/sheet.ts';
import { fileText, methodRecordOf, springPlaces } from './files.ts';

const record = methodRecordOf('class-of-twelve');
const read = (text: string) => readPlaces(text, record);
const faultOf = (text: string) => read(text).faults[0];

describe('a list of places', () => {
  test('that of the demonstration is read whole, labels and names of options as written', () => {
    const { places, faults } = read(fileText('classes/spring-evening.csv'));
    expect(faults).toEqual([]);
    expect(places).toHaveLength(12);
    expect(places[1]).toEqual({ id: '2', name: 'C. D.', set: { colour: 'moss green, 100 %, paste 2 %' } });
    expect(places[6]?.set).toEqual({ length: '16 1/2 in', width: '8 1/2 in' });
  });

  test.each([
    ['a byte-order mark', '\uFEFFplace,wood\n1,yellow birch\n'],
    ['semicolons', 'place;wood\r\n1;yellow birch\r\n'],
    ['tabs', 'place\twood\n1\tyellow birch'],
    ['old line ends', 'place,wood\r1,yellow birch\r'],
    ['quotation marks', '"place","WOOD"\n"1"," yellow birch "\n'],
    ['headings by label in other letters, and empty rows', '\n\nPlace,  wood \n\n1,yellow birch\n,\n'],
    ['headings by pointer', 'place,/parameters/wood\n1,yellow birch\n'],
    ['no column of places', 'wood\nyellow birch\n'],
  ])('is read with %s', (_, text) => {
    expect(read(text)).toEqual({
      places: [{ id: '1', set: { wood: 'yellow birch' } }],
      faults: [],
      leftOut: 0,
    });
  });

  test('a line break in quotation marks stays in its cell', () => {
    expect(read('place,name\n1,"A.\r\nB."\n').places[0]?.name).toMatch(/^A\.\r?\nB\.$/);
  });

  test.each([
    [
      'a value out of its range',
      'place,width\n1,220 mm\n2,300 mm\n',
      { row: 3, column: 'Width of the tray', message: /300 mm is more than the method allows/ },
    ],
    ['a word for a quantity', 'place,width\n1,wide\n', { row: 2, column: 'Width of the tray', message: /wide/ }],
    ['another wood', 'place,wood\n1,teak\n', { row: 2, column: 'Wood', message: /not written for teak.*It is for/ }],
    ['an unknown colour', 'place,colour\n1,red\n', { row: 2, column: 'Colour of the inlay', message: /“red”.*option/ }],
    ['an unknown heading', 'place,widht\n1,220 mm\n', { row: 1, column: 'widht', message: /Did you mean width\?/ }],
    ['a heading twice', 'width,Width of the tray\n1,2\n', { row: 1, message: /mean the same/ }],
    ['a place twice', 'place\n1\n1\n', { row: 3, column: 'place', message: /also the place of row 2/ }],
    ['a place with a space', 'place\nbench 1\n', { row: 2, column: 'place', message: /has a space/ }],
    ['a cell beyond the headings', 'place\n1,ash\n', { row: 2, message: /beyond the last heading/ }],
    ['an open quotation mark', 'place,name\n1,"A. B.\n', { message: /quotation mark/ }],
    ['no row', 'place,name\n', { message: /no row below/ }],
    ['nothing', '  \n', { message: /empty/ }],
    ['what is no text', 'PK\u0003\u0004\0\0', { message: /no text/ }],
    ['what is far too long', 'a'.repeat(200_001), { message: /more than 200000/ }],
  ])(
    'tells of %s, with its row and column',
    (_, text, { message, ...place }: { message: RegExp; row?: number; column?: string }) => {
      const fault = faultOf(text);
      expect(fault?.message).toMatch(message);
      expect(fault).toMatchObject(place);
    },
  );

  test('keeps what cannot be used as it was typed', () => {
    expect(read('place,width,wood\n1,wide,teak\n').places[0]?.set).toEqual({ width: 'wide', wood: 'teak' });
  });

  test('counts what would be left out, and names the columns that there are', () => {
    const { faults, leftOut } = read('place,who\n1,A. B.\n1,C. D.\n');
    expect(leftOut).toBe(3);
    expect(faults[0]?.message).toContain('The columns that there are: place, name, ');
  });

  test('a place that is no number a place can have stays as written, never another', () => {
    expect(read('place,name\nx,A. B.\n1e9,C. D.\n').places.map(({ id }) => id)).toEqual(['x', '1e9']);
  });

  test('takes 30 rows and says which are left out', () => {
    const text = `place\n${Array.from({ length: 33 }, (_, at) => at + 1).join('\n')}\n`;
    expect(read(text).places).toHaveLength(30);
    expect(faultOf(text)).toMatchObject({ row: 32, message: expect.stringMatching(/33 rows/) });
  });

  test('a heading of the language itself is a heading like another', () => {
    const { places, faults } = read('place,__proto__,constructor\n1,x,y\n');
    expect(faults).toHaveLength(2);
    expect(places).toEqual([{ id: '1', set: {} }]);
  });
});

describe('a list of places written and read again', () => {
  test('is the same for the class of the demonstration', () => {
    const places = springPlaces();
    expect(read(placesText(places, record))).toEqual({ places, faults: [], leftOut: 0 });
  });

  test('has no cell that a spreadsheet takes for a formula', () => {
    const text = placesText([{ id: '=1', name: '@SUM(A1)', set: { width: '+1', length: '-2', wood: "'=x" } }], record);
    expect(text.split(/\r\n/)[1]?.split(',')).toEqual(["'=1", "'@SUM(A1)", "''=x", "'-2", "'+1"]);
    expect(read(text).places[0]).toEqual({
      id: '=1',
      name: '@SUM(A1)',
      set: { width: '+1', length: '-2', wood: "'=x" },
    });
  });

  test('is the same whatever was typed', () => {
    const text = fc
      .string({ unit: fc.constantFrom(...'ab=+-@\'",;\t\n\r 0é'), minLength: 1, maxLength: 12 })
      .map((typed) => typed.trim())
      .filter((typed) => typed !== '');
    const keys = ['wood', 'width', 'length', 'place', 'channelDepth'];
    const ids = fc.uniqueArray(fc.stringMatching(/^[A-Za-z0-9=+@'-]{1,8}$/), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(
        ids,
        fc.array(fc.dictionary(fc.constantFrom(...keys), text), { minLength: 6, maxLength: 6 }),
        text,
        (all, sets, name) => {
          const places = all.map((id, at) => ({ id, ...(at % 2 ? { name } : {}), set: { ...sets[at] } }));
          const again = readPlaces(placesText(places, record), record).places;
          const tidy = (value: unknown) =>
            JSON.parse(JSON.stringify(value).replaceAll('\\r\\n', '\\n').replaceAll('\\r', '\\n'));
          expect(again.map(({ id, name: who, set }) => [id, who, Object.entries(tidy(set)).sort()])).toEqual(
            places.map(({ id, name: who, set }) => [id, who, Object.entries(tidy(set)).sort()]),
          );
        },
      ),
      { numRuns: 60 },
    );
  });
});
