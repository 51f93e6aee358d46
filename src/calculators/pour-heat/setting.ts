import { answer, type Caution, type EvidenceNote, type Outcome, refuse } from '../../model/evidence/index.ts';
import type { Anchor } from '../../model/resin/anchor.ts';
import { type BaseMaterial, baseMaterial, films, usualBase } from '../../model/resin/base.ts';
import { kineticsOf, type ResinKinetics } from '../../model/resin/fit.ts';
import { type GreatestPour, greatestPourOf } from '../../model/resin/greatest-pour.ts';
import { classKinetics, classThermal, type Kinetics } from '../../model/resin/kinetics.ts';
import type { Base, Channel, Pour } from '../../model/resin/pour.ts';
import { silentOn, timesOrRatiosAtWar } from '../../model/resin/told.ts';
import type { Resin } from '../../model/resin/types.ts';
import type { Inputs } from './inputs.ts';
import { airEvidence, type DayOfPour, inAir, shopAirOf } from './shop-air.ts';

/** Where the kinetics come from: the pot life, the reader's own figures, or both. */
export type KineticsFrom = 'resin' | 'mixed' | 'own';

/**
 * Why nothing can be measured by a sheet: there is none, it names no depth or no pot life, its depth is at war with its pot life, its pot
 * life is no resin's or at war with its second one, or the reader's own kinetics make its depth run away.
 */
export type NoAnchor =
  | 'no-resin'
  | 'sheet-at-war'
  | 'no-depth'
  | 'no-sheet-pot-life'
  | 'at-war'
  | 'no-pot-life'
  | 'two-pot-lives'
  | 'no-yardstick';

/** The pour as asked, and the sheet's own beside it. */
export interface Setting {
  pour: Pour;
  /** What makes its depth, mm: that of the place, and what stands proud of the face. */
  parts: readonly number[];
  resin: Resin | undefined;
  /** The sheet's greatest pour; undefined where there is no resin, its sheet is silent, or its pour cannot be a yardstick. */
  anchor: Anchor | undefined;
  /** Why there is no anchor; undefined where there is one. */
  noAnchor: NoAnchor | undefined;
  /**
   * True where nobody knows how fast it cures: the sheet states no pot life, or is at war with itself. Then no rise, hour, wait or curve of
   * this pour is told; a danger that the model sees all the same is, and a depth that the sheet states itself.
   */
  untold: boolean;
  /** What the sheet or the kind says of one pour; undefined without a resin. */
  stated: GreatestPour | undefined;
  /** Kinetics fitted to the pot life alone, before the sheet's depth slowed them. */
  byPotLife: Kinetics;
  from: KineticsFrom;
  /** Names of the inputs whose own figures lie over those of resin, base or air. */
  own: readonly string[];
  /** Seen from above, mm²; undefined where it was not given. */
  area: number | undefined;
  baseId: string;
  /** True where the thickness of the base was not given. */
  baseThicknessAssumed: boolean;
  /** When in the day it is poured; undefined where the shop keeps one temperature. */
  day: DayOfPour | undefined;
  /** Of the mix, °C, where the reader gave it. */
  resinTemperature: number | undefined;
  evidence: readonly EvidenceNote[];
  cautions: readonly Caution[];
}

const kineticFields = ['k2At25C', 'activationEnergy', 'k1OverK2', 'm', 'n', 'heatOfReaction'] as const;
const mixFields = ['density', 'heatCapacity', 'conductivity'] as const;
const baseFields = ['baseThickness', 'baseDensity', 'baseHeatCapacity', 'baseConductivity'] as const;

/** Those of some fields that were given, over others. */
function over<Name extends string>(
  base: Readonly<Record<Name, number>>,
  given: Readonly<Partial<Record<Name, number | undefined>>>,
  names: readonly Name[],
): Record<Name, number> {
  return Object.fromEntries(names.map((name) => [name, given[name] ?? base[name]])) as Record<Name, number>;
}

