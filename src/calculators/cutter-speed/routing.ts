import { cautionById } from '../../model/evidence/cautions.ts';
import {
  answer,
  type Caution,
  cite,
  type EvidenceNote,
  type Figure,
  type Outcome,
  type Result,
  refuse,
} from '../../model/evidence/index.ts';
import { amount } from '../../model/quantity/index.ts';
import {
  cutterCautions,
  rimSpeed,
  routerCeiling,
  routerCeilings,
  templateCut,
  usualBeyond,
  usualContact,
  usualDepthOfPass,
} from '../../model/stock/index.ts';
import { perMinute, rimFigure, turnsWords } from './figures.ts';
import type { Inputs } from './inputs.ts';
import { type AskedCut, cutCautions, routingVerdict } from './verdict.ts';

/** What is said of every router: what it throws, its noise and its dust. */
const standing = ['template-routing', 'noise', 'wood-dust'].flatMap((id) => cautionById(id) ?? []);

/** Speed, passes and reach of a router bit. */
export function routingAnswer(given: Inputs): Outcome<Result> {
  const { diameter, turns, cuttingLength, bearing = 'shank', stock, template } = given;
  const sizes = { cuttingLength, stock, template };
  const missing = (Object.keys(sizes) as (keyof typeof sizes)[]).filter((name) => sizes[name] === undefined);
  if (missing.length > 0 && missing.length < 3) {
    return refuse(
      missing[0] as string,
      'To judge the cut the cutting length, the stock and the template are all needed, and one is missing',
      'Give all three, or leave all three empty.',
    );
  }
  const ceiling = routerCeiling(diameter);
  const depthOfPass = given.depthOfPass ?? usualDepthOfPass(diameter);
  const cut: AskedCut | undefined =
    cuttingLength !== undefined && stock !== undefined && template !== undefined
      ? {
          plan: templateCut({
            diameter,
            cuttingLength,
            bearing,
            stock,
            template,
            contact: usualContact,
            beyond: usualBeyond,
            depthOfPass,
          }),
          bearing,
          cuttingLength,
          stock,
          template,
          contact: usualContact,
          depthOfPass,
        }
      : undefined;
  const verdict = routingVerdict(turns, ceiling, cut);
  const depthLabel = given.depthOfPass === undefined ? 'Usual depth of one pass' : 'Depth of one pass';
  const evidence: EvidenceNote[] = [
    cite(rimSpeed, 'Gives the rim speed.'),
    {
      text: 'Limits by diameter are common practice: two general texts give them and differ; the lower counts here.',
      basis: 'shop-practice',
    },
    {
      text: `Depth of one pass: half the diameter, and at most ${amount(25.4 / 4, 'mm')}, unless given.`,
      basis: 'shop-practice',
    },
    ...(cut
      ? [
          {
            text: `The bearing must touch at least ${amount(usualContact, 'mm')} of template, and the edge reach ${amount(usualBeyond, 'mm')} past the stock.`,
            basis: 'shop-practice' as const,
          },
        ]
      : []),
  ];
  return answer({
    verdict,
    figures: {
      ...speedFigures(diameter, turns),
      ...(cut
        ? // What nobody can vouch for the speed of is not to be cut with.
          cutFigures(cut, verdict.level !== 'unknown', depthLabel)
        : verdict.level === 'unknown'
          ? {}
          : { depthOfPass: { label: depthLabel, value: depthOfPass, unit: 'mm', basis: 'shop-practice' } }),
    },
    cautions: [...speedCautions(diameter, turns), ...(cut ? cutCautions(cut) : []), ...cutterCautions, ...standing],
    evidence,
  });
}

