import { amount } from '../../model/quantity/index.ts';
import { type BoringSpeed, rimSpeed, type SpeedCeiling, usualBeyond } from '../../model/stock/index.ts';
import type { FigureDeclaration, FigureValue } from '../kit/calculator.ts';
import type { AskedCut } from './verdict.ts';

/** What the figures of a bit and its cut are. */
export const figures = {
  usualTurns: {
    label: 'Usual speed',
    unit: '/min',
    digits: 5,
    help: 'The highest for a router bit; for a hole, the usual one.',
  },
  rim: { label: 'Rim speed', unit: 'm/s', help: 'How fast the outermost edge moves.' },
  passes: { label: 'Passes', unit: '{count}', digits: 4 },
  depthOfPass: { label: 'Depth of one pass', unit: 'mm' },
  leastFirstPass: { label: 'Least first pass with the bearing on the template', unit: 'mm' },
  thickerTemplate: { label: 'Template that keeps the bearing on it', unit: 'mm' },
  shorterEdge: { label: 'Longest edge for this template', unit: 'mm' },
  shortBy: { label: 'Edge too short by', unit: 'mm' },
  rimAtCeiling: { label: 'Rim speed at the usual highest speed', unit: 'm/s', minor: true },
} as const satisfies Record<string, FigureDeclaration>;

type Figures = Partial<Record<keyof typeof figures, FigureValue>>;

/** A speed within a sentence: `18 000 turns a minute`. */
export const turnsWords = (turns: number) =>
  `${Math.round(turns).toLocaleString('en-US').replaceAll(',', ' ')} turns a minute`;

/** The rim speed of a bit (mm) at a number of turns a minute. */
function rimValue(diameter: number, turns: number): FigureValue {
  const value = rimSpeed(diameter, turns);
  return { value, basis: 'derived', note: `${(value * (60 / 0.3048)).toFixed(0)} feet a minute.` };
}

/** The speeds of a router bit: as it is set, and the usual highest one for its size. */
export function speedFigures(diameter: number, turns: number | undefined, ceiling: SpeedCeiling | undefined): Figures {
  return {
    ...(turns === undefined ? {} : { rim: rimValue(diameter, turns) }),
    ...(ceiling
      ? {
          usualTurns: {
            value: ceiling.turns,
            low: ceiling.turns,
            high: ceiling.most,
            band: 'What two general how-to texts give for this size.',
            basis: 'shop-practice',
            note: `The highest for bits up to ${amount(ceiling.upTo, 'mm')} across. The mark on the tool wins.`,
          },
          rimAtCeiling: rimValue(diameter, ceiling.turns),
        }
      : {}),
  };
}

/**
 * The usual speed for a hole, and the rim speed at the speed that is set, or at the usual one.
 *
 * @param wood what the speed was picked for, in words
 */
export function boringFigures(
  diameter: number,
  turns: number | undefined,
  { turns: usual, low, high }: BoringSpeed,
  wood: string,
): Figures {
  return {
    usualTurns: {
      value: usual,
      low,
      high,
      band: 'What is as usual: charts differ by half either way.',
      basis: 'shop-practice',
      note: wood,
    },
    rim: rimValue(diameter, turns ?? usual),
  };
}

/** The depth of one pass: as it was asked, or as is usual. */
export const depthFigure = (depth: number, asked: boolean, not?: string): FigureValue => ({
  value: depth,
  basis: 'shop-practice',
  ...(not || !asked ? { note: [asked ? '' : 'The usual one.', not].filter(Boolean).join(' ') } : {}),
});

/** Passes and depths of a cut that may be made. */
export function passFigures({ plan, bearing, depthOfPass, depthAsked }: AskedCut): Figures {
  const { passes } = plan;
  if (passes.length === 0) return {};
  const deeper = Math.max(...passes) > depthOfPass + 1e-9;
  const whyDeeper =
    bearing === 'tip'
      ? 'Not kept here: with the bearing at the tip the edge cuts all of the stock at once.'
      : 'Not kept by the first pass here: a shallower one would lift the bearing off the template.';
  const depths = passes.slice(0, 8).map((depth) => amount(depth, 'mm'));
  return {
    passes: {
      value: passes.length,
      basis: 'shop-practice',
      note: `${depths.join(', ')}${passes.length > 8 ? ' …' : ''} deep.`,
    },
    depthOfPass: depthFigure(depthOfPass, depthAsked, deeper ? whyDeeper : undefined),
  };
}

/** What a cut asks of edge and template. */
export function reachFigures({ plan, bearing }: AskedCut): Figures {
  const derived = (value: number, note?: string): FigureValue => ({
    value,
    basis: 'derived',
    ...(note ? { note } : {}),
  });
  return {
    ...(plan.shortBy > 0
      ? { shortBy: derived(plan.shortBy, `For the stock and ${amount(usualBeyond, 'mm')} past it in one setting.`) }
      : {}),
    ...(bearing === 'shank' && plan.leastFirstPass !== undefined
      ? { leastFirstPass: derived(plan.leastFirstPass) }
      : {}),
    ...(plan.thickerTemplate === undefined
      ? {}
      : {
          thickerTemplate: derived(
            plan.thickerTemplate,
            bearing === 'shank' ? 'For a first pass of the usual depth.' : undefined,
          ),
        }),
    ...(plan.shorterEdge === undefined
      ? {}
      : {
          shorterEdge: derived(plan.shorterEdge, 'For a first pass of the usual depth, the bearing by the shank.'),
        }),
  };
}
