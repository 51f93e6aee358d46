import { type Basis, derivedBasis } from '../../model/evidence/index.ts';
import { amount } from '../../model/quantity/index.ts';
import { indexBand, indexBandWords, levelWords } from '../../model/resin/anchor.ts';
import { statedAt } from '../../model/resin/greatest-pour.ts';
import { coolWithin, runawayTemperature } from '../../model/resin/pour.ts';
import { depthRuleBand } from '../../model/resin/pour-plan.ts';
import type { PourAnswer } from './answer.ts';
import type { Figures } from './figures.ts';
import { runFigures } from './run-figures.ts';
import type { Setting } from './setting.ts';
import { warmestOf } from './shop-air.ts';

const noDeeper = 'No greater depth was tried.';
const stops = `It runs away: the calculation stops at ${amount(runawayTemperature, 'Cel')}.`;

/** The figures of an answer. */
export function figuresOf(setting: Setting, found: PourAnswer): Figures {
  return {
    ...depthFigures(setting, found),
    ...layerFigures(found),
    ...runFigures(setting, found),
    ...poolFigures(setting, found),
    ...baseFigure(setting),
    ...indexFigures(setting, found),
    ...amountFigures(found),
  };
}

/** What may be told of a pour of which nobody knows how fast it cures: what its sheet states itself, and arithmetic with that. */
export function untoldFigures(setting: Setting, found: PourAnswer): Figures {
  const { bySheet } = found;
  if (!bySheet) return {};
  const { layers } = bySheet;
  return {
    ...(layers
      ? {
          layers: {
            value: layers.count,
            basis: 'derived',
            note: 'At least: as many equal layers as keep each within what the sheet allows in one pour.',
          },
          layerDepth: { value: layers.depth, basis: 'derived' },
        }
      : {}),
    ...sheetDepthFigure(setting),
    ...amountFigures(found),
  };
}

/** Basis of what the model makes of a sheet's or a kind's depth: never that of the sheet, which did not say it. */
function modelled({ stated, resin }: Setting): Basis {
  if (!stated || stated.kind === 'silent' || stated.temperatureAssumed) return 'memory';
  return derivedBasis([stated.ofSheet ? 'derived' : (resin?.figures.greatestDepth?.basis ?? 'memory')]);
}

const sheetOrKind = ({ stated }: Setting) => (stated && stated.kind !== 'silent' && stated.ofSheet ? 'sheet' : 'kind');

function depthFigures(setting: Setting, { cap, greatest, limits }: PourAnswer): Figures {
  const { anchor, stated } = setting;
  if (!cap || !anchor || stated?.kind !== 'stated' || !greatest || greatest.kind === 'none') return {};
  const who = sheetOrKind(setting);
  const own = `the ${who}’s own ${amount(anchor.depth, 'mm', 2)} at ${statedAt(stated)}`;
  const reached = limits.find(({ depth }) => depth !== undefined && depth <= cap.depth);
  const width = setting.pour.channel && amount(setting.pour.channel.width, 'mm', 2);
  const notes = {
    model: `Warms as much as ${own}, over this base and in this air${width ? `, ${width} wide` : ''}.`,
    sheet: `No deeper than ${own}, however much deeper the model would go${width ? ` in a channel ${width} wide` : ''}.`,
    amount: `There this pour reaches the ${amount(reached?.figure.value ?? 0, reached?.figure.unit ?? 'mL')} that the sheet allows at once.`,
  };
  const most = cap.by === 'model' ? anchor.depth : cap.depth;
  const low = Math.min(cap.depth, greatest.depth * (1 - depthRuleBand));
  const high = Math.max(cap.depth, Math.min(most, greatest.depth * (1 + depthRuleBand)));
  const basis = modelled(setting);
  return {
    greatestDepthHere: {
      value: cap.depth,
      basis,
      // What a sheet states is said as it is everywhere; what was worked out is never said to be more.
      ...(cap.by === 'sheet' ? {} : { limit: true }),
      ...(low < cap.depth || high > cap.depth
        ? {
            low,
            high,
            band: `What invented resins that fit one sheet differ by, from ${amount(15, 'Cel')} to ${amount(30, 'Cel')}; never beyond the sheet.`,
          }
        : {}),
      note: notes[cap.by],
    },
    ...(greatest.depth > cap.depth * 1.01
      ? {
          depthByModel: {
            value: greatest.depth,
            basis: derivedBasis([basis, 'memory']),
            ...(greatest.kind === 'more' ? { low: greatest.depth, band: noDeeper } : {}),
            note: `${greatest.kind === 'more' ? 'More than that. ' : ''}${
              setting.pour.channel
                ? 'It holds for this width alone, and for this shop.'
                : 'A cold shop that is warmed later would make it far too deep.'
            }`,
          },
        }
      : {}),
  };
}

