import type { Caution, EvidenceNote } from '../../model/evidence/index.ts';
import { resinCautions } from '../../model/evidence/resin-cautions.ts';
import { pigmentKinds } from '../../model/resin/batches.ts';
import { dosingLimits, massToMix, readingError } from '../../model/resin/dose.ts';
import { mixedDensity, partsOfMass, weightRatioOfVolume } from '../../model/resin/ratio.ts';
import { sheetWarnings } from '../../model/resin/resin.ts';
import { lengthInBoth, temperatureInBoth } from '../kit/both-units.ts';
import { cite } from '../kit/evidence.ts';
import type { Inputs } from './inputs.ts';
import type { DosePlan } from './plan.ts';

const short = (value: number) => Number(value.toPrecision(2));

/** What a dose needs to be warned of: skin and heat always, the rest where it applies. */
export function cautionsOf(plan: DosePlan, given: Inputs): Caution[] {
  const pigmented = plan.cups.some(({ pigment }) => pigment > 0);
  const always = ['resin-skin', 'resin-cup-heat', ...(pigmented ? ['pigment-dust'] : [])];
  return [
    ...resinCautions.filter(({ id }) => always.includes(id)),
    ...dosing(plan),
    ...(given.resin ? sheetWarnings(given.resin) : []),
    ...depth(plan, given),
    ...pigments(plan, given),
    ...cups(plan, given),
    ...(given.sealCoat !== undefined && given.sealCoat > 0 && plan.dose.seal === 0
      ? [
          {
            id: 'no-seal-coat',
            level: 'warning' as const,
            text: 'The seal coat is not in this: nothing says how much bare wood there is. Give the area of floor and walls.',
            basis: 'derived' as const,
          },
        ]
      : []),
    {
      id: 'ratio-is-fixed',
      level: 'note',
      text: 'More hardener never makes resin set faster or harder: off its ratio it stays soft. Scrape the sides, mix for as long as the maker’s sheet says, and follow the sheet where it differs from this.',
      basis: 'shop-practice',
    },
  ];
}

/** Divisions of scales and syringes that shops have, in g or mL. */
const usualDivisions = [0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5];
/** Percent of the smaller part that a division may be, so that reading and rounding stay within the limit together. */
const safeShare = 2;

/** What the scale or the marks allow, and what to do about it. */
function dosing(plan: DosePlan): Caution[] {
  const { readingError: reading, roundingError: rounding, division, smallestPart, mix } = plan;
  const unit = mix.by === 'weight' ? 'g' : 'ml';
  const tool = mix.by === 'weight' ? 'scale' : 'marks';
  const off = reading + rounding;
  if (off <= dosingLimits.mend) return [];
  const finer = [...usualDivisions].reverse().find((each) => each <= (smallestPart * safeShare) / 100);
  const text =
    smallestPart < division
      ? `The smallest cup needs ${short(smallestPart)} ${unit} of one part, and the ${tool} show no less than ${division} ${unit}: this cannot be measured.`
      : `With a division of ${division} ${unit} the ratio of the smallest cup can be off by ${short(off)} %: ${short(reading)} % by reading and ${short(rounding)} % by rounding.`;
  const verdict =
    off > dosingLimits.stop ? 'That is too far off to pour.' : 'A mix should be off by no more than 2 to 3 %.';
  const remedies = [
    `mix a cup with at least ${short((100 * division) / safeShare)} ${unit} of the smaller part, and part it by colour afterwards`,
    ...(finer === undefined ? [] : [`measure with a division of ${finer} ${unit} or less`]),
  ].join(', or ');
  return [
    {
      id: 'dosing-error',
      level: 'warning',
      text: `${text} ${verdict} ${remedies.charAt(0).toUpperCase()}${remedies.slice(1)}.`,
      basis: 'memory',
    },
  ];
}

