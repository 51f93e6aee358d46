import type { Caution, Verdict } from '../../model/evidence/index.ts';
import { amount } from '../../model/quantity/index.ts';
import type { Coat } from './coat.ts';

export const mm = (value: number) => amount(value, 'mm', 2);
/** As a scale shows it, whatever the reader measures boards in. */
export const grams = (value: number) => amount(value, 'g', value >= 1000 ? 4 : 3, true);

/** What a coat comes to. */
export function verdictOf(
  wanted: number | undefined,
  mass: number | undefined,
  { rest, least, unsure }: Coat,
  cautions: readonly Caution[],
): Verdict {
  if (wanted === undefined) {
    return {
      level: 'care',
      text: `Without a dam a coat comes to rest at about ${mm(rest)}: what is poured beyond that runs over the edge.`,
    };
  }
  const said = `One coat of ${mm(wanted)}${mass === undefined ? '' : `: ${grams(mass)}`}`;
  if (wanted > rest) {
    return {
      level: 'care',
      text: `${said}, with a dam higher than that: without one it comes to rest at about ${mm(rest)}.`,
    };
  }
  if (unsure && wanted > least) {
    return {
      level: 'care',
      text: `${said}. On some faces it stands without a dam, off others it runs: try it on an offcut.`,
    };
  }
  return {
    level: cautions.some(({ level }) => level !== 'note') ? 'care' : 'good',
    text: `${said}. It stands without a dam.`,
  };
}