function speedFigures(diameter: number, turns: number | undefined): Record<string, Figure> {
  const ceiling = routerCeiling(diameter);
  return {
    ...(turns === undefined ? {} : { rim: rimFigure('Rim speed', diameter, turns) }),
    ...(ceiling
      ? {
          usualTurns: perMinute('Usual highest speed', ceiling.turns, {
            low: ceiling.turns,
            high: ceiling.most,
            band: 'What two general how-to texts give for this size.',
            note: `For bits up to ${amount(ceiling.upTo, 'mm')} across. The mark on the tool wins.`,
          }),
          rimAtCeiling: rimFigure('Rim speed at that limit', diameter, ceiling.turns),
        }
      : {}),
  };
}

function speedCautions(diameter: number, turns: number | undefined): Caution[] {
  const ceiling = routerCeiling(diameter);
  if (!ceiling) {
    return [
      {
        id: 'no-usual-ceiling',
        level: 'danger',
        text: 'Do not run this bit before you know from its maker how fast it may turn.',
        why: `It is larger than the ${amount(routerCeilings.at(-1)?.upTo ?? 0, 'mm')} up to which common practice names a speed.`,
        own: true,
        basis: 'shop-practice',
      },
    ];
  }
  if (turns === undefined || turns <= ceiling.turns) return [];
  return [
    {
      id: 'too-fast',
      level: turns > ceiling.most ? 'danger' : 'warning',
      text: `Slow the router down to ${turnsWords(ceiling.turns)} before it is switched on.`,
      why: `${turnsWords(turns)} are more than ${turns > ceiling.most ? 'either text allows' : 'the lower of two texts allows'} for a bit of this size. An edge that turns too fast can shed a piece.`,
      own: true,
      basis: 'shop-practice',
    },
  ];
}

/**
 * @param cuttable false where no pass may be named
 * @param depthLabel whether the depth of a pass is the usual one or the one that was asked
 */
function cutFigures(
  { plan, bearing, depthOfPass }: AskedCut,
  cuttable: boolean,
  depthLabel: string,
): Record<string, Figure> {
  const count = plan.passes.length;
  const deeper = Math.max(0, ...plan.passes) > depthOfPass + 1e-9;
  const whyDeeper =
    bearing === 'tip'
      ? 'Not kept here: with the bearing at the tip the edge cuts all of the stock at once.'
      : 'Not kept by the first pass here: a shallower one would lift the bearing off the template.';
  const length = (label: string, value: number, note?: string, basis: Figure['basis'] = 'derived'): Figure => ({
    label,
    value,
    unit: 'mm',
    basis,
    ...(note ? { note } : {}),
  });
  return {
    ...(count > 0 && cuttable
      ? {
          passes: {
            label: 'Passes',
            value: count,
            unit: '1',
            basis: 'shop-practice',
            digits: 4,
            note: `${plan.passes
              .slice(0, 8)
              .map((depth) => amount(depth, 'mm'))
              .join(', ')}${count > 8 ? ' …' : ''} deep.`,
          },
          depthOfPass: length(depthLabel, depthOfPass, deeper ? whyDeeper : undefined, 'shop-practice'),
        }
      : {}),
    ...(plan.shortBy > 0
      ? {
          shortBy: length(
            'Edge too short by',
            plan.shortBy,
            `For the stock and ${amount(usualBeyond, 'mm')} past it in one setting.`,
          ),
        }
      : {}),
    ...(bearing === 'shank' && plan.leastFirstPass !== undefined
      ? { leastFirstPass: length('Least first pass with the bearing on the template', plan.leastFirstPass) }
      : {}),
    ...(plan.thickerTemplate === undefined
      ? {}
      : {
          thickerTemplate: length(
            'Template that keeps the bearing on it',
            plan.thickerTemplate,
            bearing === 'shank' ? 'For a first pass of the usual depth.' : undefined,
          ),
        }),
    ...(plan.shorterEdge === undefined
      ? {}
      : {
          shorterEdge: length(
            'Longest edge for this template',
            plan.shorterEdge,
            'For a first pass of the usual depth, the bearing by the shank.',
          ),
        }),
  };
}
