import { expect } from 'vitest';
import { finishById } from '../../src/model/finish/index.ts';
import { hold } from './statements.ts';

// Numbers in the pages on finishes, worked out again.

const hour = 3600;
const day = 24 * hour;
const week = 7 * day;

/** The ends of what is usual for a time of a finish, in a unit: `8 to 24`. */
function span(id: string, name: 'recoat' | 'fullCure', unit: number): string {
  const figure = finishById(id)?.figures[name];
  if (figure?.low === undefined || figure.high === undefined) throw new Error(`${id} has no ${name} from to`);
  return `${figure.low / unit} to ${figure.high / unit}`;
}

hold({
  'oiling-and-waxing': [
    [
      'waits of mineral oil',
      () => {
        expect(span('oil-wax-paste', 'recoat', hour)).toBe(span('mineral-oil', 'recoat', hour));
        expect(finishById('mineral-oil')?.figures.fullCure).toBeNull();
        return `| mineral oil, with or without wax | ${span('mineral-oil', 'recoat', hour)} hours | when it is wiped dry |`;
      },
    ],
    [
      'waits of oil with driers',
      () =>
        `| drying oil with driers | ${span('oil-with-driers', 'recoat', hour)} hours | as the can says; ${span('oil-with-driers', 'fullCure', week)} weeks (common practice) |`,
    ],
    [
      'waits of raw oils',
      () => {
        const waits = ['linseed-oil', 'tung-oil', 'walnut-oil'].map(
          (id) => `${span(id, 'recoat', day)} days | ${span(id, 'fullCure', week)} weeks`,
        );
        expect(new Set(waits).size).toBe(1);
        return `| raw linseed, tung or walnut | ${waits[0]} (common practice) |`;
      },
    ],
    [
      'waits of hard-wax oil',
      () =>
        `| hard-wax oil | as the can says, often ${span('hard-wax-oil', 'recoat', hour)} hours | as the can says, often ${span('hard-wax-oil', 'fullCure', day)} days |`,
    ],
  ],
  'oily-rags': [
    [
      'whose rags heat themselves',
      () => {
        const hazard = (id: string) => finishById(id)?.rags.hazard;
        expect(
          ['linseed-oil', 'tung-oil', 'walnut-oil', 'oil-with-driers', 'varnish', 'hard-wax-oil'].map(hazard),
        ).toEqual(Array(6).fill('self-heating'));
        expect(hazard('mineral-oil')).toBe('none-known');
        return '| linseed, tung, walnut oil; oil with driers; Danish-type oil and varnish mixtures | **yes** |';
      },
    ],
    [
      'shellac’s are a matter of vapour',
      () => {
        expect(finishById('shellac')?.rags.hazard).toBe('vapour');
        return '| shellac in alcohol | not by itself, but [its vapour burns](./solvents.mdx) |';
      },
    ],
  ],
});
