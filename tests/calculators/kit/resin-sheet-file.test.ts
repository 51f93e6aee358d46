import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { RawInputs } from '../../../src/calculators/kit/calculator.ts';
import { resinSheetForm, tidySheet } from '../../../src/calculators/kit/resin-sheet.ts';
import {
  freeName,
  readKept,
  readSheetFile,
  sameName,
  sheetFormat,
  withoutSheet,
  withSheet,
  writeSheetFile,
} from '../../../src/calculators/kit/resin-sheet-file.ts';

const example = resinSheetForm.example.metric;
const entry = {
  mixByVolume: fc.constantFrom('2:1', '1:1', '3 : 1', '100:45'),
  densityA: fc.double({ min: 0.8, max: 2.5, noNaN: true }).map((value) => `${value.toFixed(3)} g/ml`),
  potLife: fc.integer({ min: 5, max: 3000 }).map((value) => `${value} min`),
  greatestDepth: fc.constantFrom('3 mm', '3/4 in', '20 mm'),
  viscosity: fc.constantFrom('400 mPa·s', '1.2 Pa·s'),
};
const name = fc.string({ minLength: 1, maxLength: 60 }).filter((text) => /[\p{L}\p{N}]/u.test(text));
const sheet = fc.record({ name, ...entry }, { requiredKeys: ['name'] }) as unknown as fc.Arbitrary<RawInputs>;
const sheets = fc.uniqueArray(sheet, { minLength: 1, maxLength: 8, comparator: sameName });

function refusal(text: string): string {
  const read = readSheetFile(text, 'shelf.json');
  if (read.ok) throw new Error('the file was read');
  return read.errors.map(({ message }) => message).join(' ');
}

describe('export and import', () => {
  test('give back every sheet as it was entered', () => {
    fc.assert(
      fc.property(sheets, (list) => {
        expect(readSheetFile(writeSheetFile(list))).toEqual({ ok: true, value: list.map(tidySheet) });
      }),
    );
  });

  test('what is kept is what was written', () => {
    fc.assert(
      fc.property(sheets, (list) => {
        expect(readKept(writeSheetFile(list))).toEqual({ sheets: list.map(tidySheet) });
      }),
    );
  });

  test('a file cut off anywhere is refused whole, and the message says so', () => {
    const text = writeSheetFile([example]).trimEnd();
    fc.assert(
      fc.property(fc.integer({ min: 0, max: text.length - 1 }), (length) => {
        expect(refusal(text.slice(0, length))).toMatch(
          /^shelf\.json.*Nothing was taken from it, and what is kept is unchanged/,
        );
      }),
    );
  });

  const file = (patch: object) => JSON.stringify({ ...sheetFormat, sheets: [example], ...patch });
  test.each([
    ['nothing', '', /not whole JSON/],
    ['a list', '[]', /no object with a format/],
    ['another format', file({ format: 'x' }), /Its format is "x", not “kerf-and-cure\/resin-sheet”/],
    ['a later version', file({ version: 2 }), /Its version is 2; this reads version 1/],
    ['no list', file({ sheets: {} }), /no list of sheets/],
    ['an empty list', file({ sheets: [] }), /holds no sheet/],
    [
      'a misspelt entry',
      file({ sheets: [{ name: 'Bench', potLive: '6 h' }] }),
      /“potLive”: There is no input of this name.* Did you mean potLife\? Nothing was taken from it/,
    ],
    ['a sheet that is none', file({ sheets: [example, 7] }), /sheet 2: it is not an object of entries/],
    [
      'a bad value',
      file({ sheets: [example, { ...example, name: 'Bench', potLife: 'soon' }] }),
      /sheet 2, “Bench”, pot life: “soon” is not a time/,
    ],
    [
      'an unknown entry',
      file({ sheets: [{ ...example, pot: '1' }] }),
      /sheet 1, “Lakeside.*, “pot”: There is no input/,
    ],
    ['a name twice', file({ sheets: [example, { ...example }] }), /another sheet of the file has the same name/],
    ['more than 1 MB', `"${'x'.repeat(1_000_001)}"`, /larger than 1 MB/],
  ])('%s is refused with what, where and a way out', (_, text, message) => {
    expect(refusal(text)).toMatch(message);
    expect(refusal(text)).toMatch(/Export the sheets again where they are kept\.$/);
  });
});

describe('what a browser keeps', () => {
  test('any text gives sheets with names, and is called damaged where a part of it is lost', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.json(),
          fc.json().map((json) => `{"format":"${sheetFormat.format}","version":1,"sheets":[${json}]}`),
        ),
        (text) => {
          const { sheets: found, damaged } = readKept(text);
          for (const one of found) expect(String(one.name).trim()).not.toBe('');
          if (found.length === 0 && text !== '') expect(damaged?.text).toBe(text);
        },
      ),
    );
  });

  test('a sheet with a bad value is given, to be mended', () => {
    const text = JSON.stringify({ ...sheetFormat, sheets: [{ name: 'Bench', potLife: 'soon' }] });
    expect(readKept(text)).toEqual({ sheets: [{ name: 'Bench', potLife: 'soon' }] });
  });

  test('beside what is no sheet the others are given, and the text is damaged', () => {
    const text = JSON.stringify({ ...sheetFormat, sheets: [{ name: 'Bench' }, null] });
    expect(readKept(text)).toMatchObject({ sheets: [{ name: 'Bench' }], damaged: { text } });
  });
});

describe('a list of sheets', () => {
  test('with a sheet more holds it once, in the place of its namesake, and all others unchanged', () => {
    fc.assert(
      fc.property(sheets, sheet, (list, one) => {
        const after = withSheet(list, one);
        expect(after.filter((each) => sameName(each, one))).toEqual([tidySheet(one)]);
        const others = (all: readonly RawInputs[]) => all.filter((each) => !sameName(each, one));
        expect(others(after)).toEqual(others(list));
        expect(withoutSheet(after, String(one.name))).toEqual(others(list));
      }),
    );
  });

  test('a free name is free', () => {
    fc.assert(
      fc.property(sheets, (list) => {
        const taken = String(list[0]?.name);
        const free = freeName(list, taken);
        expect(list.some((each) => sameName(each, { name: free }))).toBe(false);
        expect(freeName(list, free)).toBe(free);
      }),
    );
    expect(freeName([{ name: 'Bench' }, { name: 'bench (2)' }], 'Bench')).toBe('Bench (3)');
  });
});
