import { cautionById } from '../../model/evidence/cautions.ts';
import type { Caution } from '../../model/evidence/index.ts';
import { amount, lookAlike, toldApart } from '../../model/quantity/index.ts';
import { hottestAnchor } from '../../model/resin/anchor.ts';
import { statedAt } from '../../model/resin/greatest-pour.ts';
import { runawayTemperature } from '../../model/resin/pour.ts';
import { sheetWarnings } from '../../model/resin/resin.ts';
import { coldShop, shopAirCautions } from '../../model/resin/shop-air.ts';
import type { PourAnswer } from './answer.ts';
import type { Setting } from './setting.ts';
import { airOf, coldestOf, shopInWords } from './shop-air.ts';
import { shopCautions } from './shop-cautions.ts';
import {
  evenLayers,
  layersInWords,
  ofThisCase,
  pourInWords,
  rise,
  temperature,
  time,
  times,
  untoldHeat,
  wrongFor,
} from './words.ts';
import { yardstickCautions } from './yardstick-cautions.ts';

const gravity: readonly Caution['level'][] = ['danger', 'warning', 'note'];

/** What must be said of a pour: this case's own before what holds for every pour, the gravest first. */
export function cautionsOf(setting: Setting, found: PourAnswer): Caution[] {
  const { resin } = setting;
  const all = [
    ...heat(setting, found),
    ...(resin ? sheetWarnings(resin) : []),
    ...yardstickCautions(setting),
    ...depth(setting, found),
    ...amounts(setting, found),
    // What these say of warmth and hours is worked out as well.
    ...(setting.untold ? shopAirCautions(airOf(setting), true) : shopCautions(setting, found)),
    ...setting.cautions.map((caution) => ({ ...caution, own: true })),
    ...unfinished(found),
    ...['deep-pour', 'resin-cup-heat'].flatMap((id) => cautionById(id) ?? []),
    ...layers(setting, found),
    ...(setting.untold ? [] : [estimate]),
  ];
  const rank = ({ own, level }: Caution) => (own ? 0 : gravity.length) + gravity.indexOf(level);
  // A sort that keeps the order of equals: the first named of a level stays first.
  return all.sort((one, other) => rank(one) - rank(other));
}

const estimate: Caution = {
  id: 'pour-estimate',
  level: 'note',
  text: 'Follow the data sheet where it differs: this is an estimate from its figures, not a measurement.',
  why: 'It takes a pour that lies flat, without bubbles, fillers or moisture in the wood, and poured at once after mixing.',
  basis: 'derived',
};

/** What to do instead of a pour that is too hot. */
function instead({ pour }: Setting, { layers: plan, greatest }: PourAnswer): string {
  // A shop that is to be warmed before anything is mixed is never to be cooled.
  const cooler = coldestOf(pour) < coldShop ? '' : ', or cool the shop';
  if (plan) return `Pour ${layersInWords(plan)}${cooler}.`;
  if (greatest?.kind === 'none') return 'The resin is too warm for any depth: let it cool before it is mixed.';
  return `Pour thinner${cooler}.`;
}

/** The layers of a plan, or those that the sheet's depth alone comes to, which have no wait. */
const planInWords = ({ layers: plan, bySheet }: PourAnswer): string | undefined =>
  plan ? layersInWords(plan) : bySheet?.layers && evenLayers(bySheet.layers);

