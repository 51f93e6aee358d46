import { existsSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { dirname, join } from 'node:path';
import { setFlagsFromString } from 'node:v8';
import { readable } from '../method/rules/besides.ts';
import type { SarifFinding } from '../method/sarif.ts';
import { type ReaderUnits, wordsInReaderUnits } from '../model/quantity/index.ts';
import { calendarsIn } from './calendars-beside.ts';
import type { CheckWorkerData } from './check-worker.ts';
import { type NamedText, shopTextOf, textOf, unitsOf } from './method-files.ts';
import { readOptions } from './options.ts';
import { type Done, shareOut } from './share-out.ts';
import { type Command, UsageError } from './usage.ts';

const usage = `check <files…> [--shop shop.yaml] [--units metric|inch] [--json | --sarif]

Reads methods (and shop records), works them out at their own defaults and judges them by the rules.
Prints one line a finding: file:line:column, level, rule, what was found, the way out.
Exit code 1 where something must not be followed so, or cannot be read.
`;

/** How many files it takes before workers are quicker: starting one costs as much as checking so many. */
const mostAlone = 16;

/** Milliseconds that one file may take in a worker: a hundred times what a long method takes. */
const patience = 60_000;

/**
 * Let a function run for longer before it is translated anew. A worker lives a second or two: at the usual pace it spends a fifth of them
 * on translating what it will hardly run again, and its helper threads take the same from the other worker. The pace is told only to the
 * V8 that it was measured with, that of Node 20; another may not know it.
 */
function translateLater(): void {
  if (process.versions.v8.startsWith('11.')) setFlagsFromString('--interrupt-budget=1000000');
}

/** Beside the bundle of the command lies that of its worker; where the sources are run as they stand there is none. */
const script = ['./check-worker.mjs', './check-worker.js']
  .map((name) => new URL(name, import.meta.url))
  .find((url) => existsSync(url));

/** A file whose check came to no end, told as one that cannot be read. */
const unfinished = (file: string, why: string): SarifFinding => ({
  file,
  line: 1,
  column: 1,
  rule: readable,
  level: 'stop',
  message: `The check of this file ${why}; the other files are not touched by it. Check it alone, and take out the step that you wrote last; what is left finds the place.`,
});

/** What a check tells of each file, in the order in which they were named. */
async function checkAll(
  files: readonly NamedText[],
  shopText: NamedText | undefined,
  units: ReaderUnits,
): Promise<SarifFinding[]> {
  // What reads shops and methods is loaded where it is asked for: a command that shares its files out leaves nearly all of it to its workers.
  const shop = shopText && (await import('./shop-file.ts')).shopIn(shopText);
  if (files.length > mostAlone && script) {
    const workerData: CheckWorkerData = { shop: shopText, units };
    const workers = Math.max(2, availableParallelism());
    translateLater();
    const done: Done<SarifFinding[]>[] = await shareOut(files, { script, workerData, workers, patience });
    return done.flatMap((each, at) => (each.ok ? each.answer : unfinished(files[at]?.file ?? '', each.why)));
  }
  const { checked } = await import('./checked.ts');
  const memo = new Map<string, unknown>();
  const all: SarifFinding[] = [];
  for (const file of files) all.push(...(await checked(file, { shop, units, memo })));
  return all;
}

async function asSarif(all: readonly SarifFinding[], units: ReaderUnits): Promise<string> {
  const [{ rules }, { besides }, { sarifLog }] = await Promise.all([
    import('../method/rules/index.ts'),
    import('../method/rules/besides.ts'),
    import('../method/sarif.ts'),
  ]);
  const asked = [
    ...wordsInReaderUnits(rules, units),
    ...besides.map(({ text, ...each }) => ({ ...each, level: 'stop' as const, looksAt: text })),
  ];
  return JSON.stringify(sarifLog(all, asked, { name: 'kerf', version: '1' }), null, 2);
}

function line({ file, line: row, column, rule, level, message, excepted }: SarifFinding): string {
  const mark = excepted === undefined ? level : 'excepted';
  return `${file}:${row}:${column} ${mark} [${rule}] ${message}${excepted === undefined ? '' : ` Reason: ${excepted}`}`;
}

/** Check methods and shop records. */
export const check: Command = async (args, output) => {
  const { values, positionals } = readOptions('check', {
    args: [...args],
    allowPositionals: true,
    options: {
      shop: { type: 'string' },
      units: { type: 'string' },
      json: { type: 'boolean' },
      sarif: { type: 'boolean' },
      help: { type: 'boolean', short: 'h' },
    },
  });
  if (values.help) {
    output.out(`kerf ${usage}`);
    return 0;
  }
  if (positionals.length === 0)
    throw new UsageError(`check: no file was named. Write, for example, kerf check methods/first-tray.yaml.`);
  const units = unitsOf(values.units, 'check');
  const shop = shopTextOf(values.shop, 'check');
  const files = positionals.map((file) => ({
    file,
    text: textOf(file, 'check'),
    calendars: calendarsIn(join(dirname(file), 'calendars')),
  }));
  const all = await checkAll(files, shop, units);
  const stops = all.filter(({ level, excepted }) => level === 'stop' && excepted === undefined);
  if (values.sarif) output.out(`${await asSarif(all, units)}\n`);
  else if (values.json) output.out(`${JSON.stringify(all, null, 2)}\n`);
  else {
    output.out(all.map((each) => `${line(each)}\n`).join(''));
    const count = (number: number, word: string) => `${number} ${word}${number === 1 ? '' : 's'}`;
    output.out(
      `${count(positionals.length, 'file')}: ${count(stops.length, 'stop')}, ${count(all.filter(({ level }) => level === 'warn').length, 'warning')}, ${count(all.filter(({ level }) => level === 'note').length, 'note')}.\n`,
    );
  }
  return stops.length > 0 ? 1 : 0;
};
