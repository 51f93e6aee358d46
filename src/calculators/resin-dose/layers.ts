import { answer, type Basis, type Outcome, refuse } from '../../model/evidence/index.ts';
import { amount, atMost, ofEach, toldApart } from '../../model/quantity/index.ts';
import { assumed } from '../../model/resin/assumed.ts';
import {
  coatBarOf,
  coatDepth,
  countsAs,
  depthLimitOf,
  lessUnknownInWords,
  tooHotInWords,
  withOwnDepth,
} from '../../model/resin/depth-limit.ts';
import { wrongForDepth } from '../../model/resin/pour-plan.ts';
import { layerShares } from '../../model/resin/shapes.ts';
import { silentOn } from '../../model/resin/told.ts';
import type { Resin } from '../../model/resin/types.ts';
import { type Hindrance, hindrance } from './hindrance.ts';
import type { Inputs } from './inputs.ts';
import { depthOf, type Place } from './place.ts';

/** What sets the layers of a fill. */
export interface Layers {
  count: number;
  /** Layers that the depth alone asks for, where it is known. */
  byDepth?: number;
  /** Share of the fill that each takes, the lowest first. */
  shares: readonly number[];
  /** mm, where the depth is known. */
  thickness?: number;
  /** The most that one pour may have here, mm, where it is known. */
  allowed?: number;
  allowedBasis?: Basis;
  /** The depth as stated, mm and °C, where the allowed one comes from it. */
  stated?: { depth: number; celsius: number; celsiusAssumed: boolean };
  /** Temperature of the shop, °C, and whether it was taken from the stated depth for want of another. */
  shop?: { celsius: number; assumed: boolean };
  /** True where the shop is warmer than the depth is stated for, and less is allowed. */
  hotter: boolean;
  /** What sets the count. */
  setBy: 'reader' | 'depth' | 'volume' | 'coat' | 'nothing';
}

/** The layers of a place, or what keeps them from being planned. */
export type LayersFound = { layers: Layers } | { hindrance: Hindrance };

const mostLayers = 60;

/** The most that one pour may have, in words: as the sheet states it, or, where a warm shop leaves less of it, never more than that. */
export const mostInWords = ({ allowed = 0, hotter }: Pick<Layers, 'allowed' | 'hotter'>): string =>
  hotter ? atMost(allowed, 'mm') : amount(allowed, 'mm', 2);

/**
 * The layers of a place: as many as the greatest depth of one pour in this shop asks for, and the greatest volume or mass of one pour
 * where the sheet limits that. Without a greatest depth that somebody stated there is no plan of layers for anything deeper than a coat.
 *
 * @param density of the mix, g/mL
 */
export function layersOf(given: Inputs, place: Place, density: number): Outcome<LayersFound> {
  const depth = depthOf(place);
  const limit = limitOf(given);
  if ('hindrance' in limit) {
    // A coat needs no plan, whatever is not known; how warm the shop is does decide about a coat.
    return depth !== undefined && depth <= coatDepth && limit.silent
      ? coatIn(given, place, depth)
      : place.from === 'mass' && depth === undefined && limit.silent
        ? planned(given, place, depth, { hotter: false }, 'nothing', 1)
        : answer({ hindrance: limit.hindrance });
  }
  if (depth === undefined) {
    if (place.from === 'mass') return planned(given, place, depth, limit, 'nothing', 1);
    return answer({
      hindrance: hindrance(
        'depth-missing',
        'unknown',
        `How deep it is was not given: without a depth there is no plan of layers. No pour of this resin may be deeper than ${mostInWords(limit)}.`,
      ),
    });
  }
  const byDepth = depth <= (limit.most ?? depth) ? 1 : Math.ceil(depth / (limit.allowed ?? depth) - 1e-6);
  const byAmount = pours(given, place, density);
  const needed = Math.max(1, byDepth, byAmount);
  if (needed > mostLayers) {
    return refuse(
      'depth',
      `${amount(depth, 'mm')} would take ${needed} layers of at most ${mostInWords(limit)}, more than ${mostLayers}`,
      'Pick a resin that is poured deeper, or give a smaller depth.',
    );
  }
  return planned(given, place, depth, { ...limit, byDepth }, byAmount > byDepth ? 'volume' : 'depth', needed);
}

/** A coat of a resin of which nobody states a depth, where the heat of a pour does not stop it. */
function coatIn(given: Inputs, place: Place, depth: number): Outcome<LayersFound> {
  const { resin, shopTemperature } = given;
  const bar = resin && coatBarOf(resin, depth, shopTemperature);
  // Without a pot life it is the reader who says how much may stand in one cup, and nothing is told of its heat.
  if (!bar || bar.kind === 'no-pot-life') return planned(given, place, depth, { hotter: false }, 'coat', 1);
  return answer({ hindrance: hindrance('coat-too-hot', 'stop', tooHotInWords(resin, depth, bar)) });
}

type Limit = Pick<Layers, 'byDepth' | 'allowed' | 'allowedBasis' | 'stated' | 'shop' | 'hotter'> & {
  /** What still counts as one pour of the depth allowed, mm. */
  most?: number;
};

