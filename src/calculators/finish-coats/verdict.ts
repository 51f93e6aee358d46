import type { Verdict } from '../../model/evidence/index.ts';
import type { CoatsPlan, Finish } from '../../model/finish/index.ts';
import { amount } from '../../model/quantity/index.ts';
import type { Inputs } from './inputs.ts';

const words = ['No', 'One', 'Two', 'Three', 'Four', 'Five', 'Six', 'Seven', 'Eight', 'Nine', 'Ten', 'Eleven', 'Twelve'];

/**
 * How many coats, how much of it, and when the boards may be used, in a sentence. Only a listed finish without danger of its own, on a board
 * that is said to hold no resin, has nothing to mind.
 */
export function verdictOf(finish: Finish, plan: CoatsPlan, inlaid: Inputs['resin']): Verdict {
  const count = plan.coats.length;
  const cures = finish.figures.fullCure !== null;
  const wait = amount(plan.use.value, 's', 2);
  const what = cures ? 'food and water' : 'use';
  // A time of the finish alone must not read as leave to use a board whose resin may still be uncured.
  const use =
    inlaid === 'inlay'
      ? `${what} not before the resin’s own full cure, nor within ${wait} of the first coat`
      : `${what} after ${wait}`;
  const text = `${words[count] ?? count} ${count === 1 ? 'coat' : 'coats'} of ${finish.name.charAt(0).toLowerCase()}${finish.name.slice(1)}: ${amount(plan.volume.value, 'mL', 2)} to have at hand, handled after ${amount(plan.light, 's', 2)}, ${use}.`;
  const dangers =
    finish.rags.hazard === 'self-heating' && finish.id !== 'film-epoxy' ? ' Cloths into water, lid on.' : '';
  const plain =
    inlaid === 'none' && plan.usualCoats && finish.food.level === 'listed' && finish.rags.hazard === 'none-known';
  return { level: plain ? 'good' : 'care', text: text + dangers };
}
