import { cautionById } from '../../model/evidence/cautions.ts';
import { answer, cite, type EvidenceNote, type Outcome } from '../../model/evidence/index.ts';
import { amount } from '../../model/quantity/index.ts';
import {
  cutterCautions,
  mostDepthOfPass,
  rimSpeed,
  routerCeiling,
  templateCut,
  usualBeyond,
  usualContact,
  usualDepthOfPass,
} from '../../model/stock/index.ts';
import type { Answer } from '../kit/calculator.ts';
import { cutCautions, speedCautions } from './cautions.ts';
import { depthFigure, type figures, passFigures, reachFigures, speedFigures } from './figures.ts';
import type { Inputs } from './inputs.ts';
import { type AskedCut, routingVerdict } from './verdict.ts';

/** What is said of every router: what it throws, its noise and its dust. */
const standing = ['template-routing', 'noise', 'wood-dust'].flatMap((id) => cautionById(id) ?? []);

/** Speed, passes and reach of a router bit. */
export function routingAnswer(given: Inputs): Outcome<Answer<keyof typeof figures>> {
  const { diameter, turns } = given;
  const ceiling = routerCeiling(diameter);
  const cut = cutOf(given);
  const verdict = routingVerdict(turns, ceiling, cut);
  // What nobody can vouch for the speed of is not to be cut with: no pass is named.
  const cuttable = verdict.level !== 'unknown';
  const depthOfPass = depthFigure(given.depthOfPass ?? usualDepthOfPass(diameter), given.depthOfPass !== undefined);
  return answer({
    verdict,
    figures: {
      ...speedFigures(diameter, turns, ceiling),
      ...(cuttable ? (cut ? passFigures(cut) : { depthOfPass }) : {}),
      ...(cut ? reachFigures(cut) : {}),
    },
    cautions: [...speedCautions(turns, ceiling), ...(cut ? cutCautions(cut) : []), ...cutterCautions, ...standing],
    evidence: evidenceOf(cut !== undefined),
  });
}

/** The cut that is asked for, with its plan; undefined where only the speed is. */
function cutOf(given: Inputs): AskedCut | undefined {
  const { diameter, cuttingLength, bearing = 'shank', stock, template } = given;
  if (cuttingLength === undefined || stock === undefined || template === undefined) return undefined;
  const asked = {
    bearing,
    cuttingLength,
    stock,
    template,
    contact: usualContact,
    depthOfPass: given.depthOfPass ?? usualDepthOfPass(diameter),
  };
  return {
    ...asked,
    depthAsked: given.depthOfPass !== undefined,
    plan: templateCut({ ...asked, diameter, beyond: usualBeyond }),
  };
}

function evidenceOf(cut: boolean): EvidenceNote[] {
  return [
    cite(rimSpeed, 'Gives the rim speed.'),
    {
      text: 'Limits by diameter are common practice: two general texts give them and differ; the lower counts here.',
      basis: 'shop-practice',
    },
    {
      text: `Depth of one pass: half the diameter, and at most ${amount(mostDepthOfPass, 'mm')}, unless given.`,
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
}
