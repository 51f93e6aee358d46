import { convert, formatNumber } from '../../model/quantity/index.ts';

/*
 * Quantities within a sentence. A sentence is the same for every reader, so it names both units: nobody converts by hand.
 */

/** @param mm @returns for example `10 mm (0.39 in)` */
export function lengthInBoth(mm: number, digits = 2): string {
  return `${formatNumber(mm, digits)} mm (${formatNumber(convert(mm, 'mm', '[in_i]'), digits)} in)`;
}

/** @param celsius °C, written to a tenth @returns for example `22 °C (72 °F)` */
export function temperatureInBoth(celsius: number): string {
  const degrees = (value: number, decimals: number) => formatNumber(Number(value.toFixed(decimals)), 4);
  return `${degrees(celsius, 1)} °C (${degrees(convert(celsius, 'Cel', '[degF]'), 0)} °F)`;
}

/** @param kelvin difference of temperatures, K @returns for example `40 °C (72 °F)` */
export function riseInBoth(kelvin: number, digits = 2): string {
  return `${formatNumber(kelvin, digits)} °C (${formatNumber(convert(kelvin, 'K', '[degR]'), digits)} °F)`;
}
