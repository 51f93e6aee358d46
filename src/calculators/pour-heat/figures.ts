import { type Basis, derivedBasis, type Figure } from '../../model/evidence/index.ts';
import { amount } from '../../model/quantity/index.ts';
import { indexBand, indexBandWords, levelWords } from '../../model/resin/anchor.ts';
import { runawayTemperature } from '../../model/resin/pour.ts';
import { depthRuleBand } from '../../model/resin/pour-plan.ts';
import { lengthInBoth, riseInBoth, temperatureInBoth } from '../kit/both-units.ts';
import type { PourAnswer } from './answer.ts';
import type { Setting } from './setting.ts';

/** Every figure that the calculator may give, in order. */
export const figureWords = {
  heatIndex: {
    label: 'Heat index (at most 1)',
    help: 'Rise of this pour over the rise of the deepest pour that the sheet allows at the temperature that it names.',
  },
  greatestDepthHere: { label: 'Greatest depth in this shop' },
  layers: { label: 'Layers' },
  layerDepth: { label: 'Depth of each layer' },
  waitBetween: { label: 'Wait between layers' },
  peakRise: { label: 'Rise above the air, by the model' },
  timeToPeak: { label: 'Hottest after' },
  timeToWork: { label: 'Too thick to work after' },
  timeToFirstGel: { label: 'Begins to gel after' },
  timeToLastGel: { label: 'Gelled through after' },
  sheetDepth: { label: 'Greatest depth of the sheet', minor: true },
  depthByRule: { label: 'Depth in this shop by the depth rule', minor: true },
  hottestHeight: { label: 'Hottest at a height of', minor: true },
  ceiling: { label: 'Greatest rise that the heat could give', minor: true },
} as const;

type Name = keyof typeof figureWords;

const figure = (name: Name, value: number, unit: string, basis: Basis, more: Partial<Figure> = {}): Figure => ({
  label: figureWords[name].label,
  value,
  unit,
  basis,
  digits: 2,
  ...more,
});

/** Rises from a pot life alone, 5 to 95 % of 120 invented resins: half to two and a half times, wider where it grows hot. */
const riseBand = (rise: number): readonly [number, number] => (rise > 40 ? [0.35, 2.8] : [0.5, 2.5]);
const riseBandWords =
  '5 to 95 % of 120 invented resins of the same pot life: the spread of what is assumed, not of measurements.';

/** Gel of a pour from a pot life alone, by the same resins. */
const timeBand = (potLife: number | undefined): readonly [number, number] =>
  potLife !== undefined && potLife < 3 * 3600 ? [0.72, 1.62] : [0.75, 1.25];

/** The figures of an answer. */
export function figuresOf(setting: Setting, found: PourAnswer): Record<string, Figure> {
  return {
    ...indexFigures(setting, found),
    ...layerFigures(found),
    ...runFigures(setting, found),
  };
}

function indexFigures({ resin, anchor, pour }: Setting, found: PourAnswer): Record<string, Figure> {
  const sheet = resin?.figures.greatestDepth;
  const sheetDepth: Record<string, Figure> = sheet
    ? {
        sheetDepth: {
          ...sheet,
          label: sheet.basis === 'supplier-sheet' ? figureWords.sheetDepth.label : 'Greatest depth of the kind',
          note: `At ${temperatureInBoth(anchor?.temperature ?? resin?.figures.greatestDepthTemperature?.value ?? 25)}. ${sheet.note ?? ''}`.trim(),
        },
      }
    : {};
  if (!anchor || found.index === undefined || !found.level) return sheetDepth;
  const basis = derivedBasis([sheet?.basis ?? 'memory']);
  const away = pour.shopTemperature - anchor.temperature;
  const runaway = found.run.outcome === 'runaway';
  const [low, high] = indexBand(found.index, away);
  const ofKind =
    sheet?.basis !== 'supplier-sheet' ? ' Measured by the generic kind’s depth: enter your own sheet.' : '';
  return {
    heatIndex: figure('heatIndex', found.index, '1', basis, {
      ...(runaway ? { label: 'Heat index (at most 1): more than', low: found.index } : { low, high }),
      band: runaway ? `It runs away: the calculation stops at ${runawayTemperature} °C.` : indexBandWords,
      note: `${levelWords[found.level]}${ofKind}`,
    }),
    ...(found.greatest && found.greatest.kind !== 'none'
      ? {
          greatestDepthHere: figure('greatestDepthHere', found.greatest.depth, 'mm', basis, {
            ...(found.greatest.kind === 'more'
              ? { label: 'Greatest depth in this shop, more than', low: found.greatest.depth }
              : {
                  low: found.greatest.depth * (1 - depthRuleBand),
                  high: found.greatest.depth * (1 + depthRuleBand),
                }),
            band: 'What invented resins that fit one sheet differ by, from 15 to 30 °C.',
            note: `Warms as much as the ${sheet?.basis === 'supplier-sheet' ? 'sheet' : 'kind'}’s own ${lengthInBoth(anchor.depth)} at ${temperatureInBoth(anchor.temperature)}, over this base and in this air.`,
          }),
        }
      : {}),
    ...(found.byRule === undefined
      ? {}
      : {
          depthByRule: figure('depthByRule', found.byRule, 'mm', basis, {
            low: found.byRule * (1 - depthRuleBand),
            high: found.byRule * (1 + depthRuleBand),
            band: 'What invented resins that fit one sheet differ by.',
            note: 'For comparison: 1.70, 1.30, 1 and 0.78 of the depth at 25 °C (77 °F) in shops of 15, 20, 25 and 30 °C (59, 68, 77 and 86 °F), whatever the base.',
          }),
        }),
    ...sheetDepth,
  };
}

