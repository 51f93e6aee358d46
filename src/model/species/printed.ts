/** A value as a document prints it, as numbers. */
export interface PrintedValue {
  value: number;
  low?: number;
  high?: number;
  band?: string;
  note?: string;
}

/** Round away the noise of binary arithmetic: six significant digits. */
export function tidy(value: number): number {
  return Number(value.toPrecision(6));
}

const single = /^(\d+(?:\.\d+)?)$/;
const about = /^(\d+(?:\.\d+)?); printed as about$/;
const range = /^(\d+(?:\.\d+)?)(?: to |-)(\d+(?:\.\d+)?)$/;
const rangeAndMore = /^(\d+(?:\.\d+)?) to (\d+(?:\.\d+)?); (.+)$/;
const rangeWithAverage =
  /^(\d+(?:\.\d+)?) to (\d+(?:\.\d+)?), (?:averaging|commonly) (?:about )?(\d+(?:\.\d+)?)(?: in the trade)?$/;
const byRegion = /^(\d+(?:\.\d+)?) ([A-Z][A-Za-z ]+); (\d+(?:\.\d+)?) ([A-Z][A-Za-z ]+)$/;
const anotherReport = /^(\d+(?:\.\d+)?); (another report .+)$/;
const withAside = /^(\d+(?:\.\d+)?) \((.+)\)$/;

function between(first: number, second: number, band: string): PrintedValue {
  return { value: tidy((first + second) / 2), low: Math.min(first, second), high: Math.max(first, second), band };
}

function sentence(words: string): string {
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
}

/**
 * Read a value as printed: a number, a range, a number called about, two regions, or a number with an aside.
 *
 * @param printed the text of the cell
 * @returns its number, with the band that a range gives, or null where the text is words
 */
export function readPrinted(printed: string): PrintedValue | null {
  let match = single.exec(printed);
  if (match) return { value: Number(match[1]) };
  match = about.exec(printed);
  if (match) return { value: Number(match[1]), note: 'Printed as about.' };
  match = range.exec(printed);
  if (match) return between(Number(match[1]), Number(match[2]), 'A range is printed; the middle is shown.');
  match = rangeWithAverage.exec(printed);
  if (match) {
    const [low, high, average] = [Number(match[1]), Number(match[2]), Number(match[3])];
    return { value: average, low, high, band: 'A range is printed, with this average.' };
  }
  match = rangeAndMore.exec(printed);
  if (match) {
    const numbers = between(Number(match[1]), Number(match[2]), 'A range is printed; the middle is shown.');
    return { ...numbers, note: sentence(match[3] ?? '') };
  }
  match = byRegion.exec(printed);
  if (match) {
    const band = `Printed by region, ${match[2]} ${match[1]} and ${match[4]} ${match[3]}; the middle is shown.`;
    return between(Number(match[1]), Number(match[3]), band);
  }
  match = anotherReport.exec(printed) ?? withAside.exec(printed);
  if (match) return { value: Number(match[1]), note: sentence(match[2] ?? '') };
  return null;
}
