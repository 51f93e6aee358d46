import * as z from 'zod/mini';
import {
  answer,
  type Basis,
  type Caution,
  cite,
  derivedBasis,
  type EvidenceNote,
  type Figure,
  type Series,
  type Verdict,
} from '../../model/evidence/index.ts';
import {
  type Acclimatisation,
  acclimatise,
  coefficientEvidence,
  densityRange,
  equilibriumMoisture,
  fickMean,
  showingTimes,
  stillAirSurface,
  workingDiffusion,
} from '../../model/moisture/index.ts';
import { sorptionCaution } from '../../model/moisture/sorption-caution.ts';
import { densityOf } from '../../model/moisture/wood-density.ts';
import { amount } from '../../model/quantity/index.ts';
import { moistureField } from '../kit/board-fields.ts';
import { calculator } from '../kit/calculator.ts';
import { diffusionField, surfaceField } from '../kit/diffusion-fields.ts';
import { choiceField, quantityField } from '../kit/fields.ts';
import { speciesField } from '../kit/species-field.ts';

const expert = 'For experts';
const day = 86_400;
const shownPoints = 40;

const timeBand =
  'Half and twice the time: diffusion coefficients differ by a factor of two between boards and ways of measuring.';

export const acclimatiseCalculator = calculator({
  id: 'acclimatise',
  title: 'Acclimatising a board',
  question: 'How long must this board stand in the room before it has settled?',
  summary: 'From a board’s thickness, its moisture and the air of the room: the days until it has settled.',
  inputs: z.strictObject({
    thickness: quantityField({
      label: 'Thickness',
      dimension: 'length',
      minimum: 1,
      maximum: 300,
      examples: ['27 mm', '1 1/16 in'],
    }),
    moistureNow: moistureField({
      label: 'Moisture content now',
      help: 'Mean of several readings along the board, not at its ends.',
      examples: ['12 %'],
    }),
    temperature: quantityField({
      label: 'Temperature of the room',
      dimension: 'temperature',
      minimum: -10,
      maximum: 60,
      examples: ['20 °C', '68 °F'],
    }),
    relativeHumidity: quantityField({
      label: 'Relative humidity of the room',
      dimension: 'percent',
      minimum: 0,
      maximum: 99,
      examples: ['45 %'],
    }),
    species: z.optional(speciesField({ label: 'Wood', help: 'Its density decides how fast moisture moves.' })),
    faces: z.optional(
      choiceField({
        label: 'Faces in the air',
        help: 'A board that lies on a bench or on others has one.',
        options: [
          { value: 'both', label: 'Both, on stickers' },
          { value: 'one', label: 'One' },
        ],
        examples: ['both'],
      }),
    ),
    diffusion: diffusionField(expert),
    surface: surfaceField(expert),
    coating: z.optional(
      quantityField({
        label: 'Resistance of a coating, s/m',
        help: 'On each open face: about 1e8 for two coats of varnish, 0 for bare wood.',
        group: expert,
        dimension: 'number',
        minimum: 0,
        maximum: 1e12,
        examples: ['8.7e7', '0'],
      }),
    ),
  }),
  example: {
    metric: {
      thickness: '27 mm',
      moistureNow: '12 %',
      temperature: '20 °C',
      relativeHumidity: '40 %',
      species: 'white-ash',
    },
    inch: {
      thickness: '1 1/16 in',
      moistureNow: '12 %',
      temperature: '68 °F',
      relativeHumidity: '40 %',
      species: 'white-ash',
    },
  },
  figures: {
    withinOne: { label: 'Time until within 1 % of balance' },
    halfWay: { label: 'Time until half-way' },
    balance: { label: 'Moisture content at balance' },
    change: { label: 'Change to come' },
  },
  compute({ thickness, moistureNow, temperature, relativeHumidity, species, faces, diffusion, surface, coating }) {
    const balance = equilibriumMoisture(temperature, relativeHumidity);
    const wood = densityOf(species);
    const d = diffusion ?? workingDiffusion(wood.density, temperature, Math.min(30, (moistureNow + balance) / 2));
    const outcome = acclimatise({
      thickness,
      faces: faces ?? 'both',
      start: moistureNow,
      balance,
      diffusion: d,
      surface: surface ?? stillAirSurface,
      coating: coating ?? 0,
    });
    if (!outcome.ok) return outcome;
    const board = outcome.value;
    const basis: Basis =
      diffusion !== undefined && surface !== undefined ? derivedBasis(['derived']) : derivedBasis(['memory']);
    const time = (label: string, value: number, [low, high]: readonly [number, number], note?: string): Figure => ({
      label,
      value,
      unit: 's',
      low,
      high,
      band: timeBand,
      basis,
      digits: 2,
      ...(note ? { note } : {}),
    });
    const cautions = cautionsOf(board, {
      thickness,
      start: moistureNow,
      balance,
      temperature,
      humidity: relativeHumidity,
    });
    return answer({
      verdict: verdictOf(board, { start: moistureNow, balance }, cautions),
      figures: {
        withinOne: time(
          'Time until within 1 % of balance',
          board.withinOne,
          board.band.withinOne,
          board.withinOne === 0
            ? 'The mean is within one percent of balance already.'
            : 'Until the mean moisture content is within one percentage point of balance.',
        ),
        halfWay: time('Time until half-way', board.halfWay, board.band.halfWay),
        balance: {
          label: 'Moisture content at balance',
          value: balance,
          unit: '%',
          basis: 'derived',
          citation: { source: 'fpl-gtr-190', locator: 'Eq. 4-5' },
          digits: 2,
        },
        change: { label: 'Change to come', value: balance - moistureNow, unit: '%', basis: 'derived', digits: 2 },
      },
      series: [moistureSeries(board, moistureNow, balance)],
      cautions,
      evidence: [
        cite(fickMean, governs(board.surfaceNumber, coating ?? 0)),
        cite(equilibriumMoisture, 'Gives the moisture content at balance with the room.'),
        ...(diffusion === undefined
          ? [
              cite(workingDiffusion, `D is taken as ${(d * 1e10).toPrecision(2)} × 10⁻¹⁰ m²/s for ${wood.words}.`),
              ...(wood.outside
                ? [
                    {
                      text: `The density lies outside the ${densityRange.minimum} to ${densityRange.maximum} kg/m³ that the working values cover; the nearest is used.`,
                      basis: 'memory' as const,
                    },
                  ]
                : []),
            ]
          : [{ text: 'The diffusion coefficient is the reader’s own.', basis: 'supplier-sheet' as const }]),
        ...(surface === undefined
          ? []
          : [{ text: 'The surface coefficient is the reader’s own.', basis: 'supplier-sheet' as const }]),
        ...coefficientEvidence,
      ] satisfies EvidenceNote[],
    });
  },
});

