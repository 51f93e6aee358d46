import type { Verdict } from '../../model/evidence/index.ts';
import { amount } from '../../model/quantity/index.ts';
import { hardly } from './cautions.ts';
import { swingLeft } from './figures.ts';
import type { Found } from './found.ts';
import type { Widths } from './widths.ts';

/** What the finish does for this board, in a sentence with both swings of its width. */
export function verdictOf(found: Found, widths: Widths): Verdict {
  const { finish, both, bare, coated, coating, given } = found;
  const left = swingLeft(found).value;
  const [free, held] = [widths.swing(bare).value, widths.swing(coated).value];
  const name = finish.name.charAt(0).toLowerCase() + finish.name.slice(1);
  const swings = `${amount(free, 'mm', 2)} over the year bare, ${amount(held, 'mm', 2)} with ${name}`;
  if (!both) {
    return {
      level: 'stop',
      text: `Finish both faces alike: with one face bare the board cups, and its width still moves by ${amount(held, 'mm', 2)} over the year (${amount(free, 'mm', 2)} bare).`,
    };
  }
  if (left > hardly) {
    return { level: 'care', text: `Build as if it were bare: ${swings}. This finish hardly slows it.` };
  }
  const known = given.coating !== undefined || (coating !== null && finish.excluding.measured);
  const nearest = known ? '' : ' Reckoned as its nearest kin in the table, not as itself.';
  return {
    level: 'care',
    text: `It keeps ${Math.round(left)} % of the swing: ${swings}, as long as the film is whole on every face, edge and end. Leave room for the bare swing all the same.${nearest}`,
  };
}
