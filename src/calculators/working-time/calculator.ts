import * as z from 'zod/mini';
import { cautionById } from '../../model/evidence/cautions.ts';
import {
  answer,
  type Caution,
  cite,
  type EvidenceNote,
  type Figure,
  refuse,
  type Verdict,
} from '../../model/evidence/index.ts';
import { amount, formatNumber } from '../../model/quantity/index.ts';
import { classClock, gelConversion, gelPoint, rateFactor, viscosityRise } from '../../model/resin/clock.ts';
import type { CupRun } from '../../model/resin/cup.ts';
import { cupHeat } from '../../model/resin/cup-heat.ts';
import { kineticsOf, type ResinKinetics } from '../../model/resin/fit.ts';
import { sheetWarnings } from '../../model/resin/resin.ts';
import { silentOn, warIn } from '../../model/resin/told.ts';
import type { Resin } from '../../model/resin/types.ts';
import { calculator } from '../kit/calculator.ts';
import { quantityField } from '../kit/fields.ts';
import { resinField } from '../kit/resin-field.ts';
import {
  conversionAt,
  cup,
  cureSeries,
  leftOnceSpread,
  massTable,
  type Start,
  type Times,
  temperatureTable,
  thinLayer,
  timeFigure,
} from './times.ts';

export const workingTimeCalculator = calculator({
  id: 'working-time',
  title: 'Working time of a cup',
  question: 'How long can I work with this cup of resin, and what does spreading it gain?',
  summary:
    'Takes the resin, the mass in the cup and the temperature, and gives the time until the cup grows too thick and until it gels, and the same for a thin layer. The clock is fitted to the pot life of the resin’s data sheet; the cup heats itself and is followed by conduction of heat and cure together.',
  inputs: z.strictObject({
    resin: resinField({ label: 'Resin', help: 'A generic kind, or the data sheet of yours.' }),
    mass: quantityField({
      label: 'Mixed resin in the cup',
      dimension: 'mass',
      minimum: 5,
      maximum: 20_000,
      examples: ['200 g', '7 oz'],
    }),
    shopTemperature: quantityField({
      label: 'Temperature of the shop',
      dimension: 'temperature',
      minimum: 0,
      maximum: 45,
      examples: ['22 °C', '72 °F'],
    }),
    resinTemperature: z.optional(
      quantityField({
        label: 'Temperature of the mixed resin',
        help: 'Where it was warmed or stood elsewhere. Empty: as the shop.',
        dimension: 'temperature',
        minimum: 0,
        maximum: 60,
        examples: ['30 °C', '86 °F'],
      }),
    ),
    spreadAfter: z.optional(
      quantityField({
        label: 'Spread thin after',
        help: 'Time from mixing until the cup is poured out and spread.',
        dimension: 'time',
        minimum: 0,
        maximum: 20 * 86_400,
        examples: ['10 min', '1 h'],
      }),
    ),
  }),
  example: {
    metric: { resin: 'fast-coating-1-1', mass: '200 g', shopTemperature: '22 °C', spreadAfter: '10 min' },
    inch: { resin: 'fast-coating-1-1', mass: '7 oz', shopTemperature: '72 °F', spreadAfter: '10 min' },
  },
  figures: {
    cupWork: { label: 'Working time in the cup' },
    leftAfterSpreading: { label: 'Left once spread thin' },
    cupGel: { label: 'The cup gels after' },
    filmWork: { label: 'Working time of a thin layer' },
    filmGel: { label: 'A thin layer gels after' },
    stretch: { label: 'Times longer, spread thin at once' },
  },
  compute({ resin, mass, shopTemperature, resinTemperature, spreadAfter }) {
    const known = kineticsOf(resin);
    const untold = untoldBy(resin, known);
    if (untold) {
      return answer({
        verdict: { level: 'unknown', text: untold },
        figures: {},
        cautions: [...sheetWarnings(resin), ...known.cautions, ...standingCautions()],
        evidence: [],
      });
    }
    const start = { air: shopTemperature, ...(resinTemperature === undefined ? {} : { resin: resinTemperature }) };
    const run = cup(known, mass, { ...start, until: 'peak' });
    if (!run) {
      return refuse(
        'resin',
        `${resin.name} would not gel in this cup in any time that can be followed`,
        'Look at the pot life again.',
      );
    }
    const thin = thinLayer(known, shopTemperature);
    const own = statedFor(resin, mass, shopTemperature, resinTemperature);
    const figures: Record<string, Figure> = {
      cupWork: timeFigure('Working time in the cup', run.work, own === 'usable' ? asStated(resin) : {}),
      cupGel: timeFigure('The cup gels after', run.gel, own === 'gel' ? asStated(resin) : {}),
      filmWork: timeFigure('Working time of a thin layer', thin.work, {
        note: 'Spread at once, a few millimetres deep at most.',
      }),
      filmGel: timeFigure('A thin layer gels after', thin.gel),
      stretch: {
        label: 'Times longer, spread thin at once',
        value: thin.work / run.work,
        unit: '1',
        basis: 'memory',
        digits: 2,
      },
    };
    if (spreadAfter !== undefined)
      figures.leftAfterSpreading = timeFigure(
        'Left once spread thin',
        leftOnceSpread(known, shopTemperature, conversionAt(run, spreadAfter)),
        { note: 'Counted from spreading, by the part of the cup that is furthest on.' },
      );
    const mine = [
      ...spreading(run, spreadAfter),
      ...cupHeat(run, mass, shopTemperature),
      ...sheetWarnings(resin),
      ...known.cautions,
      ...kindOnly(resin),
    ];
    return answer({
      verdict: verdictOf(run, thin, mass, start, spreadAfter, mine),
      figures,
      series: [cureSeries(known, run, shopTemperature)],
      tables: [massTable(known, start), temperatureTable(known, mass, start)],
      cautions: [...mine, tenDegrees(known, mass, run, thin, start), ...standingCautions()],
      evidence: [
        ...known.evidence,
        cite(classClock, 'Gives the times of the thin layer.'),
        cite(
          viscosityRise,
          'Working time ends where the resin is about twice as thick as when it was mixed, at a conversion of 0.20.',
        ),
        cite(gelConversion, `The gel is at a conversion of ${formatNumber(gelPoint)}.`),
        cupNote,
      ],
    });
  },
});