function sheetDepthFigure({ resin, stated }: Setting): Figures {
  const sheet = resin?.figures.greatestDepth;
  if (!sheet || !stated || stated.kind === 'silent') return {};
  return {
    sheetDepth: {
      value: sheet.value,
      basis: sheet.basis,
      note: `${stated.ofSheet ? 'By the sheet, at' : 'By the generic kind, at'} ${statedAt(stated)}. ${sheet.note ?? ''}`.trim(),
    },
  };
}

function indexFigures(setting: Setting, found: PourAnswer): Figures {
  const { anchor, pour, stated } = setting;
  const sheetDepth = sheetDepthFigure(setting);
  if (!anchor || found.index === undefined || !found.level) return sheetDepth;
  const basis = modelled(setting);
  const away = warmestOf(pour) - anchor.temperature;
  const runaway = found.run.outcome === 'runaway';
  const [low, high] = indexBand(found.index, away);
  return {
    heatIndex: {
      value: found.index,
      basis,
      ...(runaway ? { low: found.index } : { low, high }),
      band: runaway ? stops : indexBandWords,
      note: `${runaway ? 'More than that. ' : ''}${levelWords[found.level]}${stated?.kind === 'stated' && !stated.ofSheet ? ' Measured by the generic kind’s depth: enter your own sheet.' : ''}`,
    },
    ...(found.byRule === undefined
      ? {}
      : {
          depthByRule: {
            value: found.byRule,
            basis,
            low: found.byRule * (1 - depthRuleBand),
            high: found.byRule * (1 + depthRuleBand),
            band: 'What invented resins that fit one sheet differ by.',
            note: `To compare: 1.70, 1.30, 1 and 0.78 of the depth at ${amount(25, 'Cel')} in shops of ${amount(15, 'Cel')}, ${amount(20, 'Cel')}, ${amount(25, 'Cel')} and ${amount(30, 'Cel')}, whatever the base.`,
          },
        }),
    ...sheetDepth,
  };
}

/** What a pool as deep as a channel would do, for how much the walls of wood count. */
function poolFigures(setting: Setting, { asPool }: PourAnswer): Figures {
  if (!asPool) return {};
  const { run, greatest } = asPool;
  const runaway = run.outcome === 'runaway';
  return {
    riseAsPool: {
      value: Math.max(0, run.peakRise),
      basis: 'memory',
      ...(runaway ? { low: run.peakRise, band: stops, note: 'Runaway: more than that.' } : {}),
    },
    ...(greatest && greatest.kind !== 'none'
      ? {
          depthAsPool: {
            value: greatest.depth,
            basis: modelled(setting),
            ...(greatest.kind === 'more' ? { low: greatest.depth, band: noDeeper } : {}),
            note: `${greatest.kind === 'more' ? 'More than that. ' : ''}Without walls of wood near to each other.`,
          },
        }
      : {}),
  };
}

/** The thickness that was taken for a base, where none was given. */
function baseFigure({ pour, baseThicknessAssumed }: Setting): Figures {
  if (!pour.base || !baseThicknessAssumed) return {};
  return {
    baseThickness: {
      value: pour.base.thickness,
      basis: 'memory',
      note: 'Give your own: a thin base takes up less heat.',
    },
  };
}

function amountFigures({ limits }: PourAnswer): Figures {
  return Object.fromEntries(
    limits.flatMap(({ figure: { unit, value }, here }) =>
      here === undefined
        ? []
        : [
            [
              unit === 'g' ? 'pourMass' : 'pourVolume',
              { value: here, basis: 'derived', note: `The sheet allows ${amount(value, unit)} in one pour.` },
            ],
          ],
    ),
  );
}

const waitWords = {
  gel: 'Until the layer below has gelled through.',
  cool: `Until the layer below has cooled to within ${amount(coolWithin, 'K')} of the air.`,
  window: 'Until the recoat window of the resin opens.',
  sand: 'Until the layer below may be sanded: its window shuts before it has cooled, so it is sanded first, by hand, wet or with mask and gloves.',
} as const;

function layerFigures({ layers }: PourAnswer): Figures {
  if (!layers) return {};
  const { wait } = layers;
  return {
    layers: {
      value: layers.count,
      basis: 'derived',
      note: 'The fewest equal layers that each stay within the depth allowed.',
    },
    layerDepth: { value: layers.depth, basis: 'derived' },
    ...(wait
      ? {
          waitBetween: {
            value: wait.from,
            basis: 'derived',
            note: `${waitWords[wait.fromBy]} ${untilWords(wait)}`,
          },
          lastLayer: { value: (layers.count - 1) * wait.from, basis: 'derived' },
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