/** Read the inputs into a pour and its yardstick. */
export function settingOf(inputs: Inputs): Outcome<Setting> {
  const { resin, resinTemperature } = inputs;
  // What stands proud of the face heats like the rest.
  const depth = inputs.depth + (inputs.proud ?? 0);
  const fit = resin && kineticsOf(resin);
  const own = kineticFields.filter((name) => inputs[name] !== undefined);
  if (!fit && inputs.k2At25C === undefined) {
    return refuse(
      'resin',
      'Neither a resin nor a rate constant was given, so nothing is known of how fast it cures',
      'Pick a resin, or give k2At25C, the rate constant at 25 °C in 1/s.',
    );
  }
  const base = baseOf(inputs);
  if (!base.ok) return base;
  const air = shopAirOf(inputs);
  if (!air.ok) return air;
  const start = fit?.kinetics ?? nearestClass(inputs.k2At25C as number);
  const kinetics: Kinetics = over(start, inputs, kineticFields);
  const mix = over(fit?.thermal ?? classThermal, inputs, mixFields);
  const stated = resin && greatestPourOf(resin, { kinetics, thermal: mix, maySlow: own.length === 0 });
  const noAnchor = whyNone(resin, stated, fit, inputs.k2At25C !== undefined);
  const anchor = stated?.kind === 'stated' && !noAnchor ? stated.anchor : undefined;
  const from: KineticsFrom = !fit ? 'own' : own.length > 0 ? (own.includes('k2At25C') ? 'own' : 'mixed') : 'resin';
  const channel = channelOf(inputs);
  const { pour, day } = inAir(
    {
      // A danger is sought by the cure that goes with the sheet's depth also where nothing else is told by it.
      kinetics:
        (noAnchor === 'no-sheet-pot-life' && stated?.kind === 'stated' ? stated.anchor : anchor)?.kinetics ?? kinetics,
      resin: mix,
      depth,
      base: base.value.base,
      filmTop: inputs.filmTop ?? films[inputs.air ?? 'still'],
      filmBottom: inputs.filmBottom ?? films.under,
      ...(channel ? { channel } : {}),
    },
    air.value,
    resinTemperature,
  );
  return answer({
    pour,
    parts: inputs.proud ? [inputs.depth, inputs.proud] : [depth],
    day,
    resinTemperature,
    resin,
    anchor,
    noAnchor,
    untold: isUntold(resin, noAnchor, inputs.k2At25C !== undefined),
    stated,
    byPotLife: kinetics,
    from,
    own: [...kineticFields, ...mixFields, ...baseFields.slice(1), 'filmTop' as const, 'filmBottom' as const].filter(
      (name) => inputs[name] !== undefined,
    ),
    area: inputs.area,
    baseId: inputs.base ?? 'hardwood',
    baseThicknessAssumed: base.value.base !== null && inputs.baseThickness === undefined,
    evidence: [
      ...(from === 'own' ? ownKinetics(inputs, own, kinetics) : (fit?.evidence ?? [])),
      ...(from === 'mixed' ? ownKinetics(inputs, own, kinetics) : []),
      base.value.evidence,
      ...(channel ? [channelEvidence(inputs)] : []),
      ...airEvidence(day),
      filmEvidence(inputs),
    ],
    cautions: from === 'own' ? [] : (fit?.cautions ?? []),
  });
}

function whyNone(
  resin: Resin | undefined,
  stated: GreatestPour | undefined,
  fit: ResinKinetics | undefined,
  ownRate: boolean,
): NoAnchor | undefined {
  if (!resin || !stated) return 'no-resin';
  if (timesOrRatiosAtWar(resin)) return 'sheet-at-war';
  const unlikely = (id: string) => (!ownRate && fit?.cautions.some((caution) => caution.id === id)) ?? false;
  if (unlikely('pot-life-unlikely')) return 'no-pot-life';
  if (unlikely('second-pot-life-unlikely')) return 'two-pot-lives';
  if (stated.kind === 'silent') return 'no-depth';
  if (stated.kind !== 'stated') return stated.kind;
  // A stated depth is a yardstick only for somebody who knows how fast this very resin cures.
  return !ownRate && silentOn(resin, 'potLife') ? 'no-sheet-pot-life' : undefined;
}

const contradictions: readonly NoAnchor[] = ['sheet-at-war', 'at-war', 'no-pot-life', 'two-pot-lives'];

function isUntold(resin: Resin | undefined, noAnchor: NoAnchor | undefined, ownRate: boolean): boolean {
  if (!resin || !noAnchor) return false;
  return contradictions.includes(noAnchor) || (!ownRate && silentOn(resin, 'potLife'));
}

