import { cite, type EvidenceNote } from '../../model/evidence/index.ts';
import { amount } from '../../model/quantity/index.ts';
import { massToMix, readingError } from '../../model/resin/dose.ts';
import { mixedDensity, partsOfMass, weightRatioOfVolume } from '../../model/resin/ratio.ts';
import { mostInWords } from './layers.ts';
import type { DosePlan } from './plan.ts';

/** What a dose rests on. */
export function evidenceOf(plan: DosePlan): EvidenceNote[] {
  const { mix, place, allowances, dose, clock, cup, given } = plan;
  const { resin } = given;
  const source = {
    reader: 'The mix ratio is the reader’s own.',
    sheet: `The mix ratio is that of the data sheet “${resin?.name}”.`,
    kind: `The mix ratio is that of a generic kind, ${resin?.name.toLowerCase()}: no product; enter your own sheet.`,
  }[mix.ratioOf];
  return [
    { text: source, basis: mix.ratioBasis },
    { text: `Densities ${mix.densityA} and ${mix.densityB} g/ml.`, basis: mix.densityBasis },
    cite(weightRatioOfVolume, `100 : ${(100 * mix.weightRatio).toFixed(1)} by weight.`),
    cite(mixedDensity, `${mix.density.toFixed(3)} g/ml.`),
    cite(partsOfMass, 'Pigment is not in it.'),
    ...(dose.total > dose.fill
      ? [
          cite(
            massToMix,
            `Runs over or stands proud ${allowances.drip} %, left in the cups ${allowances.residue} %, spare ${allowances.spare} %${dose.seal > 0 ? ', with a seal coat' : ''}.`,
          ),
        ]
      : []),
    cite(readingError, 'For the smallest cup.'),
    ...layerEvidence(plan),
    ...(clock && cup.empty !== undefined
      ? [
          {
            text: `The largest cup is followed from its pot life at ${amount(clock.celsius, 'Cel')}${clock.assumed ? ', taken since none was given' : ''}; half of its working time is reckoned with.`,
            basis: 'memory' as const,
          },
        ]
      : []),
    ...place.notes.map((text): EvidenceNote => ({ text, basis: 'derived' })),
  ];
}

function layerEvidence({ layers }: DosePlan): EvidenceNote[] {
  const { hotter, stated, shop, allowed, allowedBasis } = layers;
  if (!hotter || !stated || !shop || allowed === undefined) return [];
  return [
    {
      text: `In a shop of ${amount(shop.celsius, 'Cel')} ${mostInWords(layers)} over wood in still air warm as much as ${amount(stated.depth, 'mm', 2)} do at ${amount(stated.celsius, 'Cel')}, as the heat of a pour works it out.`,
      basis: allowedBasis ?? 'memory',
    },
  ];
}