function heat(setting: Setting, found: PourAnswer): Caution[] {
  const { pour, noAnchor } = setting;
  const { run, level, index } = found;
  const other = instead(setting, found);
  // By the pot life alone; the caution on the sheet says what the run says.
  if (noAnchor === 'at-war' || noAnchor === 'no-pot-life') return [];
  const deep = pourInWords(pour);
  if (setting.untold) {
    return level === undefined
      ? []
      : [
          ofThisCase(
            'pour-hot',
            'danger',
            `Do not pour ${deep} in one go: ${untoldHeat(setting, found)}.`,
            'Nothing else is told of this pour, since nobody knows how fast this resin cures.',
          ),
        ];
  }
  if (run.outcome === 'runaway') {
    return [
      ofThisCase(
        'pour-runaway',
        'danger',
        `Runaway: do not pour ${deep} in one go at ${shopInWords(pour)}. ${other}`,
        `By the model it passes ${temperature(runawayTemperature)} about ${time(run.timeToPeak)} after mixing and grows hotter still. Such a pour foams, cracks, smokes and can scorch what it touches.`,
      ),
    ];
  }
  if (level === 'runaway') {
    return [
      ofThisCase(
        'pour-expect-runaway',
        'danger',
        `Expect a runaway: do not pour ${deep} in one go. ${other}`,
        `By the model this pour warms ${times(index)} as much as the deepest that the sheet allows.`,
      ),
    ];
  }
  if (level === 'hot') {
    return [
      ofThisCase(
        'pour-hot',
        'danger',
        `Too hot: do not pour ${deep} in one go. ${other}`,
        `By the model it warms by ${rise(run.peakRise)}. From about ${rise(hottestAnchor)} a little more depth or warmth, or a figure that is a little off, makes it run away.`,
      ),
    ];
  }
  if (level === 'outside' || (level === 'deeper' && (index ?? 0) > 1)) {
    return [
      ofThisCase(
        'pour-outside',
        'warning',
        `Outside the sheet: ${other.charAt(0).toLowerCase()}${other.slice(1)}`,
        `This pour warms ${times(index)} as much as the deepest that the sheet allows, and a quarter more depth doubles the rise or worse.`,
      ),
    ];
  }
  return [];
}

function depth({ pour, resin, stated, noAnchor }: Setting, found: PourAnswer): Caution[] {
  const { level, asCoat } = found;
  const plan = planInWords(found);
  if (!resin || !stated || stated.kind === 'silent' || noAnchor === 'at-war') return [];
  if (pour.depth <= stated.depth || asCoat) return [];
  const told = toldApart(pour.depth, stated.depth);
  const deeper = lookAlike(pour.depth, stated.depth) ? `${told(pour.depth)} is deeper` : 'Deeper';
  const who = stated.ofSheet ? resin.name : 'this generic kind';
  return [
    ofThisCase(
      'deeper-than-sheet',
      'warning',
      `${deeper} than the ${told(stated.depth)} that ${who} allows in one pour at ${statedAt(stated)}: ${
        plan ? `pour ${plan}` : 'pour no deeper'
      }, or pick another resin.`,
      level === 'deeper'
        ? 'The sheet comes first: a cold shop or moving air makes the pour cooler by the model, and so do walls of wood; no maker has allowed it.'
        : undefined,
    ),
  ];
}

/** Limits of the sheet on volume and mass: passed, or not checked. */
function amounts({ resin }: Setting, found: PourAnswer): Caution[] {
  const { limits } = found;
  const plan = planInWords(found);
  return limits.flatMap(({ figure: { unit, value }, here }): Caution[] => {
    const what = unit === 'g' ? 'mass' : 'volume';
    const most = amount(value, unit);
    if (here === undefined) {
      return [
        ofThisCase(
          `${what}-not-checked`,
          'warning',
          `Give the area of the pour: ${resin?.name} also allows no more than ${most} at once, and that was not checked.`,
        ),
      ];
    }
    if (here <= value) return [];
    return [
      ofThisCase(
        `${what}-beyond-sheet`,
        'danger',
        `Too much at once: ${amount(here, unit)} where ${resin?.name} allows ${most}. ${plan ? `Pour ${plan}.` : 'Pour less at a time.'}`,
        'A limit on the amount is there for the heat that a whole pour makes, wherever it lies; the model, which knows no edges, does not see it.',
      ),
    ];
  });
}

function layers({ resin }: Setting, found: PourAnswer): Caution[] {
  if (!found.layers && !found.bySheet?.layers) return [];
  const wrong = wrongFor(resin, found);
  return [
    ...(wrong
      ? [
          ofThisCase(
            'wrong-for-depth',
            'warning',
            wrong,
            'Every layer is a wait, a joint that may let go, and a chance of dust and bubbles.',
          ),
        ]
      : []),
    {
      id: 'layers-over-base',
      level: 'note',
      text: 'Let every layer cool before the next, or their heats add.',
      ...(found.layers
        ? {
            why: 'Each layer is reckoned over the base itself. Later ones lie on cured resin, which takes up heat no worse than wood.',
          }
        : {}),
      basis: 'derived',
    },
  ];
}

function unfinished({ run }: PourAnswer): Caution[] {
  if (run.outcome !== 'unfinished' || run.timeToLastGel !== null) return [];
  return [
    ofThisCase(
      'never-gels',
      'warning',
      'Look at the rate constant, the temperature and the energy again: with these figures it has not gelled within a month.',
      'No resin for pouring is so slow.',
    ),
  ];
}
