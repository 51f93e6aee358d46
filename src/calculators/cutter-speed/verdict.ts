import type { Verdict } from '../../model/evidence/index.ts';
import { amount, listed } from '../../model/quantity/index.ts';
import type { Bearing, SpeedCeiling, TemplateCutPlan } from '../../model/stock/index.ts';
import { turnsWords } from './figures.ts';

/** A routing cut as it was asked, with its plan: mm. */
export interface AskedCut {
  plan: TemplateCutPlan;
  bearing: Bearing;
  cuttingLength: number;
  stock: number;
  template: number;
  contact: number;
  depthOfPass: number;
  /** Whether the depth of a pass was given, not taken as usual. */
  depthAsked: boolean;
}

const mm = (value: number, digits = 4) => amount(value, 'mm', digits);

/** Depths in a row: each, where they are few; and why, where one is deeper than is usual. */
function depthWords({ plan: { passes }, bearing, depthOfPass }: AskedCut): string {
  if (bearing === 'tip' && (passes[0] ?? 0) > depthOfPass)
    return `one pass, ${mm(passes[0] as number)} deep, as a bearing at the tip asks: saw close to the line first`;
  if (passes.length === 1) return `one pass, ${mm(passes[0] as number)} deep`;
  if (passes.length > 5) return `${passes.length} passes, none deeper than ${mm(Math.max(...passes))}`;
  return `${passes.length} passes: ${listed(passes.map((depth) => mm(depth)))}`;
}

/** The ways to a cut at which the bearing rides on the template. */
export function waysOut({ plan, bearing, contact }: AskedCut): string {
  if (bearing === 'tip') return `Take a template of at least ${mm(contact)}.`;
  const ways = [
    plan.shorterEdge === undefined ? '' : `an edge of at most ${mm(plan.shorterEdge)}`,
    plan.thickerTemplate === undefined ? '' : `a template at least ${mm(plan.thickerTemplate)} thick`,
    'a bearing at the tip',
  ].filter(Boolean);
  return ways.length === 1 ? `Take ${ways[0]}.` : `Take ${ways.slice(0, -1).join(', ')} or ${ways.at(-1)}.`;
}

/** Why no pass can be made as asked, or undefined where one can. */
function hindrance(cut: AskedCut): string | undefined {
  const { plan, bearing, stock, template, contact } = cut;
  if (plan.passes.length > 0) return undefined;
  if (template < contact) {
    return `Do not rout this: the template, ${mm(template)}, is thinner than the ${mm(contact)} that the bearing must touch. ${waysOut(cut)}`;
  }
  if (bearing === 'tip') {
    return `Do not rout this: the edge is ${mm(plan.shortBy)} too short to reach past the stock, and the shank would rub on what it leaves. Take a longer edge.`;
  }
  const least = plan.leastFirstPass ?? 0;
  return `${waysOut(cut)} As it is, the bearing meets the template only with the edge ${mm(least - stock)} out under the stock.`;
}

/** Whether the speed that the router is set to is more than either text allows, more than the lower one, or neither. */
function speedWords(turns: number | undefined, ceiling: SpeedCeiling): { level: Verdict['level']; words: string } {
  if (turns !== undefined && turns > ceiling.most) {
    return {
      level: 'stop',
      words: `Slow the router down first: ${turnsWords(turns)} are too fast for this bit, which runs at ${turnsWords(ceiling.turns)} at most`,
    };
  }
  if (turns !== undefined && turns > ceiling.turns) {
    return {
      level: 'care',
      words: `Slow down to ${turnsWords(ceiling.turns)}, the lower of two usual limits for this size`,
    };
  }
  return {
    level: 'good',
    words: `Run the bit at no more than ${turnsWords(ceiling.turns)}, or the speed marked on it if that is lower`,
  };
}

/** What the answer comes to, for a bit and, where it was asked, its cut along a template. */
export function routingVerdict(
  turns: number | undefined,
  ceiling: SpeedCeiling | undefined,
  cut: AskedCut | undefined,
): Verdict {
  const stopped = cut && hindrance(cut);
  if (stopped) {
    const speed = ceiling && turns !== undefined ? speedWords(turns, ceiling) : undefined;
    // A bit that may shed a piece is worse than a cut that goes wrong.
    const said =
      speed?.level === 'stop'
        ? [`${speed.words}.`, stopped]
        : [stopped, speed?.level === 'care' ? `${speed.words}.` : ''];
    return { level: 'stop', text: said.filter(Boolean).join(' ') };
  }
  if (!ceiling) {
    return {
      level: 'unknown',
      text: 'Only the maker of a bit this large can say how fast it may turn: no usual speed is known. Do not run it without that figure.',
    };
  }
  const speed = speedWords(turns, ceiling);
  if (!cut || speed.level === 'stop') return { level: speed.level, text: `${speed.words}.` };
  const { plan } = cut;
  const passes = `; ${depthWords(cut)}`;
  if (!plan.steadyFirstPass) {
    return {
      level: 'care',
      text: `Saw close to the line, then begin with a pass ${mm(plan.leastFirstPass ?? 0)} deep: at ${mm(cut.depthOfPass)} the bearing would run above the template. ${speed.words}${passes}.`,
    };
  }
  if (!plan.longEnough && cut.bearing === 'shank') {
    return {
      level: 'care',
      text: `${speed.words}${passes}, the last with the bearing on the edge already cut: the edge is ${mm(plan.shortBy)} too short to reach from the template.`,
    };
  }
  return { level: speed.level, text: `${speed.words}${passes}.` };
}
