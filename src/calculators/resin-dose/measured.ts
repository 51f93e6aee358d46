import { convert, unitLabel } from '../../model/quantity/index.ts';
import type { DosePlan } from './plan.ts';

/** Whether so many of a unit are a number that somebody would print on a scale: no more than three decimals. */
function isRound(value: number): boolean {
  return Math.abs(value * 1000 - Math.round(value * 1000)) < 1e-6 * Math.max(1, value * 1000);
}

/** UCUM code of the unit that the scale or the cups are marked in: their division is a round number in it. */
export function markedUnit({ mix, division }: DosePlan): string {
  const [metric, inch] = mix.by === 'weight' ? (['g', '[oz_av]'] as const) : (['mL', '[foz_us]'] as const);
  return !isRound(division) && isRound(convert(division, metric, inch)) ? inch : metric;
}

/** An amount in the marked unit, with the decimals of its division: `140.2` for 0.1 g. */
export function marked(plan: DosePlan, value: number): string {
  const unit = markedUnit(plan);
  const from = plan.mix.by === 'weight' ? 'g' : 'mL';
  const division = Number(convert(plan.division, from, unit).toPrecision(6));
  const decimals =
    [0, 1, 2, 3].find((count) => Math.abs(division * 10 ** count - Math.round(division * 10 ** count)) < 1e-6) ?? 3;
  return convert(value, from, unit).toFixed(decimals);
}

/** Label of the marked unit. */
export function markedLabel(plan: DosePlan): string {
  return unitLabel(markedUnit(plan));
}
