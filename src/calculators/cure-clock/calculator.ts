import * as z from 'zod/mini';
import { cautionById } from '../../model/evidence/cautions.ts';
import { answer, cite, type Figure, type Result, type ResultTable } from '../../model/evidence/index.ts';
import { amount, formatNumber, formatQuantity } from '../../model/quantity/index.ts';
import { cureRate, glassTransition, rateFactor, vitrification } from '../../model/resin/clock.ts';
import { kineticsOf } from '../../model/resin/fit.ts';
import { sheetWarnings } from '../../model/resin/resin.ts';
import { type CureEvent, type CureEventId, type Timetable, timetableOf } from '../../model/resin/timetable.ts';
import { toldOf, warIn } from '../../model/resin/told.ts';
import type { Resin } from '../../model/resin/types.ts';
import { farthest, sheetTolerance } from '../../model/resin/waits.ts';
import { calculator } from '../kit/calculator.ts';
import { quantityField } from '../kit/fields.ts';
import { resinField } from '../kit/resin-field.ts';
import { temperatureLogField } from '../kit/temperature-log-field.ts';
import { cautionsOf, standing } from './cautions.ts';
import { type GivenHistory, historyOf } from './history.ts';
import { cureSeries } from './series.ts';
import { verdictOf } from './verdict.ts';
import { eventLabels, noSureWindow, originNote, originWords, sandedLabel, tableLabels } from './words.ts';

const temperature = (label: string, examples: readonly string[], help?: string) =>
  z.optional(
    quantityField({ label, dimension: 'temperature', minimum: 0, maximum: 45, examples, ...(help ? { help } : {}) }),
  );

const hours = (label: string, help: string, minimum: number) =>
  z.optional(
    quantityField({
      label,
      help,
      dimension: 'time',
      elseBare: 'h',
      minimum,
      maximum: 23 * 3600,
      examples: ['10 h', '8 h'],
    }),
  );

const clockBand =
  'The clock a quarter faster and slower; for the end of the window also the span from three quarters to four fifths of the cure.';
const energyBand = 'What the activation energy leaves open where the time is carried over to another temperature.';

export const cureClockCalculator = calculator({
  id: 'cure-clock',
  title: 'Cure clock',
  question: 'When may I pour the next coat, sand, oil and use it, at the temperature of my shop?',
  summary: 'From the resin and the temperature since mixing: when to coat again, sand, oil and use it.',
  inputs: z.strictObject({
    resin: resinField({ label: 'Resin', help: 'A generic kind, or the data sheet of yours.' }),
    shopTemperature: temperature('Temperature of the shop', ['20 °C', '68 °F']),
    dayTemperature: temperature('By day', ['21 °C', '70 °F'], 'While the shop is heated.'),
    nightTemperature: temperature('By night', ['14 °C', '57 °F']),
    warmHours: hours('Hours of day', 'How long the shop is warm each day. Empty: 10 h.', 3600),
    warmHoursLeft: hours('Hours of day left at mixing', 'Empty: mixed as the day begins.', 0),
    log: z.optional(
      temperatureLogField({
        label: 'Log of temperatures since mixing',
        help: 'A time and a temperature a line, the first at mixing: 8 h, 15 °C. Or the rows of a logger.',
      }),
    ),
  }),
  alternatives: [
    {
      label: 'The temperature',
      sets: [
        { label: 'Even', fields: ['shopTemperature'] },
        { label: 'Day and night', fields: ['dayTemperature', 'nightTemperature', 'warmHours', 'warmHoursLeft'] },
        { label: 'A log', fields: ['log'] },
      ],
    },
  ],
  example: {
    metric: { resin: 'fast-coating-1-1', shopTemperature: '20 °C' },
    inch: { resin: 'fast-coating-1-1', shopTemperature: '68 °F' },
  },
  figures: {
    recoatOpens: { label: eventLabels.recoatOpens },
    recoatCloses: { label: eventLabels.recoatCloses },
    sandable: { label: eventLabels.sandable },
    lightUse: { label: eventLabels.lightUse },
    fullCure: { label: eventLabels.fullCure },
    oil: { label: eventLabels.oil },
    foodService: { label: eventLabels.foodService },
    work: { label: eventLabels.work },
    gel: { label: eventLabels.gel },
    conversion: { label: 'Cure reached at the full cure time' },
    glass: { label: 'Glass transition at the full cure time' },
  },
  compute({ resin, ...temperatures }) {
    const { warmHours, warmHoursLeft } = temperatures;
    const inHours = (seconds: number | undefined) => (seconds === undefined ? undefined : seconds / 3600);
    const found = historyOf({ ...temperatures, warmHours: inHours(warmHours), warmHoursLeft: inHours(warmHoursLeft) });
    if (!found.ok) return found;
    const { history, note } = found.value;

    const known = kineticsOf(resin);
    const war = warIn(resin);
    if (war) return answer(atWar(resin, war, found.value));
    const timetable = toldOf(resin, timetableOf(resin, known, history));
    const figures: Record<string, Figure> = {};
    for (const event of timetable.events) {
      const figure = eventFigure(event, timetable, resin);
      if (figure) figures[event.id] = figure;
    }
    return answer({
      verdict: verdictOf(resin, timetable, found.value, history),
      figures: {
        ...figures,
        ...atFullCure(timetable, (conversion) => glassTransition(conversion, known.glass)),
      },
      series: timetable.byClock ? cureSeries(timetable, known.glass, history) : [],
      tables: timetable.events.length > 0 ? [timetableTable(timetable)] : [],
      cautions: cautionsOf(resin, known, found.value, timetable),
      evidence: [
        {
          text: `The sheet wins where it speaks. Its times hold at its temperature and are carried over to yours by the rate of cure. Waits before sanding and use are never made shorter than it says. Full cure, oil and food also wait until the clock has come as far as the sheet’s time brings it at its own temperature less ${amount(sheetTolerance, 'K', 1)}, which is how well a shop keeps one; where that takes more than ${farthest} times the time carried over, there is no date.`,
          basis: 'derived',
        },
        note,
        cite(rateFactor, `Carries times over, with ${(known.kinetics.activationEnergy / 1000).toFixed(1)} kJ/mol.`),
        ...known.evidence,
        cite(cureRate, 'Gives work, gel and the window of a thin layer where nothing else does.'),
        cite(vitrification, 'Slows the cure as the resin turns hard, so that a cold shop ends softer.'),
        cite(
          glassTransition,
          `From ${formatNumber(known.glass.fresh)} °C fresh to ${formatNumber(known.glass.cured)} °C cured, assumed for a ${resin.kinetics} resin.`,
        ),
      ],
    });
  },
});

