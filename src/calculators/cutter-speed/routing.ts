import {
  answer,
  type Caution,
  type EvidenceNote,
  type Figure,
  type Outcome,
  type Result,
  refuse,
} from '../../model/evidence/index.ts';
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
import { cite } from '../kit/evidence.ts';
import { perMinute, rimFigure } from './figures.ts';
import type { Inputs } from './inputs.ts';

/** Speed, passes and reach of a router bit. */
export function routingAnswer(given: Inputs): Outcome<Result> {
  const { diameter, turns, cuttingLength, bearing = 'shank', stock, template } = given;
  const ceiling = routerCeiling(diameter);
  const depthOfPass = given.depthOfPass ?? usualDepthOfPass(diameter);
  const cautions: Caution[] = [];
  const figures: Record<string, Figure> = {};
  if (turns !== undefined) figures.rim = rimFigure('Rim speed', diameter, turns);
  if (ceiling) {
    figures.usualTurns = perMinute('Usual highest speed', ceiling.turns, {
      low: Math.min(ceiling.turns, ceiling.otherTexts[0]),
      high: Math.max(ceiling.turns, ceiling.otherTexts[1]),
      band: 'What two general how-to texts give for this size.',
      note: `For bits up to ${(ceiling.upTo / 25.4).toFixed(1)} in across. The mark on the tool wins.`,
    });
    figures.rimAtCeiling = rimFigure('Rim speed at that ceiling', diameter, ceiling.turns);
    if (turns !== undefined && turns > ceiling.turns) {
      cautions.push({
        id: 'too-fast',
        level: 'danger',
        text: `${turns} turns a minute are more than the usual ceiling of ${ceiling.turns} for a bit of this size. Slow the router down before it is switched on.`,
        basis: 'shop-practice',
      });
    }
  } else {
    cautions.push({
      id: 'no-usual-ceiling',
      level: 'danger',
      text: `The bit is larger than the ${((routerCeilings.at(-1)?.upTo ?? 0) / 25.4).toFixed(1)} in for which common practice names a speed. Only its maker can say how fast it may turn.`,
      basis: 'shop-practice',
    });
  }
  figures.depthOfPass = {
    label: 'Depth of one pass',
    value: depthOfPass,
    unit: 'mm',
    basis: 'shop-practice',
    digits: 3,
  };
  const evidence: EvidenceNote[] = [
    cite(rimSpeed, 'Gives the rim speed.'),
    {
      text: 'Ceilings by diameter are common practice: two general texts give them, and they differ for large bits.',
      basis: 'shop-practice',
    },
    { text: 'Depth of one pass: half the diameter, and at most 1/4 in, unless given.', basis: 'shop-practice' },
  ];
  const sizes = { cuttingLength, stock, template };
  const missing = (Object.keys(sizes) as (keyof typeof sizes)[]).filter((name) => sizes[name] === undefined);
  if (missing.length > 0 && missing.length < 3) {
    return refuse(
      missing[0] as string,
      'To judge the cut the cutting length, the stock and the template are all needed, and one is missing',
      'Give all three, or leave all three empty.',
    );
  }
  if (cuttingLength !== undefined && stock !== undefined && template !== undefined) {
    const plan = templateCut({
      diameter,
      cuttingLength,
      bearing,
      stock,
      template,
      contact: usualContact,
      beyond: usualBeyond,
      depthOfPass,
    });
    const count = plan.passes.length;
    figures.passes = {
      label: 'Passes',
      value: count,
      unit: '1',
      basis: 'shop-practice',
      digits: 4,
      note: `${plan.passes
        .slice(0, 8)
        .map((depth) => depth.toFixed(1))
        .join(', ')}${count > 8 ? ' …' : ''} mm deep.`,
    };
    figures.shortBy = {
      label: 'Edge too short by',
      value: plan.shortBy,
      unit: 'mm',
      basis: 'derived',
      digits: 3,
      note: `For the stock and ${usualBeyond} mm past it in one setting.`,
    };
    if (bearing === 'shank') {
      figures.leastFirstPass = {
        label: 'Least first pass with the bearing on the template',
        value: plan.leastFirstPass,
        unit: 'mm',
        basis: 'derived',
        digits: 3,
      };
    }
    if (plan.thickerTemplate !== undefined) {
      figures.thickerTemplate = {
        label: 'Template that keeps the bearing on it',
        value: plan.thickerTemplate,
        unit: 'mm',
        basis: 'derived',
        digits: 3,
        note: 'For a first pass of the usual depth.',
      };
    }
    cautions.push(...templateCautions(plan.longEnough, plan.steadyFirstPass, bearing));
    evidence.push({
      text: `The bearing must touch at least ${usualContact} mm of template, and the edge reach ${usualBeyond} mm past the stock.`,
      basis: 'shop-practice',
    });
  }
  return answer({ figures, cautions: [...cautions, ...cutterCautions], evidence });
}

function templateCautions(longEnough: boolean, steady: boolean, bearing: 'shank' | 'tip'): Caution[] {
  const made: Caution[] = [];
  if (!steady) {
    made.push({
      id: 'bearing-off-template',
      level: 'danger',
      text:
        bearing === 'shank'
          ? 'At a first pass of the usual depth the bearing stands clear of the template and the bit would dig in. Use a shorter bit first, or a thicker template, or a spacer under it; saw close to the line so that a deep first pass takes little.'
          : 'The template is too thin for the bearing to ride on. Make it thicker, or put a spacer under it.',
      basis: 'shop-practice',
    });
  }
  if (!longEnough) {
    made.push({
      id: 'edge-too-short',
      level: 'warning',
      text:
        bearing === 'shank'
          ? 'The edge does not reach through the stock. Cut as deep as it goes, take the template off, and let the bearing ride on the edge already cut.'
          : 'The edge does not reach through the stock. Cut what it reaches, turn the work over, and trim the rest with a bearing by the shank riding on the edge already cut.',
      basis: 'shop-practice',
    });
  }
  return made;
}
