import { defaultUnits, formatQuantity, type ReaderUnits } from '../../model/quantity/index.ts';

/**
 * Steps of an inch in which a length of the text is written: those that the reader asks for, as in every figure of the site, so that one length
 * reads alike in a sentence and in what is quoted of a method. What is smaller than an eighth deserves finer ones.
 */
function stepsFor(mm: number, asked: ReaderUnits['inches']): ReaderUnits['inches'] {
  if (mm < 0.8 || asked === 'decimal') return 'decimal';
  return mm < 3.2 ? 'sixty-fourths' : asked;
}

/** A small length keeps its fine steps; any other is written as a figure of the site would write it. */
function digitsFor(mm: number): { digits?: number } {
  if (mm < 0.8) return { digits: 1 };
  return mm < 3.2 ? { digits: 6 } : {};
}

/** The ends of a range are round numbers in mm and are so in inches: whole ones, halves, or eighths where they are small. mm. */
function rounded(mm: number): number {
  const step = mm < 25.4 ? 0 : mm < 100 ? 25.4 / 8 : mm < 250 ? 25.4 / 2 : 25.4;
  return step === 0 ? mm : Math.round(mm / step) * step;
}

/**
 * Lengths in inches, as they stand behind the same lengths in mm.
 *
 * @param text lengths in mm as a sentence writes them, such as `300 to 400 mm`
 * @param asked how the reader wants inches written
 * @returns for example `12 to 16 in`
 */
export function inInches(text: string, asked: ReaderUnits['inches'] = defaultUnits.inches): string {
  const parts = text.replace(/ mm$/, '').split(/( to | × )/);
  const range = parts.includes(' to ');
  const written = parts.map((part) => {
    if (!/\d/.test(part)) return part;
    const said = Number(part.replaceAll(',', ''));
    const mm = range ? rounded(said) : said;
    return formatQuantity(mm, 'mm', { system: 'inch', inches: stepsFor(mm, asked) }, digitsFor(mm)).replace(/ in$/, '');
  });
  return `${written.join('')} in`;
}

/**
 * Temperatures in degrees Fahrenheit, whole ones, as they stand behind the same in °C.
 *
 * @param text temperatures in °C as a sentence writes them, such as `35 to 50 °C`
 * @returns for example `95 to 122 °F`
 */
export const inFahrenheit = (text: string): string =>
  text
    .replace(/−?\d+(?:\.\d+)?/g, (said) =>
      String(Math.round(Number(said.replace('−', '-')) * 1.8 + 32)).replace('-', '−'),
    )
    .replace('°C', '°F');