/** No time at all of a resin whose sheet is at war with itself. */
function atWar(resin: Resin, war: string, { cautions }: GivenHistory): Result {
  return {
    verdict: {
      level: 'unknown',
      text: `No times for ${resin.name}: ${war}. Look at the sheet again, or ask the maker.`,
    },
    figures: {},
    cautions: [...sheetWarnings(resin), ...cautions, ...standing.flatMap((id) => cautionById(id) ?? [])],
    evidence: [],
  };
}

/** Events that have no time where the shop is too cold for the cure. */
const waitsForCure: readonly CureEventId[] = ['lightUse', 'fullCure', 'oil', 'foodService'];

/** The band of a figure of two digits; none where both its ends are written as the figure itself. */
function bandOf(value: number, low: number | null, high: number | null, unit: string, band: string): Partial<Figure> {
  const shown = (each: number) => formatQuantity(each, unit, undefined, { digits: 2 });
  if (low === null || high === null || [low, high].every((end) => shown(end) === shown(value))) return {};
  return { low, high, band };
}

/** A figure of an event, or none where it lies too far off. */
function eventFigure(event: CureEvent, { noWindow }: Timetable, resin: Resin): Figure | undefined {
  const { time, low, high } = event;
  if (time === null) return undefined;
  return {
    label: noWindow && event.id === 'recoatOpens' ? sandedLabel : eventLabels[event.id],
    value: time,
    unit: 's',
    basis: event.basis,
    digits: 2,
    ...bandOf(time, low, high, 's', event.stated ? energyBand : clockBand),
    note: originNote(event, resin),
  };
}

function atFullCure(
  { cured, slower, faster, events }: Timetable,
  glassOf: (conversion: number) => number,
): Record<string, Figure> {
  const time = events.find(({ id }) => id === 'fullCure')?.time;
  if (!cured || typeof time !== 'number') return {};
  const [low, high] = [Math.min(slower.at(time), cured.here), Math.max(faster.at(time), cured.here)];
  const figure = (label: string, unit: string, of: (conversion: number) => number, note: string): Figure => ({
    label,
    value: of(cured.here),
    ...bandOf(of(cured.here), of(low), of(high), unit, 'The clock a quarter slower and faster.'),
    unit,
    basis: 'memory',
    digits: 2,
    note,
  });
  return {
    conversion: figure(
      'Cure reached at the full cure time',
      '%',
      (conversion) => 100 * conversion,
      'When the time to full cure is over.',
    ),
    glass: figure(
      'Glass transition at the full cure time',
      'Cel',
      glassOf,
      'Above it the resin turns leathery and takes prints.',
    ),
  };
}

function timetableTable({ events, noWindow }: Timetable): ResultTable {
  return {
    id: 'timetable',
    title: 'Timetable from mixing',
    columns: [
      { id: 'event', label: 'What' },
      { id: 'time', label: 'After', unit: 's', digits: 2 },
      { id: 'cure', label: 'Cure', unit: '%', digits: 2 },
      { id: 'origin', label: 'From' },
      { id: 'clock', label: 'Clock alone', unit: 's', digits: 2 },
    ],
    rows: [...events]
      .sort((one, other) => (one.time ?? Number.MAX_VALUE) - (other.time ?? Number.MAX_VALUE))
      .map((event) => [
        tableLabels[event.id],
        noWindow && event.id === 'recoatOpens'
          ? noSureWindow
          : (event.time ?? (waitsForCure.includes(event.id) ? 'not at this temperature' : null)),
        event.conversion === null ? null : 100 * event.conversion,
        originWords(event),
        event.clock,
      ]),
    basis: 'memory',
  };
}
