import type { Caution } from '../../model/evidence/index.ts';
import { resinCautions } from '../../model/evidence/resin-cautions.ts';
import { amount } from '../../model/quantity/index.ts';
import { pigmentKinds } from '../../model/resin/batches.ts';
import { coatDepth } from '../../model/resin/depth-limit.ts';
import { dosingLimits } from '../../model/resin/dose.ts';
import { wrongForDepth } from '../../model/resin/pour-plan.ts';
import { sheetWarnings } from '../../model/resin/resin.ts';
import { shopAirCautions, steadyAir } from '../../model/resin/shop-air.ts';
import { dosingWords } from './dosing-words.ts';
import { cautionOf } from './hindrance.ts';
import { mostInWords } from './layers.ts';
import { mostHardener } from './mix.ts';
import type { DosePlan, NoDose } from './plan.ts';
import { grams } from './verdict.ts';

const own = (id: string, level: Caution['level'], text: string, more: Partial<Caution> = {}): Caution => ({
  id,
  level,
  own: true,
  text,
  basis: 'derived',
  ...more,
});

/** What this very dose must beware of, the gravest first within each level. */
export function ownCautionsOf(plan: DosePlan): Caution[] {
  const { given } = plan;
  return [
    ...ratio(plan),
    ...(given.resin ? sheetWarnings(given.resin) : []),
    ...shopAir(given),
    ...measuring(plan),
    ...plan.cup.heat,
    ...cups(plan),
    ...depth(plan),
    ...ring(plan),
    ...pigments(plan),
    ...seal(plan),
  ];
}

/** What a dose needs to be warned of: its own, then skin and heat always, and powder where one is stirred in. */
export function cautionsOf(plan: DosePlan): Caution[] {
  const powder = plan.colours.some(({ kind, pigment }) => kind === 'powder' && pigment > 0);
  return [
    ...ownCautionsOf(plan),
    ...standing(powder ? ['pigment-dust'] : []),
    {
      id: 'ratio-is-fixed',
      level: 'note',
      text: 'More hardener never makes resin set faster or harder: off its ratio it stays soft.',
      why: 'Scrape the sides while you stir, never when you pour; stir for as long as the maker’s sheet says, and follow the sheet where it differs from this.',
      basis: 'shop-practice',
    },
  ];
}

/** What must be said where there is no dose: all that keeps it from being given beside the verdict, and what always holds. */
export function cautionsOfNone({ given, hindrances: [, ...others], cup }: NoDose): Caution[] {
  const ofSheet = given.resin ? sheetWarnings(given.resin) : [];
  const said = ofSheet.map(({ id }) => id);
  return [
    ...(cup?.heat ?? []),
    ...others.filter(({ id }) => !said.includes(id)).map(cautionOf),
    ...ofSheet,
    ...shopAir(given),
    ...standing([]),
  ];
}

/** The shop, where its temperature was given. */
const shopAir = ({ shopTemperature: celsius }: DosePlan['given']): Caution[] =>
  celsius === undefined ? [] : shopAirCautions(steadyAir(celsius));

function standing(more: readonly string[]): Caution[] {
  const always = ['resin-skin', 'resin-cup-heat', ...more];
  return resinCautions.filter(({ id }) => always.includes(id));
}

function ratio({ mix, given }: DosePlan): Caution[] {
  const { ratioOf, ownRatioOff, byAssumedDensities, weightRatio, volumeRatio, by } = mix;
  return [
    ...(Math.min(weightRatio, volumeRatio) > mostHardener
      ? [
          own(
            'more-hardener-than-resin',
            'danger',
            'This is more hardener than resin. A is the resin here: some bottles are lettered the other way round. Look at both labels.',
          ),
        ]
      : []),
    ...(ratioOf === 'kind'
      ? [
          own(
            'ratio-of-a-kind',
            'warning',
            'The ratio is that of a generic kind, from memory: yours stands on the bottle.',
            { basis: 'memory' },
          ),
        ]
      : []),
    ...(ratioOf === 'reader' && given.resin && !given.resin.fromSheet
      ? [
          own(
            'rest-of-a-kind',
            'warning',
            'Greatest depth and pot life are those of a generic kind, from memory: yours stand on the sheet.',
            { basis: 'memory' },
          ),
        ]
      : []),
    ...(ownRatioOff === undefined
      ? []
      : [
          own(
            'own-ratio-differs',
            'warning',
            `Your own mix ratio is ${ownRatioOff.toFixed(1)} % off that of ${given.resin?.name}: look at the bottle.`,
          ),
        ]),
    ...(byAssumedDensities && ratioOf !== 'kind'
      ? [
          own(
            'densities-assumed',
            'warning',
            by === 'weight'
              ? 'The weights rest on densities from memory: enter those of your sheet, or measure by volume.'
              : 'The volumes rest on densities from memory: enter those of your sheet, or weigh.',
            {
              why: 'The parts of resins differ in density by several percent, and the ratio with them.',
              basis: 'memory',
            },
          ),
        ]
      : []),
  ];
}

/** What the scale or the marks leave open, where it is worth mending. */
function measuring(plan: DosePlan): Caution[] {
  if (plan.readingError + plan.roundingError <= dosingLimits.mend) return [];
  return [own('dosing-error', 'warning', dosingWords(plan), { basis: 'memory' })];
}

