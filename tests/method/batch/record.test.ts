import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import Ajv2020 from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { canonical, conflictsOf, mergeBatches, unionOf } from '../../../src/method/batch/merge.ts';
import {
  type BatchEntry,
  type BatchRecord,
  batchesText,
  readBatch,
  readBatches,
} from '../../../src/method/batch/record.ts';
import { root } from '../../../src/store/index.ts';
import { at, batchOf, finished, read, started, strike } from './kit.ts';

const schema = JSON.parse(readFileSync(join(root, 'schemas', 'batch.schema.json'), 'utf8'));
const validate = new Ajv2020({ strict: true, strictTuples: false, allErrors: true }).compile(schema);

const lot: BatchEntry = {
  kind: 'lot',
  id: 'l',
  at: at('2027-01-12 09:00'),
  material: 'resin-a',
  lot: '<img src=x onerror=alert(1)>',
};
const deviation: BatchEntry = {
  kind: 'deviation',
  id: 'd',
  at: at('2027-01-12 09:30'),
  step: 'seal',
  text: '=HYPERLINK("x") <script>window.ran = 1</script>, with "quotes"\nand a second line',
  when: at('2027-01-12 09:30'),
};
const entries = [
  started('s', 'seal', '2027-01-12 09:00', [1, 2]),
  finished('f', 'seal', '2027-01-12 09:20'),
  read('r', 'seal', '2027-01-12 09:10', '16 °C'),
  lot,
  deviation,
  strike('c', 'f', '2027-01-12 09:40'),
];
const good = batchOf(entries);

describe('the record of a batch', () => {
  test('goes through its file unchanged, scripts and formulas as the text that they are', () => {
    const back = readBatches(batchesText([good]), 'batches.json');
    expect(back).toEqual({ ok: true, batches: [good] });
    expect(readBatches(JSON.stringify(good), 'one.json')).toEqual({ ok: true, batches: [good] });
    expect(validate(good)).toBe(true);
  });

  const spoilt: [what: string, change: (record: Record<string, unknown>) => void, field: string][] = [
    [
      'another version',
      (record) => {
        record.batch = 2;
      },
      'batch',
    ],
    [
      'no method',
      (record) => {
        delete record.method;
      },
      'method',
    ],
    [
      'a field that there is not',
      (record) => {
        record.photo = 'x.jpg';
      },
      'photo',
    ],
    [
      'an id with a path in it',
      (record) => {
        record.id = '../x';
      },
      'id',
    ],
    [
      'a day that there is not',
      (record) => {
        record.opened = '2027-02-30T08:00:00Z';
      },
      'opened',
    ],
    [
      'a time without its distance from universal time',
      (record) => {
        record.opened = '2027-02-03T08:00:00';
      },
      'opened',
    ],
    [
      'pieces the wrong way round',
      (record) => {
        record.entries = [{ ...entries[0], pieces: [2, 1] }];
      },
      'entries.0.pieces',
    ],
    [
      'an entry of no known kind',
      (record) => {
        record.entries = [{ ...entries[0], kind: 'photo' }];
      },
      'entries.0',
    ],
    [
      'a reading without a value',
      (record) => {
        record.entries = [{ ...entries[2], value: '' }];
      },
      'entries.0.value',
    ],
    [
      'too many entries',
      (record) => {
        record.entries = Array.from({ length: 5001 }, (_, at) => ({ ...entries[0], id: `e${at}` }));
      },
      'entries',
    ],
  ];
  test.each(spoilt)('with %s it is refused, and the field is named', (_, change, field) => {
    const record = structuredClone(good) as unknown as Record<string, unknown>;
    change(record);
    const answer = readBatch(record);
    expect(answer.ok).toBe(false);
    if (!answer.ok) expect(answer.problems.join('\n')).toContain(field);
  });

  test('keys of a prototype change nothing', () => {
    const text = batchesText([good]).replace('"case": {', '"case": { "set": { "__proto__": "x", "constructor": "y" },');
    for (const each of [text, '{"batches":[],"__proto__":{"polluted":1}}', '{"__proto__":{"batches":[]}}']) {
      const answer = readBatches(each, 'x.json');
      expect(answer.ok ? '' : answer.problems[0]).toContain('a field of it is called __proto__, which none may be');
    }
    expect(({} as { polluted?: unknown }).polluted).toBeUndefined();
  });

  test.each([
    ['ten megabytes', 'x'.repeat(10_000_001), /it has 10000001 characters; 10000000 are read at most/],
    ['half a file', batchesText([good]).slice(0, 500), /it is not whole JSON/],
    ['a page', '<script>alert(1)</script>', /it is not whole JSON/],
    ['a list of nothing known', '{"sheets": []}', /it holds no batch/],
    ['a bare number', '7', /it holds no batch/],
    ['a batch that is none', '[{"batch":1}]', /batch 1, .* Nothing was taken from it\./],
    ['deep brackets', '['.repeat(200_000), /it is not whole JSON|it holds no batch/],
  ])('%s is refused whole', (_, text, problem) => {
    const answer = readBatches(text, 'x.json');
    expect(answer.ok ? '' : answer.problems.join('\n')).toMatch(problem);
  });
});