function governs(surfaceNumber: number, coating: number): string {
  if (surfaceNumber < 1)
    return `The ${coating > 0 ? 'coating and the air' : 'air'} at the face hold it back more than the wood (L ${surfaceNumber.toPrecision(2)}).`;
  return surfaceNumber > 10
    ? `The wood itself holds it back; the face hardly matters (L ${surfaceNumber.toPrecision(2)}).`
    : `Wood and face hold it back alike (L ${surfaceNumber.toPrecision(2)}).`;
}

function moistureSeries(board: Acclimatisation, start: number, balance: number): Series {
  const points = showingTimes(board, shownPoints).map((time) => board.at(time));
  const line = (id: 'mean' | 'shell' | 'core', label: string) => ({
    id,
    label,
    unit: '%',
    values: points.map((point) => point[id]),
  });
  return {
    id: 'moisture',
    title: 'Moisture content of the board',
    axis: {
      label: 'Time in the room',
      unit: 'd',
      values: points.map((point) => Number((point.time / day).toPrecision(4))),
    },
    lines: [
      {
        ...line('mean', 'Mean, with its band'),
        low: points.map((point) => Math.min(point.mean, point.meanLow)),
        high: points.map((point) => Math.max(point.mean, point.meanHigh)),
      },
      line('shell', 'At the face'),
      line('core', 'In the middle'),
    ],
    description: `The mean moisture content goes from ${start.toFixed(1)} % towards ${balance.toFixed(1)} %, half-way in ${(board.halfWay / day).toPrecision(2)} days; the face leads and the middle follows.`,
  };
}

/** What the wait comes to. */
function verdictOf(
  board: Acclimatisation,
  { start, balance }: { start: number; balance: number },
  cautions: readonly Caution[],
): Verdict {
  if (board.withinOne === 0)
    return {
      level: 'good',
      text: `Ready: at ${amount(start, '%', 2)} it is within one point of the ${amount(balance, '%', 2)} of this room.`,
    };
  const [low, high] = board.band.withinOne;
  const mind = cautions.some(({ own, level }) => own && level !== 'note');
  return {
    level: mind || start > 30 ? 'care' : 'good',
    text: `Wait about ${amount(board.withinOne, 's', 2)} (${amount(low, 's', 2)} to ${amount(high, 's', 2)}): it then comes from ${amount(start, '%', 2)} to within one point of the ${amount(balance, '%', 2)} of this room. Go by the meter, not the calendar.`,
  };
}

/** A board, and the room that it is in: mm, %, %, °C, %. */
interface InRoom {
  thickness: number;
  start: number;
  balance: number;
  temperature: number;
  humidity: number;
}

function cautionsOf(board: Acclimatisation, { thickness, start, balance, temperature, humidity }: InRoom): Caution[] {
  return [
    ...sorptionCaution([{ temperature, humidity }]),
    ...(start > 30
      ? [
          {
            id: 'green-wood',
            level: 'warning' as const,
            own: true,
            text: 'This board needs drying, not acclimatising: the time is only a lower bound.',
            why: 'Above about 30 % the wood holds free water, which moves by other laws than this.',
            basis: 'shop-practice' as const,
          },
        ]
      : []),
    ...(start - balance > 4
      ? [
          {
            id: 'drying-too-fast',
            level: 'warning' as const,
            own: true,
            text: 'Dry it in steps, with the ends sealed and air on both faces.',
            why: 'The shell will be much drier than the core for a while: thick or dense stock can check and case-harden.',
            basis: 'shop-practice' as const,
          },
        ]
      : []),
    {
      id: 'ends-and-stickers',
      level: 'note',
      text: 'Seal the ends, stand the board on stickers, and measure until readings a few days apart agree.',
      why: `Within about four thicknesses, ${amount(4 * thickness, 'mm', 2)}, of an unsealed end the board follows faster than this, since moisture moves up to twelve times (spruce) or fifteen times (beech) as fast along the grain.`,
      basis: 'published',
      citation: { source: 'sonderegger-2011', locator: 'abstract', seen: 'source-text' },
    },
    ...(board.withinOne > 0
      ? [
          {
            id: 'swinging-air',
            level: 'note' as const,
            text: 'The room is taken as steady. A daily swing of its humidity reaches only the outermost millimetres of a board; a week of other weather reaches it all.',
            basis: 'derived' as const,
          },
        ]
      : []),
  ];
}
