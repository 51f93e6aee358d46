import { parse as parseCsv } from 'papaparse';
import { expect, test } from 'vitest';
import { documentText } from '../../../src/calculators/kit/document-text.ts';
import { batchLabel } from '../../../src/method/batch/label.ts';
import { logColumns, logLine, logPackage } from '../../../src/method/batch/log.ts';
import { batchPage } from '../../../src/method/batch/page.ts';
import { type BatchEntry, readBatches } from '../../../src/method/batch/record.ts';
import { defaultUnits } from '../../../src/model/quantity/index.ts';
import { descriptorFaults } from '../../data-package/profile.ts';
import { tableFaults } from '../../data-package/table-check.ts';
import { at, batchOf, finished, linesOf, read, started, stateAt, told } from './kit.ts';

/** The work of a cold week, day by day: the seal coat and the pour at 18 °C where 22 °C were planned. */
const days: [now: string, entries: BatchEntry[], says: RegExp][] = [
  [
    '2027-01-12 09:30',
    [
      started('s1', 'seal', '2027-01-12 09:00'),
      finished('s2', 'seal', '2027-01-12 09:20'),
      read('r1', 'seal', '2027-01-12 09:10', '18 °C'),
      { kind: 'lot', id: 'l1', at: at('2027-01-12 09:05'), material: 'resin-a', lot: 'A-1107' },
    ],
    /^later Pour: Not before (Tue|Wed) /,
  ],
  [
    '2027-01-13 18:30',
    [
      started('p1', 'pour', '2027-01-13 18:00'),
      finished('p2', 'pour', '2027-01-13 18:20'),
      read('r2', 'pour', '2027-01-13 18:10', '18 °C'),
      {
        kind: 'deviation',
        id: 'd1',
        at: at('2027-01-13 18:25'),
        step: 'pour',
        text: 'The dam leaked; topped up from the same cup.',
        when: at('2027-01-13 18:15'),
      },
    ],
    /^later Level the inlay: Not before /,
  ],
  ['2027-01-20 18:30', [], /^later Level the inlay: Not before /],
  [
    '2027-01-28 12:00',
    [started('v1', 'level', '2027-01-28 10:00'), finished('v2', 'level', '2027-01-28 10:30')],
    /^now Oil it/,
  ],
  [
    '2027-01-28 13:00',
    [started('o1', 'oil', '2027-01-28 12:30'), finished('o2', 'oil', '2027-01-28 12:45')],
    /^now Write the label/,
  ],
  ['2027-01-29 13:00', [finished('w1', 'label', '2027-01-29 12:50')], /^now Hand it over/],
  [
    '2027-01-29 14:00',
    [started('h1', 'hand-over', '2027-01-29 13:30'), finished('h2', 'hand-over', '2027-01-29 13:35')],
    /^$/,
  ],
];

test('a week from the seal coat to the hand-over: each day says what may be done, and no label comes before the cure', async () => {
  const entries: BatchEntry[] = [];
  for (const [now, written, says] of days) {
    entries.push(...written);
    const batch = await stateAt(entries, now);
    expect(linesOf(batch)[0] ?? '').toMatch(says);
    expect(batch.state.problems).toEqual([]);
    const label = await batchLabel(batch, 'Trays of January');
    const cured = now >= '2027-01-28 13:00';
    expect(label.documents.length > 0).toBe(now >= '2027-01-29');
    if (!cured) expect(told(label.inTheWay.join('\n'))).toMatch(/“Oil it” is not done/);
  }
  const batch = await stateAt(entries, '2027-01-29 14:00');
  expect(batch.state.finished).toBe(true);
  const label = await batchLabel(batch, 'Trays of January');
  expect(label.verdict.level).toBe('care');
  expect(label.facts['food']).toMatchObject({ roomTemperature: 18, daysSinceCoat: 1.05, daysSincePour: 15.81 });
  const ofBatch = label.documents.find(({ id }) => id === 'batch-label');
  const lines = ofBatch && documentText(ofBatch, defaultUnits);
  for (const line of [
    'Wood: sugar maple (Acer saccharum)',
    'Lot of the resin: A-1107',
    'Finish: Mineral oil',
    'Made on: 2027-01-28',
    'Batch: Trays of January',
  ])
    expect(lines).toContain(line);
  expect(lines).toMatch(/Cured on: 2027-01-(1[5-9]|2\d)/);
  const page = documentText(batchPage(batchOf(entries), batch), defaultUnits);
  for (const words of [
    'A-1107',
    'Resin, part A',
    'The dam leaked',
    '18 °C',
    '22 °C',
    'Sugar maple',
    'Mineral oil',
    'Photographs are not kept',
    'Wed 2027-01-13 18:00',
  ])
    expect(page).toContain(words);
});