function depth({ layerThickness, layers, place }: DosePlan, { resin }: Inputs): Caution[] {
  const allowed = resin?.figures.greatestDepth;
  const warm = resin?.figures.greatestDepthTemperature;
  if (layerThickness === undefined) return [];
  const cautions: Caution[] = [];
  if (allowed && layerThickness > allowed.value * (1 + 1e-9)) {
    cautions.push({
      id: 'layer-too-deep',
      level: 'danger',
      text: `A layer of ${lengthInBoth(layerThickness)} is deeper than the ${lengthInBoth(allowed.value)} that this resin takes in one pour${warm ? ` at ${temperatureInBoth(warm.value)}` : ''}: it can overheat, crack, smoke or burn. Pour it in ${Math.ceil((layerThickness * layers) / allowed.value - 1e-9)} layers.`,
      basis: allowed.basis,
    });
  }
  if (allowed && layers > 1) {
    cautions.push({
      id: 'layers-wait',
      level: 'warning',
      text: `Let each layer cool and set before the next, within the recoat window of the sheet; after it, sand first. Each layer is mixed when it is due, never all at once.`,
      basis: 'shop-practice',
    });
  }
  if (allowed && warm && place.profile) {
    cautions.push({
      id: 'warmer-shop',
      level: 'note',
      text: `The greatest depth holds at ${temperatureInBoth(warm.value)}. In a warmer shop it is less: about a fifth less for 5 °C (9 °F).`,
      basis: 'memory',
    });
  }
  return cautions;
}

/** Pigment beyond the sheet’s limit, or beyond practice where the sheet sets none. */
function pigments({ colours }: DosePlan, { resin }: Inputs): Caution[] {
  const limit = resin?.figures.pigmentLimit;
  return colours.flatMap((colour, index): Caution[] => {
    const kind = pigmentKinds.find(({ kind: id }) => id === colour.kind);
    const most = limit?.value ?? kind?.most;
    if (!kind || most === undefined || colour.pigment <= most) return [];
    return [
      {
        id: `pigment-${index + 1}`,
        level: 'warning',
        text: `${colour.name}: ${colour.pigment} % of ${kind.label} is more than ${limit ? `the ${most} % of the maker’s sheet` : `is usual: ${kind.usual} %, at most ${most} %`}. Too much keeps resin from curing through. Take less, or a stronger pigment.`,
        basis: limit?.basis ?? 'memory',
      },
    ];
  });
}

function cups(plan: DosePlan, { cupMass, resin }: Inputs): Caution[] {
  const stated = resin?.figures.potLifeMass?.value;
  const cautions: Caution[] = [];
  if (cupMass !== undefined && stated !== undefined && cupMass > stated * 1.001 && plan.cups.length > 0) {
    const heaviest = plan.dose.total / plan.cups.length;
    if (heaviest > stated) {
      cautions.push({
        id: 'cup-beyond-pot-life',
        level: 'warning',
        text: `The pot life is stated for ${stated} g. A larger cup heats itself more and sets sooner: work out its time before you mix it, and pour it out at once.`,
        basis: 'shop-practice',
      });
    }
  }
  return cautions;
}

/** What the answer rests on. */
export function evidenceOf({ mix, place, allowances, dose }: DosePlan, { resin, mixRatio }: Inputs): EvidenceNote[] {
  const source =
    mixRatio !== undefined
      ? 'The mix ratio is the reader’s own.'
      : `The mix ratio is that of ${resin?.fromSheet ? `the data sheet “${resin.name}”` : `a generic kind, ${resin?.name.toLowerCase()}: no product; enter your own sheet`}.`;
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
            `Drip ${allowances.drip} %, left in the cups ${allowances.residue} %, spare ${allowances.spare} %${dose.seal > 0 ? ', with a seal coat' : ''}.`,
          ),
        ]
      : []),
    cite(readingError, 'For the smallest cup.'),
    ...place.notes.map((text): EvidenceNote => ({ text, basis: 'derived' })),
  ];
}