/** The class whose rate is nearer, for what is not given beside a rate of the reader's own. */
function nearestClass(k2: number): Kinetics {
  const middle = Math.sqrt(classKinetics.fast.k2At25C * classKinetics.slow.k2At25C);
  return k2 > middle ? classKinetics.fast : classKinetics.slow;
}

function baseOf(inputs: Inputs): Outcome<{ base: Base | null; evidence: EvidenceNote }> {
  const own = baseFields.filter((name) => inputs[name] !== undefined);
  if (inputs.base === 'none') {
    const [first] = own;
    if (first) {
      return refuse(
        first,
        'A figure of the base was given, and the base is none',
        'Leave the figure out, or pick what the resin is poured on.',
      );
    }
    return answer({
      base: null,
      evidence: { text: 'Air meets the underside of the resin: no base is reckoned.', basis: 'shop-practice' },
    });
  }
  const material: BaseMaterial = baseMaterial(inputs.base ?? 'hardwood');
  const thickness = inputs.baseThickness ?? usualBase.thickness;
  const evidence: EvidenceNote =
    own.length > 0 && own.some((name) => name !== 'baseThickness')
      ? { text: 'The figures of the base are the reader’s own, over those of the material.', basis: 'supplier-sheet' }
      : material.evidence;
  if (thickness === 0) return answer({ base: null, evidence });
  return answer({
    base: {
      thickness,
      density: inputs.baseDensity ?? material.density,
      heatCapacity: inputs.baseHeatCapacity ?? material.heatCapacity,
      conductivity: inputs.baseConductivity ?? material.conductivity,
    },
    evidence,
  });
}

/** Woods that may stand beside a channel as well as under it. */
const woods: readonly BaseMaterial['id'][] = ['hardwood', 'softwood'];

const besideChannel = (base: Inputs['base']) =>
  baseMaterial(woods.find((id) => id === (base ?? 'hardwood')) ?? 'hardwood');

function channelOf({ width, base }: Inputs): Channel | undefined {
  if (width === undefined) return undefined;
  const { density, heatCapacity, conductivity } = besideChannel(base);
  return { width, sides: { density, heatCapacity, conductivity } };
}

function channelEvidence({ base }: Inputs): EvidenceNote {
  const beside = besideChannel(base).label.toLowerCase();
  return {
    text: `Heat of a channel is followed in its cross-section: ${beside} at both sides up to the face of the resin, the base under both, the same air over all, and no loss at its ends. The sheet’s own depth is taken for a pool, a wide pour, unless it says otherwise.`,
    basis: 'derived',
  };
}

const words: Readonly<Record<(typeof kineticFields)[number], string>> = {
  k2At25C: 'k₂',
  activationEnergy: 'the activation energy',
  k1OverK2: 'k₁/k₂',
  m: 'm',
  n: 'n',
  heatOfReaction: 'the heat of reaction',
};

function ownKinetics(
  inputs: Inputs,
  own: readonly (typeof kineticFields)[number][],
  kinetics: Kinetics,
): EvidenceNote[] {
  const rest = kineticFields.filter((name) => inputs[name] === undefined);
  return [
    { text: `The reader’s own: ${own.map((name) => words[name]).join(', ')}.`, basis: 'supplier-sheet' },
    ...(rest.length > 0 && own.includes('k2At25C')
      ? [
          {
            text: `Not given, and taken from ${inputs.resin ? 'the resin' : 'the nearer of the two classes'}: ${rest.map((name) => words[name]).join(', ')} (E ${(kinetics.activationEnergy / 1000).toFixed(1)} kJ/mol, H ${(kinetics.heatOfReaction / 1000).toFixed(0)} J/g).`,
            basis: 'memory' as const,
          },
        ]
      : []),
  ];
}

function filmEvidence({ filmTop, air }: Inputs): EvidenceNote {
  if (filmTop !== undefined)
    return { text: 'The film coefficient over the resin is the reader’s own.', basis: 'supplier-sheet' };
  return {
    text: `Air and radiation over the resin take ${films[air ?? 'still']} W/(m²·K), under the base ${films.under}: rules of free convection for a warm face of 0.6 by 0.3 m, and radiation. 6 instead of 10 about doubles the rise, 14 takes a third off it.`,
    basis: 'memory',
  };
}
