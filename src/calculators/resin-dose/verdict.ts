import type { Caution, Verdict } from '../../model/evidence/index.ts';
import { amount, ofEach } from '../../model/quantity/index.ts';
import { wrongForDepth } from '../../model/resin/pour-plan.ts';
import { marked, markedUnit } from './measured.ts';
import type { DosePlan, NoDose } from './plan.ts';

const small = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve'];

/** A count in words up to twelve. */
export const countWords = (count: number): string => small[count] ?? String(count);

/** Grams of resin in a sentence, as a scale shows them, whatever the reader measures boards in. */
export const grams = (value: number): string => amount(value, 'g', value >= 1000 ? 4 : 3, true);

/**
 * The mix in its parts, as a scale shows them. Where they are weighed in grams: what all cups of the mixing sheet come to. Else both to the step that
 * the smaller deserves, and the sum is that of what is shown, so that nobody who adds them up finds another.
 */
function inParts(plan: DosePlan): string {
  const { parts, measured } = plan;
  const isWeighed = plan.mix.by === 'weight' && markedUnit(plan) === 'g';
  const masses = isWeighed ? [measured.a, measured.b] : [parts.massA, parts.massB];
  const decimals = isWeighed
    ? (marked(plan, 0).split('.')[1]?.length ?? 0)
    : Math.min(2, Math.max(0, 2 - Math.floor(Math.log10(Math.min(parts.massA, parts.massB)))));
  const [a, b] = masses.map((mass) => Math.round(mass * 10 ** decimals)) as [number, number];
  const shown = (steps: number) => amount(steps / 10 ** decimals, 'g', String(steps).length, true);
  return `${shown(a + b)}: ${shown(a)} of A and ${shown(b)} of B`;
}

/** What a dose comes to: the parts and cups first, then what must be minded most. */
export function verdictOf(plan: DosePlan, own: readonly Caution[]): Verdict {
  const { cups, layers } = plan;
  const inLayers =
    layers.count > 1 && layers.thickness !== undefined
      ? `, in ${countWords(layers.count)} layers of ${ofEach(layers.count * layers.thickness, layers.count, layers.allowed)}`
      : '';
  const wrong = wrongForDepth(layers.byDepth ?? 1, plan.given.resin);
  const said = `Mix ${inParts(plan)}, in ${countWords(cups.length)} ${cups.length === 1 ? 'cup' : 'cups'}${inLayers}.${wrong ? ` ${wrong}` : ''}`;
  const [first] = [...own]
    .sort((a, b) => gravity(a) - gravity(b))
    .filter(({ level, text }) => level !== 'note' && text !== wrong);
  if (first) return { level: 'care', text: `${said} ${first.text}` };
  return { level: wrong ? 'care' : 'good', text: said };
}

const gravity = ({ level }: Caution): number => ['danger', 'warning', 'note'].indexOf(level);

/** Why there is no dose. */
export function verdictOfNone({ hindrances: [first] }: NoDose): Verdict {
  return { level: first.level, text: first.text };
}
