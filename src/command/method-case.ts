import { assumedHours } from '../method/plan/index.ts';
import { dayOrTimeFault, type OpeningHours, readOpeningHours } from '../method/schedule/hours.ts';
import type { Shop } from '../method/shop/index.ts';
import { readYaml } from '../model/data/yaml.ts';
import type { ReaderUnits } from '../model/quantity/index.ts';
import { shownProblem, textOf, unitsOf } from './method-files.ts';
import { shopOf } from './shop-file.ts';
import { UsageError } from './usage.ts';

/** The options by which every command says for which case a method is worked out. */
export const caseOptions = {
  shop: { type: 'string' },
  pieces: { type: 'string' },
  people: { type: 'string' },
  start: { type: 'string' },
  end: { type: 'string' },
  calendar: { type: 'string' },
  set: { type: 'string', multiple: true },
  units: { type: 'string' },
} as const;

/** What is typed for them, as a line of the help, and what two of them take. */
export const caseUsage = {
  options: `[--shop shop.yaml] [--pieces n] [--people n] [--start 2027-01-12] [--end 2027-02-12]
            [--calendar hours.yaml] [--set name=value …] [--units metric|inch]`,
  about: `--set        a parameter: --set wood=white-ash, --set outline.length="16 in"
--calendar   a YAML file: { zone, week: { tue: ['18:30-21:00'] }, holidays: [], sessions: [] }; else the shop record's hours
`,
};

interface CaseTexts {
  shop?: string | undefined;
  pieces?: string | undefined;
  people?: string | undefined;
  start?: string | undefined;
  end?: string | undefined;
  calendar?: string | undefined;
  set?: string[] | undefined;
  units?: string | undefined;
}

/** A method and its case, as somebody typed them. */
export interface TypedCase {
  file: string;
  units: ReaderUnits;
  shop?: Shop;
  pieces?: number;
  people?: number;
  start?: string;
  end?: string;
  hours: OpeningHours;
  /** True where nobody told the hours. */
  assumed: boolean;
  set?: Record<string, string>;
}

/** The hours in which somebody is there, and whether anybody told them. */
function hoursOf(
  command: string,
  file: string | undefined,
  shop: Shop | undefined,
): { hours: OpeningHours; assumed: boolean } {
  const zone = shop?.zone ?? Intl.DateTimeFormat().resolvedOptions().timeZone;
  if (file === undefined && !shop?.calendar) return { hours: assumedHours(zone), assumed: true };
  let data: unknown = shop?.calendar;
  if (file !== undefined) {
    const reading = readYaml(textOf(file, command, 'tuesdays.yaml'), file);
    if (reading.problems.length > 0) throw new UsageError(...reading.problems.map((problem) => shownProblem(problem)));
    data = reading.data;
  }
  const read = readOpeningHours({ zone, ...(data as object) });
  if (read.ok) return { hours: read.hours, assumed: false };
  const where = file ?? 'calendar of the shop record';
  throw new UsageError(...read.faults.map(({ field, text }) => `${command}: ${where} ${field}: ${text}`));
}

function settingsOf(command: string, texts: readonly string[]): Record<string, string> {
  return Object.fromEntries(
    texts.map((text) => {
      const at = text.indexOf('=');
      if (at < 1)
        throw new UsageError(
          `${command}: --set ${text} has no value. Write --set name=value, such as --set wood=white-ash.`,
        );
      return [text.slice(0, at).trim(), text.slice(at + 1).trim()];
    }),
  );
}

function countOf(command: string, name: string, text: string | undefined): number | undefined {
  if (text === undefined) return undefined;
  if (!/^\d{1,3}$/.test(text) || Number(text) < 1)
    throw new UsageError(
      `${command}: --${name} ${text} is not a whole number from 1 to 999. Write, for example, --${name} 12.`,
    );
  return Number(text);
}

/** Everybody of the record; one where it names nobody. */
export const peopleOf = (shop: Shop | undefined) =>
  (shop?.people ?? []).reduce((sum, { count }) => sum + count, 0) || 1;

/** A day or a local time of an option, or undefined where it was not given. */
function dayOf(command: string, name: string, text: string | undefined): string | undefined {
  const fault = text === undefined ? undefined : dayOrTimeFault(text);
  if (fault !== undefined) throw new UsageError(`${command}: --${name} ${fault}`);
  return text;
}

/** The one file that a command works out. */
function fileOf(command: string, [file, more]: readonly string[]): string {
  if (file !== undefined && more === undefined) return file;
  throw new UsageError(
    `${command}: name one file${more === undefined ? '' : `, not also ${more}`}, such as kerf ${command} methods/first-tray.yaml.`,
  );
}

/**
 * Read which method is meant and for which case.
 *
 * @param today day that stands where none was typed; undefined where a plan without a day will do
 * @throws UsageError that names the option, what was typed and what it takes
 */
export function caseOf(command: string, files: readonly string[], texts: CaseTexts, today?: string): TypedCase {
  const file = fileOf(command, files);
  const units = unitsOf(texts.units, command);
  const shop = shopOf(texts.shop, command);
  const pieces = countOf(command, 'pieces', texts.pieces);
  const people = countOf(command, 'people', texts.people);
  const start = dayOf(command, 'start', texts.start) ?? today;
  const end = dayOf(command, 'end', texts.end);
  if (start !== undefined && end !== undefined && end.slice(0, 10) < start.slice(0, 10))
    throw new UsageError(
      `${command}: --end ${end} lies before --start ${start}. Give a later end, or an earlier start.`,
    );
  return {
    file,
    units,
    ...(shop ? { shop } : {}),
    ...(pieces === undefined ? {} : { pieces }),
    ...(people === undefined ? {} : { people }),
    ...(start === undefined ? {} : { start }),
    ...(end === undefined ? {} : { end }),
    ...hoursOf(command, texts.calendar, shop),
    ...(texts.set ? { set: settingsOf(command, texts.set) } : {}),
  };
}
