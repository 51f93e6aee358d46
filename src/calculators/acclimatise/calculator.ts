import { answer, type Caution, cite, derivedBasis, type Verdict } from '../../model/evidence/index.ts';
import { type Acclimatisation, acclimatise, equilibriumMoisture, fickMean } from '../../model/moisture/index.ts';
import { woodCoefficients } from '../../model/moisture/wood-coefficients.ts';
import { amount } from '../../model/quantity/index.ts';
import { calculator } from '../kit/calculator.ts';
import { cautionsOf, green, type InRoom } from './cautions.ts';
import { figures, figuresOf, moistureSeries, timelineOf } from './figures.ts';
import { example, inputs } from './inputs.ts';

export const acclimatiseCalculator = calculator({
  id: 'acclimatise',
  title: 'Acclimatising a board',
  question: 'How long must this board stand in the room before it has settled?',
  summary: 'From a board’s thickness, its moisture and the air of the room: the days until it has settled.',
  inputs,
  taken: () => ({ faces: 'both' }),
  example,
  figures,
  compute({ thickness, moistureNow: start, temperature, relativeHumidity: humidity, coating = 0, ...given }) {
    const balance = equilibriumMoisture(temperature, humidity);
    const room: InRoom = { thickness, start, balance, temperature, humidity };
    const coefficients = woodCoefficients({ ...given, temperature, moisture: (start + balance) / 2 });
    const outcome = acclimatise({ ...coefficients, thickness, faces: given.faces ?? 'both', start, balance, coating });
    if (!outcome.ok) return outcome;
    const board = outcome.value;
    const basis = derivedBasis(coefficients.own ? [] : ['memory']);
    const cautions = cautionsOf(board, room);
    return answer({
      verdict: verdictOf(board, room, cautions),
      figures: figuresOf(board, room, basis),
      series: [moistureSeries(board, room)],
      timeline: timelineOf(board, basis),
      cautions,
      evidence: [
        cite(fickMean, governs(board.surfaceNumber, coating)),
        cite(equilibriumMoisture, 'Gives the moisture content at balance with the room.'),
        ...coefficients.evidence,
      ],
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

/** What the wait comes to. */
function verdictOf(board: Acclimatisation, { start, balance }: InRoom, cautions: readonly Caution[]): Verdict {
  if (board.withinOne === 0)
    return {
      level: 'good',
      text: `Ready: at ${amount(start, '%', 2)} it is within one point of the ${amount(balance, '%', 2)} of this room.`,
    };
  const [low, high] = board.band.withinOne;
  const mind = cautions.some(({ own, level }) => own && level !== 'note');
  return {
    level: mind || start > green ? 'care' : 'good',
    text: `Wait about ${amount(board.withinOne, 's', 2)} (${amount(low, 's', 2)} to ${amount(high, 's', 2)}): the wood then comes from ${amount(start, '%', 2)} to within one point of the ${amount(balance, '%', 2)} of this room. Go by the scale and the meter, not the calendar.`,
  };
}