/** Why no time can be given: the sheet states no pot life, is at war with itself, or one that no resin for pouring has; a generic kind's is not the sheet's. */
function untoldBy(resin: Resin, { cautions }: ResinKinetics): string | undefined {
  if (silentOn(resin, 'potLife'))
    return 'Your sheet names no pot life, so nothing can be said of a cup of it. Ask the maker: how long, for how many grams, at what temperature.';
  const war = warIn(resin);
  if (war) return `No times for ${resin.name}: ${war}. Look at the sheet again, or ask the maker.`;
  if (cautions.some(({ id }) => id === 'pot-life-unlikely'))
    return 'The pot life of your sheet is that of no epoxy for coating or casting. Look at it again: the time, its unit, mass and temperature.';
  return undefined;
}

const shown = (seconds: number) => amount(seconds, 's', 2);
const grams = (value: number) => amount(value, 'g', 3, true);

/** What the cup comes to: its time and the half of it to plan by, and what spreading gains. */
function verdictOf(
  run: CupRun,
  thin: Times,
  mass: number,
  { air, resin }: Start,
  after: number | undefined,
  own: readonly Caution[],
): Verdict {
  if (after !== undefined && after >= run.gel)
    return {
      level: 'stop',
      text: `After ${shown(after)} this cup has gelled: there is nothing left to spread. It gels after ${shown(run.gel)}.`,
    };
  const where = `${grams(mass)} at ${amount(air, 'Cel')}${resin === undefined ? '' : `, mixed at ${amount(resin, 'Cel')}`}`;
  const text = `About ${shown(run.work)} for ${where}: be done in ${shown(run.work / 2)}; spread thin at once it stays workable for ${shown(thin.work)}.`;
  return { level: own.some(({ level }) => level !== 'note') ? 'care' : 'good', text };
}

