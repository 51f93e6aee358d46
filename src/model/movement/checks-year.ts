import type { CheckSet, CheckValue, Citation } from '../evidence/index.ts';
import { changeByShrinkage, usualShrinkageStart } from './formulas.ts';

const paper: Citation = { source: 'hwang-2022', locator: 'Table 4', seen: 'source-text' };

/** Radial swelling of the slab's lumber from ovendry to 16.0 % at balance, as a fraction of the ovendry width. */
const swelling = 0.0209;
const swellingTo = 16;

/**
 * Shrinkage from the start of shrinkage to ovendry that gives the lumber's swelling by Eq. 13-3, % of the green width.
 * The swelling is a straight line through 0 and its one point, so the whole is to it as 30 is to 16.
 */
function lumberShrinkage(): number {
  const whole = (swelling * usualShrinkageStart) / swellingTo;
  return (100 * whole) / (1 + whole);
}

/** Strain of free lumber between two moisture contents at balance, % of its width at the first. */
function freeStrain(from: number, to: number): number {
  return 100 * changeByShrinkage(1, lumberShrinkage(), from, to);
}

const spans: readonly (readonly [id: string, when: string, from: number, to: number, measured: number])[] = [
  ['whole-year', 'the whole 385 days', 8.9, 15.3, 0.53],
  ['before-concrete', 'before the concrete was cast', 8.9, 13.7, 0.33],
  ['after-concrete', 'after the concrete was cast', 11.5, 15.3, 0.15],
];

/** A year in which somebody measured both the air and the wood, beside what a board at balance would do. */
export const measuredYear: CheckSet = {
  id: 'movement-measured-year',
  title: 'A measured year: a slab of nailed boards outdoors under cover, against boards at balance with the air',
  kind: 'comparison',
  about:
    'The one record of about a year that we could read with numbers: softwood boards and plywood nailed edge to edge, under concrete from the second half on. The moisture content is that at balance with the air inside the slab, the strain is across the width, which is radial. Ours is Eq. 13-3 for free boards with the swelling that the paper quotes for the lumber (2.09 % from ovendry to 16.0 %). The slab moved about two thirds as far over the year, half as far before the concrete was cast, and a third as far under it: thick nailed wood lags behind the air and holds itself, so a year at balance overstates what such a thing does. A free board of 20 mm lags less; the answers here take nothing off.',
  values: [
    ...spans.map(
      ([id, when, from, to, measured]): CheckValue => ({
        id,
        what: `strain across the slab in ${when}, from ${from} to ${to} % at balance: as measured; ours for free boards`,
        published: measured,
        ours: () => freeStrain(from, to),
        unit: '%',
        tolerance: 0.005,
        reason: 'Half of the last printed digit. A nailed slab is no free board: the difference is what is shown.',
        citation: paper,
      }),
    ),
    {
      id: 'their-calculation',
      what: 'strain for 1 % of moisture content: the paper’s own calculation from the shrinkage of boards and plywood; ours for the boards alone',
      published: 0.136,
      ours: () => freeStrain(8.9, 15.3) / (15.3 - 8.9),
      unit: '%',
      tolerance: 0.01,
      reason: 'The plywood is in theirs and not in ours.',
      citation: paper,
    },
  ],
};
