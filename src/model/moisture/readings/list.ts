import { type Amount, findAmounts, readAmount, type TemperatureUnit, withoutSign } from './quantities.ts';
import { cleanLabel, exampleReading, quoted, type RawReading, type RawReadings, type ReadingProblem } from './raw.ts';

const form = `Write a label, a temperature and a humidity, such as ${exampleReading}, one reading a line or with ; between.`;

type Entry = { ok: true; label: string; temperature: Amount; humidity: Amount } | { ok: false; problem: string };

/** Split at a separator that is not inside a label in quotes; quotes count only where a piece starts with them. */
function splitUnquoted(line: string, separator: string): string[] {
  const pieces: string[] = [];
  let piece = '';
  let quoted = false;
  for (const character of line) {
    if (character === '"' && (quoted || piece.trim() === '')) quoted = !quoted;
    else if (character === '"' && piece.endsWith('"') && /^\s*"/.test(piece)) quoted = true;
    if (character === separator && !quoted) {
      pieces.push(piece);
      piece = '';
    } else piece += character;
  }
  pieces.push(piece);
  return pieces;
}

/** Which of some amounts is the temperature and which the humidity: by unit, else the last two, temperature first. */
function assign<A extends Amount>(amounts: readonly A[]): { temperature: A; humidity: A } | { problem: string } {
  const temperatures = amounts.filter(({ unit }) => unit === 'C' || unit === 'F');
  const humidities = amounts.filter(({ unit }) => unit === '%');
  if (temperatures.length > 1 || humidities.length > 1) {
    return { problem: 'it has more than one temperature or more than one humidity' };
  }
  const bare = amounts.filter(({ unit }) => unit === undefined);
  const at = (amount: A | undefined) => (amount === undefined ? -1 : amounts.indexOf(amount));
  const [knownTemperature] = temperatures;
  const [knownHumidity] = humidities;
  const before = (limit: A) => bare.filter((amount) => at(amount) < at(limit)).at(-1);
  const after = (limit: A) => bare.find((amount) => at(amount) > at(limit));
  const temperature =
    knownTemperature ?? (knownHumidity ? (before(knownHumidity) ?? after(knownHumidity)) : bare.at(-2));
  const humidity =
    knownHumidity ?? (knownTemperature ? (after(knownTemperature) ?? before(knownTemperature)) : bare.at(-1));
  if (temperature === undefined) return { problem: 'no temperature was found in it' };
  if (humidity === undefined) return { problem: 'no humidity was found in it' };
  return { temperature, humidity };
}

function cellsOf(text: string): { cells: string[]; tight: boolean } {
  if (text.includes('\t')) return { cells: text.split('\t'), tight: false };
  if (text.includes(';')) return { cells: text.split(';'), tight: false };
  if (/,\s/.test(text)) return { cells: text.split(/,\s+/), tight: false };
  return { cells: text.split(','), tight: true };
}

/** Read cells of which two are amounts, the others a label; undefined where the line is not made of such cells. */
function fromCells(text: string): Entry | undefined {
  const { cells, tight } = cellsOf(text);
  const trimmed = cells.map((cell) => cell.trim());
  while (trimmed.at(-1) === '') trimmed.pop();
  const amounts = trimmed.map(readAmount);
  const found = amounts.filter((amount) => amount !== undefined);
  if (found.length < 2 || trimmed.length < 2) return undefined;
  // In 'Jan,20,5,45' the comma may be a decimal one: better ask than guess.
  const numberAsLabel = found.length === 3 && amounts[0] !== undefined;
  if (tight && found.length > 2 && !numberAsLabel) return { ok: false, problem: 'its commas may be decimal ones' };
  const last = amounts.slice(-2).every((amount) => amount !== undefined);
  if (!last && found.length > 2) return undefined;
  const chosen = assign(last ? found.slice(-2) : found);
  if ('problem' in chosen) return undefined;
  const label = trimmed.filter((_, index) => {
    const amount = amounts[index];
    return amount !== chosen.temperature && amount !== chosen.humidity;
  });
  return { ok: true, label: label.filter((cell) => cell !== '').join(', '), ...chosen };
}

/** Read amounts wherever they stand in a line; what precedes them is the label. */
function fromText(text: string): Entry {
  const chosen = assign(findAmounts(text));
  if ('problem' in chosen) return { ok: false, problem: chosen.problem };
  const [first, second] = [chosen.temperature, chosen.humidity].sort((one, other) => one.start - other.start) as [
    typeof chosen.temperature,
    typeof chosen.temperature,
  ];
  const tidy = (part: string) =>
    part
      .replace(/(?:[\s,;:=-]|(?<![\p{L}])(?:temperature|temp|humidity|rh|at|and)\.?(?=[\s,;:=-]*$))+$/giu, '')
      .replace(/^[\s,;:=-]+/, '');
  return {
    ok: true,
    label: tidy(text.slice(0, first.start)) || tidy(text.slice(second.end)),
    temperature: chosen.temperature,
    humidity: chosen.humidity,
  };
}

const quotedLabel = /^\s*"((?:[^"]|"")*)"\s*[,;\t]\s*(.*)$/;