/** A generic kind’s clock is nobody’s sheet. */
function kindOnly(resin: Resin): Caution[] {
  if (resin.fromSheet) return [];
  return [
    {
      id: 'clock-of-a-kind',
      level: 'warning',
      own: true,
      text: 'This is the clock of a generic kind, from memory: enter the pot life of your sheet.',
      basis: 'memory',
    },
  ];
}

const standing = ['resin-cup-heat', 'resin-skin', 'resin-air'];
const standingCautions = () => standing.flatMap((id) => cautionById(id) ?? []);

const cupNote: EvidenceNote = {
  text: 'The cup is a cylinder, height 1.065 of its radius, with 10 W/(m²·K) above, 9 at a wall of 0.8 mm of plastic and 6 below; conduction and cure are solved together in rings and layers, and its time is that of the part furthest on. A wide shallow cup lasts longer than this, a tall narrow one about as long.',
  basis: 'memory',
};

/** What the pot life means, where it was stated for just this cup. */
function statedFor(
  { figures: { potLife, potLifeMass, potLifeTemperature }, potLifeMeans }: Resin,
  mass: number,
  celsius: number,
  warmed: number | undefined,
): Resin['potLifeMeans'] | undefined {
  if (!potLife || !potLifeMass || !potLifeTemperature || warmed !== undefined) return undefined;
  const same = Math.abs(mass / potLifeMass.value - 1) < 0.01 && Math.abs(celsius - potLifeTemperature.value) < 0.5;
  return same ? potLifeMeans : undefined;
}

function asStated({ figures: { potLife }, fromSheet }: Resin): Partial<Figure> {
  return {
    ...(potLife ? { basis: potLife.basis } : {}),
    note: `The pot life of the ${fromSheet ? 'sheet' : 'kind'} is stated for just this cup.`,
  };
}

function spreading(run: CupRun, after: number | undefined): Caution[] {
  if (after === undefined || after < run.work) return [];
  const gone = after >= run.gel;
  return [
    {
      id: gone ? 'gelled-in-cup' : 'too-late-to-spread',
      level: gone ? 'danger' : 'warning',
      own: true,
      text: gone
        ? `After ${shown(after)} the cup has gelled: do not pour it, set it outdoors.`
        : `After ${shown(after)} the cup is past its working time: it will not level. Mix less, or spread sooner.`,
      basis: 'memory',
    },
  ];
}

/** What ten degrees more, of shop and resin alike, do to a thin layer and to this cup: the rule of thumb holds for the first alone. */
function tenDegrees(known: ResinKinetics, mass: number, run: CupRun, thin: Times, { air, resin }: Start): Caution {
  const warmer = cup(known, mass, { air: air + 10, ...(resin === undefined ? {} : { resin: resin + 10 }) });
  const film = rateFactor(known.kinetics.activationEnergy, air, air + 10);
  const own = warmer ? run.gel / warmer.gel : film;
  const factor = (value: number) => formatNumber(value, 2);
  const why =
    own > 1.15 * film
      ? 'since then it heats itself as well'
      : 'since it heats itself at either temperature and more can hardly be gained';
  return {
    id: 'ten-degrees',
    level: 'note',
    text: `${amount(10, 'K', 2)} more${resin === undefined ? '' : ' in shop and cup'} divide the time of a thin layer by ${factor(film)} and that of this cup by ${factor(own)}, ${why}.`,
    why: `That ${amount(10, 'K', 2)} halve the time is a rule for thin layers only. Spread thin at once, this resin stays workable ${factor(thin.work / run.work)} times as long and gels ${factor(thin.gel / run.gel)} times later; towards the end of the time in the cup that gain is gone.`,
    basis: 'memory',
  };
}