function cups({ cup, clock, largestCup, cupLimit, given }: DosePlan): Caution[] {
  if (!clock) {
    return [
      own(
        'cup-unchecked',
        'warning',
        `Nobody says how long a cup of ${grams(largestCup)} lasts: no pot life is known. Mix small, pour at once.`,
      ),
    ];
  }
  const stated = grams(clock.statedMass);
  const time = cup.empty === undefined ? '' : ` Have it empty within ${amount(cup.empty, 's', 2)} of mixing.`;
  if (cup.beyondStated) {
    return [
      own(
        'cup-beyond-pot-life',
        'warning',
        `A cup of ${grams(largestCup)} heats itself more than the ${stated} that the pot life is stated for, and sets sooner.${time}`,
        { basis: 'memory' },
      ),
    ];
  }
  if (cup.tooLate) {
    return [
      own(
        'cup-hurried',
        'warning',
        `A cup of ${grams(largestCup)} leaves little time: stirring and pouring take most of it.${time}`,
        { basis: 'memory' },
      ),
    ];
  }
  return cupLimit.setBy !== 'reader' && clock.massAssumed && given.cupMass === undefined
    ? [
        own(
          'pot-life-mass-assumed',
          'warning',
          `Taken: the pot life is for ${stated}. Your sheet does not say the mass; ask the maker.`,
          { basis: 'memory' },
        ),
      ]
    : [];
}

function depth({ layers, place, given, clock }: DosePlan): Caution[] {
  const { allowed, stated, shop, hotter, count, thickness } = layers;
  const deep = thickness !== undefined && thickness * count > coatDepth;
  const most = allowed === undefined ? undefined : mostInWords(layers);
  const cautions: Caution[] = [];
  const wrong = wrongForDepth(layers.byDepth ?? 1, given.resin);
  if (wrong) {
    cautions.push(
      own('wrong-for-depth', 'warning', wrong, {
        why: 'Every layer is a wait, a joint that may let go, and a chance of dust and bubbles.',
        basis: 'shop-practice',
      }),
    );
  }
  if (place.from === 'mass' && thickness === undefined) {
    cautions.push(
      own(
        'no-depth',
        'warning',
        most
          ? `No depth was given: pour no layer of it deeper than ${most}.`
          : `No depth was given, and none is known of this resin: up to ${amount(coatDepth, 'mm', 1)} is a coat; for more ask the maker.`,
      ),
    );
  }
  if (deep && count > 1) {
    cautions.push(
      own(
        'layers-wait',
        'warning',
        'Let each layer gel and cool before the next, within its recoat window; after it, let it cure and sand.',
        { why: 'Each layer is mixed when it is due, never all at once.', basis: 'shop-practice' },
      ),
    );
  }
  if (deep && hotter && most && stated && shop) {
    cautions.push(
      own(
        'hotter-shop',
        'warning',
        `At ${amount(shop.celsius, 'Cel')} this resin bears ${most} in one pour, not the ${amount(stated.depth, 'mm', 2)} of ${amount(stated.celsius, 'Cel')}.`,
      ),
    );
  }
  if (deep && stated && shop?.assumed) {
    const cups =
      clock?.assumed && clock.celsius !== shop.celsius ? `, and of ${amount(clock.celsius, 'Cel')} for the cups` : '';
    const whose = given.greatestDepth === undefined ? 'the depth is stated for' : 'the depth is taken for';
    cautions.push(
      own(
        'temperature-assumed',
        'warning',
        `Taken: a shop of ${amount(shop.celsius, 'Cel')}, which ${whose}${stated.celsiusAssumed ? ' (assumed: the sheet names no temperature)' : ''}${cups}. A warmer shop bears less: give its temperature.`,
      ),
    );
  }
  return cautions;
}

function ring({ given }: DosePlan): Caution[] {
  if (!given.shapes?.some(({ kind }) => kind === 'ring')) return [];
  return [
    own(
      'ring-around-wood',
      'warning',
      'A ring of resin locks the wood inside it, which swells and pushes it open: cut the ring in two, or fill it whole.',
      { basis: 'shop-practice' },
    ),
  ];
}

/** Pigment beyond the sheet’s limit, or beyond practice where the sheet sets none. */
function pigments({ colours, given }: DosePlan): Caution[] {
  const limit = given.resin?.figures.pigmentLimit;
  const over = colours.flatMap((colour) => {
    const kind = pigmentKinds.find(({ kind: id }) => id === colour.kind);
    const most = limit?.value ?? kind?.most;
    if (!kind || most === undefined || colour.pigment <= most) return [];
    return [
      `${colour.name}, ${colour.pigment} % of ${kind.label} (${limit ? `the sheet: ${most} %` : `usual ${kind.usual} %, at most ${most} %`})`,
    ];
  });
  if (over.length === 0) return [];
  return [
    own('pigment-beyond-limit', 'warning', `Too much pigment: ${over.join('; ')}. Take less, or a stronger one.`, {
      why: 'Too much keeps resin from curing through.',
      basis: limit?.basis ?? 'memory',
    }),
  ];
}

function seal({ given, dose }: DosePlan): Caution[] {
  if (given.sealCoat === undefined || given.sealCoat === 0 || dose.seal > 0) return [];
  return [
    own(
      'no-seal-coat',
      'warning',
      'The seal coat is not in this: nothing says how much bare wood there is. Give the area of floor and walls.',
    ),
  ];
}