const waitWords = {
  gel: 'Until the layer below has gelled through.',
  cool: `Until the layer below has cooled to within ${riseInBoth(5)} of the air.`,
  window: 'Until the recoat window of the resin opens.',
  sand: 'Until the layer below may be sanded: its window shuts before it has cooled, so it is sanded first, by hand, wet or with mask and gloves.',
} as const;

function layerFigures({ layers }: PourAnswer): Record<string, Figure> {
  if (!layers) return {};
  const { wait } = layers;
  return {
    layers: figure('layers', layers.count, '1', 'derived', {
      digits: 3,
      note: 'The fewest equal layers that each stay within the depth allowed.',
    }),
    layerDepth: figure('layerDepth', layers.depth, 'mm', 'derived'),
    ...(wait
      ? {
          waitBetween: figure('waitBetween', wait.from, 's', 'derived', {
            note: `${waitWords[wait.fromBy]} ${untilWords(wait)}`,
          }),
        }
      : {}),
  };
}

function untilWords({ to, toBy, abrade }: NonNullable<NonNullable<PourAnswer['layers']>['wait']>): string {
  const who = toBy === 'sheet' ? 'By the recoat window' : 'By the clock';
  const sand = 'sand and wipe it before you pour.';
  if (abrade && to === null) return `Its sheet leaves no sure window: ${sand}`;
  if (to === null) return 'How long it stays open to the next is not known.';
  return `${who} it takes the next by itself ${abrade ? 'only ' : ''}until ${amount(to, 's', 2)} from mixing${abrade ? `: ${sand}` : '.'}`;
}

function runFigures({ pour, resin, from }: Setting, { run, hotter }: PourAnswer): Record<string, Figure> {
  const own = from === 'own';
  const basis: Basis = own ? 'derived' : derivedBasis(['memory']);
  const runaway = run.outcome === 'runaway';
  const ceiling =
    pour.kinetics.heatOfReaction / pour.resin.heatCapacity + Math.max(0, pour.resinTemperature - pour.shopTemperature);
  const rise = Math.max(0, run.peakRise);
  const [least, most] = riseBand(rise);
  const [sooner, later] = timeBand(resin?.figures.potLife?.value);
  const time = (name: Name, value: number | null, early: number | null | undefined, note?: string) => {
    if (value === null) return {};
    const low = Math.min(sooner * value, sooner * (early ?? value));
    return {
      [name]: figure(name, value, 's', basis, {
        ...(own ? {} : { low, high: later * value, band: riseBandWords }),
        ...(note ? { note } : {}),
      }),
    };
  };
  const stopNote = `It passes ${runawayTemperature} °C before any of it counts as gelled; from there it sets within minutes.`;
  return {
    peakRise: figure('peakRise', rise, 'K', basis, {
      digits: own ? 3 : 2,
      ...(runaway
        ? {
            label: 'Rise above the air: runaway, more than',
            low: rise,
            band: `The calculation stops at ${runawayTemperature} °C.`,
            note: 'Runaway. How hot it grows is not said: past that the model is wrong.',
          }
        : {
            ...(own
              ? {}
              : {
                  low: least * rise,
                  high: Math.max(rise, Math.min(most * rise, ceiling)),
                  band: riseBandWords,
                }),
            note:
              run.peakRise > 0
                ? 'An estimate of the model, no promise: rely on the index.'
                : 'The resin is poured colder than the air and never grows warmer than it.',
          }),
    }),
    timeToPeak: {
      ...figure('timeToPeak', run.timeToPeak, 's', basis, { digits: own ? 3 : 2 }),
      ...(runaway ? { label: `Passes ${runawayTemperature} °C after` } : {}),
      ...(runaway || pour.resinTemperature <= pour.shopTemperature || run.timeToPeak > 60
        ? {}
        : { note: 'It is warmest as it is poured.' }),
    },
    ...time('timeToWork', run.timeToWork, hotter?.timeToWork, 'From mixing: its thickness has about doubled.'),
    ...time(
      'timeToFirstGel',
      run.timeToFirstGel ?? (runaway ? run.timeToPeak : null),
      hotter && (hotter.timeToFirstGel ?? hotter.timeToPeak),
      run.timeToFirstGel === null && runaway ? stopNote : undefined,
    ),
    ...time('timeToLastGel', run.timeToLastGel, hotter && (hotter.timeToLastGel ?? hotter.timeToPeak)),
    hottestHeight: figure('hottestHeight', run.hottestHeight, 'mm', basis, {
      note: 'Above the underside of the resin.',
    }),
    ceiling: figure('ceiling', ceiling, 'K', basis, {
      note: 'Heat of reaction over heat capacity, if none of it were lost.',
    }),
  };
}