/** A reading is shorter than this; what is longer is not searched, which could take very long. */
const longest = 300;

function readEntry(text: string): Entry {
  if (text.length > longest) return { ok: false, problem: `it is longer than ${longest} characters` };
  const quoted = quotedLabel.exec(text);
  if (quoted) {
    const rest = quoted[2] as string;
    const entry = fromCells(rest) ?? fromText(rest);
    return entry.ok ? { ...entry, label: (quoted[1] as string).replaceAll('""', '"') } : entry;
  }
  return fromCells(text) ?? fromText(text);
}

/** A line is several readings where each piece between semicolons is one; else they may stand between its cells. */
function entriesOf(line: string): string[] {
  const pieces = splitUnquoted(line, ';').filter((piece) => piece.trim() !== '');
  if (pieces.length === 1 || pieces.every((piece) => readEntry(piece).ok)) return pieces;
  return line.length <= longest && fromCells(line)?.ok ? [line] : pieces;
}

/** Whether a line is made of readings in cells, whatever its labels say: then it is no header of a log. */
export function isTypedLine(line: string): boolean {
  return entriesOf(line).every(
    (piece) => readEntry(piece).ok && fromCells(quotedLabel.exec(piece)?.[2] ?? piece)?.ok === true,
  );
}

/**
 * Read readings typed one a line or with semicolons between: `Jan 20 C 30 %`, `dry, 68 F, 25 %`, `Jan;20,5;45`.
 *
 * @param text with line ends as \n
 */
export function readList(text: string): RawReadings | ReadingProblem {
  const rows: RawReading[] = [];
  for (const [index, line] of text.split('\n').entries()) {
    if (line.trim() === '') continue;
    for (const piece of entriesOf(line)) {
      const entry = readEntry(piece);
      if (!entry.ok) {
        return { problem: `Line ${index + 1}, ${quoted(piece)}, is not a reading: ${entry.problem}`, wayOut: form };
      }
      const { label, temperature, humidity } = entry;
      rows.push({ line: index + 1, label: cleanLabel(label), temperature, humidity });
    }
  }
  if (rows.length === 0) return { problem: 'No readings were given', wayOut: form };
  const bare = rows.some(({ temperature, humidity }) => temperature.unit === undefined && humidity.unit === undefined);
  return { rows, notes: bare ? ['Numbers without a unit were read as temperature, then humidity.'] : [] };
}

/**
 * Typed readings with a unit behind every temperature that has none. Where some row names a unit the bare ones are like it, and the
 * text stays as it is; so does one of which a line cannot be read.
 *
 * @param text with line ends as \n
 */
export function withTemperatureUnit(text: string, unit: TemperatureUnit): string {
  const list = readList(text);
  if ('problem' in list || list.rows.some(({ temperature }) => temperature.unit !== undefined)) return text;
  return text
    .split('\n')
    .map((line) =>
      line.trim() === ''
        ? line
        : entriesOf(line)
            .map((piece) => pieceWithUnit(piece, unit))
            .join(';'),
    )
    .join('\n');
}

/** The reading with a unit behind its temperature: the place where everything else in it still reads the same. */
function pieceWithUnit(piece: string, unit: TemperatureUnit): string {
  const before = readEntry(piece);
  if (!before.ok) return piece;
  const typed = before.temperature.text;
  for (let at = piece.lastIndexOf(typed); at >= 0; at = at === 0 ? -1 : piece.lastIndexOf(typed, at - 1)) {
    const candidate = `${piece.slice(0, at)}${withoutSign(typed)} °${unit}${piece.slice(at + typed.length)}`;
    const after = readEntry(candidate);
    const same =
      after.ok &&
      after.label === before.label &&
      after.temperature.unit === unit &&
      after.temperature.value === before.temperature.value &&
      after.humidity.value === before.humidity.value;
    if (same) return candidate;
  }
  return piece;
}