describe('batches of two places laid together', () => {
  const piece = fc.constantFrom(
    ...entries,
    { ...entries[0], when: at('2027-01-12 09:05') } as BatchEntry,
    { ...entries[2], value: '18 °C' } as BatchEntry,
  );
  const one: fc.Arbitrary<BatchRecord> = fc
    .tuple(fc.constantFrom('a', 'b'), fc.constantFrom('Fair', 'Class'), fc.array(piece, { maxLength: 5 }))
    .map(([id, title, some]) => ({ ...good, id, title, entries: unionOf(some) }));
  const some = fc.array(one, { maxLength: 4 });
  const merged = (...lists: BatchRecord[][]) =>
    lists.reduce((kept, come) => mergeBatches(kept, come).batches, [] as BatchRecord[]);

  test('the same in any order, and twice the same is once', () => {
    fc.assert(
      fc.property(some, some, some, (a, b, c) => {
        expect(merged(a, b)).toEqual(merged(b, a));
        expect(merged(merged(a, b), c)).toEqual(merged(a, merged(b, c)));
        expect(merged(a, a)).toEqual(merged(a));
        const again = mergeBatches(merged(a, b), b);
        expect([again.newBatches, again.newEntries]).toEqual([0, 0]);
      }),
    );
  });

  test('nothing that came is lost', () => {
    fc.assert(
      fc.property(some, some, (a, b) => {
        const all = new Set(
          merged(a, b).flatMap(({ id, title, entries: kept }) => kept.map((entry) => canonical([id, title, entry]))),
        );
        for (const { id, title, entries: come } of [...a, ...b])
          for (const entry of come) expect(all.has(canonical([id, title, entry]))).toBe(true);
      }),
    );
  });

  test('what stands twice and differs is kept twice and said', () => {
    const other = { ...good, title: 'Another title', entries: [{ ...entries[2], value: '18 °C' } as BatchEntry] };
    const twin = { ...good, entries: [{ ...entries[2], value: '18 °C' } as BatchEntry] };
    const { batches, conflicts, newBatches, newEntries } = mergeBatches([good], [other, twin]);
    expect(batches).toHaveLength(2);
    expect([newBatches, newEntries]).toEqual([1, 1]);
    expect(conflicts).toEqual(conflictsOf(batches));
    expect(conflicts.join('\n')).toMatch(
      /“Trays for the fair” and “Another title” bear the same id|“Another title” and “Trays for the fair” bear the same id/,
    );
    expect(conflicts.join('\n')).toContain('two entries bear the id r and do not say the same. Both are kept.');
  });
});