function planned(
  given: Inputs,
  place: Place,
  depth: number | undefined,
  limit: Limit,
  setBy: Layers['setBy'],
  needed: number,
): Outcome<LayersFound> {
  const count = given.layers ?? needed;
  if (count < needed) {
    const thick = (depth ?? 0) / count;
    const mm = toldApart(thick, limit.allowed ?? thick);
    const each = depth === undefined ? '' : ` of ${ofEach(depth, needed, limit.allowed)}`;
    const sentence = wrongForDepth(limit.byDepth ?? 1, given.resin);
    const wrong = sentence ? ` ${sentence}` : '';
    return answer({
      hindrance: hindrance(
        'layer-too-deep',
        'stop',
        setBy === 'volume'
          ? `In ${count === 1 ? 'one layer' : `${count} layers`} this is more at a time than the sheet allows in one pour. Pour ${needed} layers${each}.${wrong}`
          : `A layer of ${mm(thick)} is deeper than the ${mm(limit.allowed ?? 0)} that this resin bears in one pour: it can overheat, crack, smoke or burn. Pour ${needed} layers${each}.${wrong}`,
      ),
    });
  }
  const shares = place.profile ? layerShares(place.profile, count) : Array.from({ length: count }, () => 1 / count);
  return answer({
    layers: {
      ...limit,
      count,
      shares,
      ...(depth === undefined ? {} : { thickness: depth / count }),
      setBy: given.layers === undefined ? setBy : 'reader',
    },
  });
}

/** How deep one pour may be here, or why nobody can say. */
function limitOf(given: Inputs): Limit | { hindrance: Hindrance; silent: boolean } {
  const { resin, greatestDepth: own, shopTemperature: shop } = given;
  if (!resin) {
    if (own === undefined) return { hindrance: silent, silent: true };
    return {
      allowed: own,
      most: own,
      allowedBasis: 'supplier-sheet',
      ...(shop === undefined ? {} : { shop: { celsius: shop, assumed: false } }),
      hotter: false,
    };
  }
  const laid = own === undefined ? resin : withOwnDepth(resin, own, shop ?? assumed.depthTemperature);
  const limit = depthLimitOf(laid, shop);
  if (limit.kind === 'silent') return { hindrance: silent, silent: true };
  if (limit.kind === 'contradicted') return { hindrance: contradicted(laid, own !== undefined), silent: false };
  if (limit.kind === 'less-unknown') {
    const text = lessUnknownInWords(laid, shop ?? limit.statedAt, limit);
    return { hindrance: hindrance('depth-unknown-here', 'unknown', text), silent: false };
  }
  if (limit.kind === 'too-warm') {
    const stated = amount(limit.statedAt, 'Cel');
    return {
      hindrance: hindrance(
        'shop-too-warm',
        'stop',
        `At ${amount(shop ?? 0, 'Cel')} no depth of this resin stays as cool as what is allowed at ${stated}. Cool the shop, or pour at night.`,
      ),
      silent: false,
    };
  }
  return {
    allowed: limit.depth,
    most: countsAs(limit.depth, limit.ofSheet, limit.hotter),
    allowedBasis: laid.figures.greatestDepth?.basis ?? 'memory',
    stated: { depth: limit.stated, celsius: limit.statedAt, celsiusAssumed: limit.statedAtAssumed },
    shop: shop === undefined ? { celsius: limit.statedAt, assumed: true } : { celsius: shop, assumed: false },
    hotter: limit.hotter,
  };
}

const silent = hindrance(
  'no-greatest-depth',
  'unknown',
  'No greatest depth of one pour is known, so there is no plan of layers. Ask the maker, and enter it in the sheet or below.',
);

function contradicted(resin: Resin, own: boolean): Hindrance {
  const { name } = resin;
  if (silentOn(resin, 'potLife')) {
    return hindrance(
      'depth-contradicted',
      'unknown',
      `The sheet of ${name} names no pot life, and ${own ? 'the greatest depth that you give' : 'its greatest depth'} does not go with that of a generic kind. Enter the pot life of the sheet, or ask the maker for it.`,
    );
  }
  return hindrance(
    'depth-contradicted',
    'unknown',
    own
      ? `The greatest depth that you give and the pot life of ${name} cannot both be right. Look at the sheet again before you mix.`
      : `The greatest depth and the pot life of ${name} cannot both be right. Look at the sheet again before you mix.`,
  );
}

/** Pours that a limit of volume or mass of one pour asks for, over the largest of the places. */
function pours({ resin }: Inputs, { volume = 0, mass, pieces }: Place, density: number): number {
  const { greatestVolume, greatestMass } = resin?.figures ?? {};
  const largest = pieces ? Math.max(...pieces.map(({ fill }) => fill)) : 1;
  const whole = mass ?? volume * density;
  const byVolume = greatestVolume ? ((whole / density) * largest) / greatestVolume.value : 1;
  const byMass = greatestMass ? (whole * largest) / greatestMass.value : 1;
  return Math.ceil(Math.max(byVolume, byMass) - 1e-6);
}
