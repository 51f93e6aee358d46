import { amount } from '../../model/quantity/index.ts';
import { answerFor, atStep, listed, numberTold, stepsBefore, stepsThat, woodsOf } from './kit.ts';
import { rule } from './rule.ts';

/** Widest that a crack is, mm: it fills drop by drop, and the first drops are its seal coat. Common practice. */
export const widestCrack = 3;

/** Resin poured into open pores. */
export const noSealCoat = rule({
  id: 'no-seal-coat',
  level: 'warn',
  title: 'Open pores are sealed before they are poured over',
  looksAt: `Steps that pour, the woods of the case whose pores are open by their records, and whether a seal coat comes before the pour. A crack, no wider than ${amount(widestCrack, 'mm', 1)} by what pour-heat is told, is left out.`,
  why: 'Open pores give their air into the pour for hours, as bubbles, and draw the colour of the resin far into the wood.',
  find(worked) {
    const open = woodsOf(worked).filter(({ thing }) => thing.pores.openness === 'open');
    if (open.length === 0) return [];
    const [first] = stepsThat(worked, 'pour');
    if (!first) return [];
    const heat = answerFor(worked, first, 'pour-heat');
    const width = heat && numberTold(heat, 'width');
    if (width !== undefined && width <= widestCrack) return [];
    const before = stepsBefore(worked, first);
    if (stepsThat(worked, 'seal').some(({ id }) => before.has(id))) return [];
    return [
      {
        ...atStep(first),
        message: `“${first.record.title}” pours into ${listed(open.map(({ thing }) => thing.name.toLowerCase()))}, whose pores are open, without a seal coat.`,
        wayOut:
          'Brush a thin coat of the same resin on floor and walls first (act: seal), and pour while its window is open.',
      },
    ];
  },
});
