import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Ical from 'ical.js';
import { afterAll, describe, expect, test } from 'vitest';
import { starterFile, starterMethod } from '../../src/method/record/starter.ts';
import { smallMethod } from '../method/case/base.ts';
import { kerf } from './run.ts';

const folder = mkdtempSync(join(tmpdir(), 'methods-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const shop = 'methods/shop.yaml';
const methods = readdirSync('methods')
  .filter((name) => name.endsWith('.yaml') && name !== 'shop.yaml')
  .map((name) => `methods/${name}`);

function file(name: string, text: string): string {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
}

describe('kerf new', () => {
  test('writes a method that passes, and never over a file', async () => {
    const path = join(folder, 'mine.yaml');
    expect(await kerf('new', path)).toMatchObject({ code: 0 });
    expect(readFileSync(path, 'utf8')).toBe(starterFile);
    expect(starterFile).toContain('kerf check <this file>');
    expect(starterMethod).not.toContain('kerf');
    expect((await kerf('check', path)).code).toBe(0);
    writeFileSync(path, 'mine');
    const again = await kerf('new', path);
    expect(again.code).toBe(2);
    expect(again.err).toContain('is there already');
    expect(readFileSync(path, 'utf8')).toBe('mine');
    expect((await kerf('new', join(folder, 'mine.txt'))).err).toContain('.yaml');
    expect((await kerf('new', join(folder, 'no', 'folder.yaml'))).code).toBe(2);
  });
});

describe('kerf check', () => {
  test('passes the methods of the project and its shop record', async () => {
    const { code, out } = await kerf('check', ...methods, shop, '--shop', shop);
    expect(out.split('\n').filter((line) => line.includes(' stop '))).toEqual([]);
    expect(code).toBe(0);
  });

  test('says file, line, column and the way out, and ends with 1', async () => {
    const path = file('wrong.yaml', starterMethod.replace('use: grit-sequence', 'use: grit-sequense'));
    const line = starterMethod.split('\n').findIndex((each) => each.includes('use: grit-sequence')) + 1;
    const { code, out } = await kerf('check', path);
    expect(code).toBe(1);
    expect(out).toContain(`${path}:${line}:`);
    expect(out).toContain('Did you mean “grit-sequence”?');
  });

  test('tells machines the same: as JSON and as SARIF', async () => {
    const path = file('tab.yaml', 'method: 1\n\ttitle: x\n');
    const json = JSON.parse((await kerf('check', path, '--json')).out) as { line: number; level: string }[];
    expect(json[0]).toMatchObject({ line: 2, level: 'stop' });
    const sarif = JSON.parse((await kerf('check', path, '--sarif')).out);
    expect(sarif.version).toBe('2.1.0');
    const [run] = sarif.runs;
    expect(run.results[0].locations[0].physicalLocation.region.startLine).toBe(2);
    expect(run.tool.driver.rules[run.results[0].ruleIndex]).toMatchObject({
      id: 'readable',
      shortDescription: { text: 'The file can be read' },
    });
  });

  test.each([
    [['check'], 'no file was named'],
    [['check', 'nowhere.yaml'], 'there is no such file'],
    [['check', 'methods'], 'it is a folder'],
    [['check', shop, '--units', 'cubits'], 'there are metric and inch'],
  ])('refuses %j', async (args, words) => {
    const { code, err } = await kerf(...args);
    expect(code).toBe(2);
    expect(err).toContain(words);
  });

  test('does not read ten megabytes', async () => {
    const { code, err } = await kerf('check', file('big.yaml', 'a: '.padEnd(10_000_000, 'x')));
    expect(code).toBe(2);
    expect(err).toContain('10000000 bytes');
  });
});

describe('kerf plan', () => {
  const tuesdays = file('tuesdays.yaml', "zone: Europe/Helsinki\nweek: { tue: ['18:30-21:00'] }\n");
  const path = file('small.yaml', smallMethod);
  const plan = (...more: string[]) => kerf('plan', path, '--calendar', tuesdays, '--start', '2027-03-23', ...more);

  test('gives times, sessions, bill and findings as data', async () => {
    const { code, out } = await plan('--json', '--pieces', '3', '--set', 'width=10 in');
    const report = JSON.parse(out);
    expect(code).toBe(0);
    expect(report.method).toMatchObject({ title: 'A plain board', pieces: 3 });
    expect(report.parameters.width).toMatchObject({ value: '10 in', from: 'reader' });
    expect(report.steps.map(({ id }: { id: string }) => id)).toEqual(['read', 'oil', 'again', 'give']);
    expect(report.steps[0].figures.change.figures.change.unit).toBe('mm');
    expect(report.bill.find(({ id }: { id: string }) => id === 'cloths')).toMatchObject({ need: 6, unit: '{count}' });
    expect(report.sessions.every(({ start }: { start: string }) => start.slice(11, 16) === '18:30')).toBe(true);
  });

  test('keeps the clock of the evening across the change to summer time', async () => {
    // In 2027 Finland goes to summer time on 28 March, between the two Tuesdays.
    const report = JSON.parse((await plan('--json')).out);
    expect(report.sessions.map(({ start }: { start: string }) => start)).toEqual([
      '2027-03-23T18:30:00+02:00',
      '2027-03-30T18:30:00+03:00',
    ]);
    expect(report.advice).toMatchObject([{ resource: 'hands' }]);
    expect(report.secondWays).toMatchObject([{ step: 'again', after: 'oil' }]);
  });

  test('writes an iCalendar file that another reader reads the same', async () => {
    const { out } = await plan('--ics');
    const events = new Ical.Component(Ical.parse(out))
      .getAllSubcomponents('vevent')
      .map((each) => new Ical.Event(each));
    // By the clock on the wall of the shop, in no zone: form #1 of RFC 5545.
    expect(events.map(({ startDate, endDate }) => [`${startDate}`, `${endDate}`])).toEqual([
      ['2027-03-23T18:30:00', '2027-03-23T21:00:00'],
      ['2027-03-30T18:30:00', '2027-03-30T21:00:00'],
    ]);
    expect(out).not.toMatch(/TZID|DT(?:START|END)[^\r]*Z\r/);
    expect(events[1]?.description).toContain('18:30 Oil it again');
    expect((await plan('--ics')).out).toBe(out);
    for (const line of out.split('\r\n')) expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
  });

  test('reads well, in the reader’s units', async () => {
    const { out } = await plan('--units', 'inch', '--set', 'width=10 in');
    expect(out).toContain('A plain board: 2 × Plain board');
    expect(out).toContain('Tue 2027-03-23 18:30 to 21:00');
    expect(out).toContain('18:30 to 18:39  Read the moisture');
    expect(out).toContain('Time: 5 min to set up, 2 min for each piece.');
    expect(out).not.toContain('no price');
    expect(out).not.toContain('⟦');
    expect(out).toMatch(/Expect −[\d/ ]+ in/);
  });

  test('says why there is no plan, and what would make one', async () => {
    const late = file(
      'late.yaml',
      smallMethod.replace('most: 3 d, missed: { do: Wipe with a damp cloth and let it dry, adds: 2 min }', 'most: 3 d'),
    );
    const { code, out } = await kerf('plan', late, '--calendar', tuesdays, '--start', '2027-03-23');
    expect(code).toBe(1);
    expect(out).toContain('No timetable. It cannot all be kept');
    // To be longer by 9.8 h the evening of 2.5 h would have to last past twelve: another evening is what helps.
    expect(out).toContain('Any of these would help: the shop open on Wednesdays too, 18:30 to 21:00.');
  });

  test('with a shop record prices it, to the cent', async () => {
    const report = JSON.parse(
      (await kerf('plan', 'methods/first-tray.yaml', '--shop', shop, '--start', '2027-01-12', '--json')).out,
    );
    const paid = report.bill.reduce(
      (sum: number, { cost }: { cost: number | null }) => sum + Math.round((cost ?? 0) * 100),
      0,
    );
    expect(Math.round(report.cost.bought * 100)).toBe(paid);
    const batch = report.cost.parts.reduce(
      (sum: number, part: { batch: number }) => sum + Math.round(part.batch * 100),
      0,
    );
    expect(Math.round(report.cost.price * 100)).toBeGreaterThan(batch / report.method.pieces);
  });

  test.each([
    [['--pieces', 'six'], 'is not a whole number'],
    [['--start', 'tomorrow'], '--start “tomorrow” is not a day of the calendar'],
    [['--start', '31.12.2027'], 'Write year-month-day'],
    [['--end', '2027-01-01'], 'lies before --start 2027-03-23'],
    [['--set', 'width'], 'has no value'],
    [['--shop', 'nowhere.yaml'], 'there is no such file'],
    [['--end', '2027-02-30'], '2027-02-30'],
  ])('refuses %j', async (args, words) => {
    const { code, err } = await plan(...args);
    expect(code).toBe(2);
    expect(err).toContain(words);
  });

  test('a bare number set for a length is told by its unit, not as a fault of the file’s range', async () => {
    const { code, err } = await plan('--set', 'width=300');
    expect(code).toBe(1);
    expect(err).toContain('“300” has no unit. Write it as its default is written, such as 250 mm.');
  });

  test('a case that the method does not allow is told with its place', async () => {
    const { code, err } = await plan('--set', 'width=2 m');
    expect(code).toBe(1);
    expect(err).toMatch(/small\.yaml:\d+:\d+ parameters\.width\.default: .*2 m is more than the method allows/);
  });
});
