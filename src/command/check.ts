import { workMethod } from '../method/case/work.ts';
import { readMethod } from '../method/read.ts';
import { rules } from '../method/rules/index.ts';
import { judge } from '../method/rules/judge.ts';
import { type SarifFinding, sarifLog } from '../method/sarif.ts';
import { readShop, type Shop } from '../method/shop/index.ts';
import type { DataProblem } from '../model/data/problem.ts';
import { inReaderUnits, type ReaderUnits, wordsInReaderUnits } from '../model/quantity/index.ts';
import { isShopRecord, shopOf, textOf, unitsOf } from './method-files.ts';
import { readOptions } from './options.ts';
import { type Command, UsageError } from './usage.ts';

/** Something that a check tells of a file. */
type Told = SarifFinding;

const usage = `check <files…> [--shop shop.yaml] [--units metric|inch] [--json | --sarif]

Reads methods (and shop records), works them out at their own defaults and judges them by the rules.
Prints one line a finding: file:line:column, level, rule, what was found, the way out.
Exit code 1 where something must not be followed so, or cannot be read.
`;

/** A problem of a file as a finding: it cannot be read, and so must not be followed. */
const asFinding = (problem: DataProblem, units: ReaderUnits): Told => ({
  file: problem.file,
  line: problem.line,
  column: problem.column,
  ...(problem.endLine === undefined ? {} : { endLine: problem.endLine }),
  ...(problem.endColumn === undefined ? {} : { endColumn: problem.endColumn }),
  rule: 'readable',
  level: 'stop',
  message: inReaderUnits(`${problem.field ? `${problem.field}: ` : ''}${problem.message}`, units),
});

async function told(
  file: string,
  shop: Shop | undefined,
  units: ReaderUnits,
  memo: Map<string, unknown>,
): Promise<Told[]> {
  const text = textOf(file, 'check');
  if (isShopRecord(text)) return readShop(text, file).problems.map((problem) => asFinding(problem, units));
  const working = await workMethod(readMethod(text, file), { memo, ...(shop ? { shop } : {}) });
  if (!working.ok) return working.problems.map((problem) => asFinding(problem, units));
  const found = judge(working.worked).map(({ rule, level, path, message, wayOut, excepted }): Told => {
    const { line, column, endLine, endColumn } = working.worked.spanOf(path);
    return {
      file,
      line,
      column,
      endLine,
      endColumn,
      rule,
      level,
      message: inReaderUnits(`${message} ${wayOut}`, units),
      ...(excepted === undefined ? {} : { excepted }),
    };
  });
  return found.sort((one, two) => one.line - two.line || one.column - two.column);
}

function line({ file, line: row, column, rule, level, message, excepted }: Told): string {
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
  const shop = shopOf(values.shop, 'check');
  const memo = new Map<string, unknown>();
  const all: Told[] = [];
  for (const file of positionals) all.push(...(await told(file, shop, units, memo)));
  const stops = all.filter(({ level, excepted }) => level === 'stop' && excepted === undefined);
  if (values.sarif)
    output.out(
      `${JSON.stringify(sarifLog(all, wordsInReaderUnits(rules, units), { name: 'kerf', version: '1' }), null, 2)}\n`,
    );
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