test('a pour without a temperature, or resin worked too early, has no label whatever the day', async () => {
  const all = days.flatMap(([, written]) => written);
  const blind = await batchLabel(
    await stateAt(
      all.filter(({ id }) => id !== 'r2'),
      '2027-06-01 12:00',
    ),
    'Trays of January',
  );
  expect(blind.documents).toEqual([]);
  expect(blind.inTheWay.join('\n')).toContain('No temperature was written down at “Pour”');
  const early = all.map((entry) => (entry.id === 'v1' ? started('v1', 'level', '2027-01-15 10:00') : entry));
  const soon = await batchLabel(await stateAt(early, '2027-06-01 12:00'), 'Trays of January');
  expect(soon.documents).toEqual([]);
  expect(soon.verdict.level).toBe('stop');
});

test('colder by what was measured: the hand-over waits longer than the plan said', async () => {
  const all = days.flatMap(([, written]) => written).filter(({ id }) => id !== 'h1' && id !== 'h2');
  const cold = all.map((entry) =>
    entry.kind === 'reading' && entry.id === 'r2' ? { ...entry, value: '12 °C' } : entry,
  );
  const label = await batchLabel(await stateAt(cold, '2027-01-29 14:00'), 'Trays of January');
  expect(label.documents).toEqual([]);
  expect(told(label.inTheWay.join('\n'))).toMatch(
    /“Level the inlay” was begun .* before the time after “Pour” was over|has not cured|12 °C/,
  );
});

test('the log is one line a batch, and its package comes back whole', async () => {
  const entries = days.flatMap(([, written]) => written);
  const record = batchOf(entries);
  const batch = await stateAt(entries, '2027-01-29 14:00');
  const line = logLine(record, batch);
  expect(line).toMatchObject({
    title: 'Trays for the fair',
    pieces: 2,
    finished: true,
    wood: 'Sugar maple',
    finish: 'Mineral oil',
    lots: 'Resin, part A: A-1107',
    deviations: 1,
    last_pour: '2027-01-14T00:20:00.000Z',
    last_coat: '2027-01-28T18:45:00.000Z',
  });
  const broken = {
    ...record,
    id: 'broken',
    title: 'Cut, "short"\nand =1+1',
    method: { file: 'x.yaml', text: 'method: 9' },
  };
  const files = logPackage([
    { record, batch },
    { record: broken, batch: undefined },
  ]);
  const descriptor = JSON.parse(files['datapackage.json'] ?? '');
  for (const { path, schema } of descriptor.resources) {
    expect(Object.keys(files)).toContain(path);
    if (!schema) continue;
    const { data } = parseCsv<string[]>(files[path] ?? '', { skipEmptyLines: true });
    expect(data[0]).toEqual(schema.fields.map(({ name }: { name: string }) => name));
    expect(new Set(data.map((row) => row.length))).toEqual(new Set([schema.fields.length]));
  }
  expect(descriptorFaults(descriptor)).toEqual([]);
  for (const resource of descriptor.resources) expect(tableFaults(resource, files[resource.path] ?? '')).toEqual([]);
  const rows = parseCsv<Record<string, string>>(files['batches.csv'] ?? '', {
    header: true,
    skipEmptyLines: true,
  }).data;
  expect(rows.map(({ title }) => title)).toEqual(['Trays for the fair', 'Cut, "short"\nand =1+1']);
  expect(Object.keys(rows[0] ?? {})).toEqual(logColumns.map(({ name }) => name));
  expect(readBatches(files['batches.json'] ?? '', 'batches.json')).toEqual({ ok: true, batches: [record, broken] });
});
