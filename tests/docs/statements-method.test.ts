import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { mostPlaces } from '../../src/method/class/record.ts';
import { kerf } from '../command/run.ts';
import { howTo } from './how-to.ts';
import { figure, hold, whole } from './statements.ts';
import { numbered } from './tutorial.ts';

/** Hours until a seal coat of the slow casting resin may be poured over, at its slow end. */
const opens = (shopTemperature: string): string => {
  const found = figure('cure-clock', { resin: 'slow-casting-2-1', shopTemperature }, 'recoatOpens');
  return whole((found.high ?? found.value) / 3600);
};

hold({
  'running-a-batch': [
    [
      'what a colder room does to a wait',
      () => `is poured over after ${opens('22 °C')} h at 22 °C; where 16 °C was read, after ${opens('16 °C')} h.`,
    ],
    ['the same in the answers', () => `2. No: ${opens('16 °C')} h, and that only if the seal is hard.`],
  ],
  'teaching-with-sheets': [['the last of twelve at five minutes each', () => `1. ${words[11 * 5]} minutes:`]],
});

const words: Readonly<Record<number, string>> = { 50: 'Fifty', 55: 'Fifty-five', 60: 'Sixty' };

test('a class has as many places as the page says', () => {
  expect(mostPlaces).toBe(30);
  expect(howTo('teaching-with-sheets').text).toContain('up to thirty places');
});

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'kerf-tutorial-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** The commands of the part about the terminal, as they are typed after `kerf`. */
const commands = numbered('terminal').flatMap((item) =>
  [...item.matchAll(/`npm run -s kerf -- ([^`]+)`/g)].map(([, command = '']) =>
    [...command.matchAll(/"([^"]*)"|([^\s"=]+="[^"]*")|(\S+)/g)].map(
      ([, quoted, set, plain]) => quoted ?? (set ?? plain ?? '').replaceAll('"', ''),
    ),
  ),
);

test('each command of the part about the terminal does what it says, one after the other', async () => {
  expect(commands.map(([name]) => name)).toEqual(['new', 'check', 'plan', 'plan', 'sheet']);
  for (const command of commands) {
    const own = command.map((word) => word.replace(/^(methods\/)?(?=bread-board\.)/, `${folder}/`));
    const { code, err } = await kerf(...own);
    expect(err).toBe('');
    expect(code).toBe(0);
  }
}, 30_000);
