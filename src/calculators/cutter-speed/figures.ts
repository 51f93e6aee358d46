import type { Figure } from '../../model/evidence/index.ts';
import { rimSpeed } from '../../model/stock/index.ts';

/** A speed within a sentence: `18 000 turns a minute`. */
export const turnsWords = (turns: number) =>
  `${Math.round(turns).toLocaleString('en-US').replaceAll(',', ' ')} turns a minute`;

/** A speed in turns a minute. */
export const perMinute = (label: string, value: number, rest: Partial<Figure> = {}): Figure => ({
  label,
  value,
  unit: '/min',
  basis: 'shop-practice',
  digits: 5,
  ...rest,
});

/** The rim speed of a bit (mm) at a number of turns a minute. */
export function rimFigure(label: string, diameter: number, turns: number): Figure {
  return {
    label,
    value: rimSpeed(diameter, turns),
    unit: 'm/s',
    basis: 'derived',
    digits: 3,
    note: `${(rimSpeed(diameter, turns) * (60 / 0.3048)).toFixed(0)} feet a minute.`,
  };
}
