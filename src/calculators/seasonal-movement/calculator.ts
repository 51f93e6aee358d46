import {
  answer,
  type Basis,
  type Caution,
  cite,
  type EvidenceNote,
  type Figure,
  type Outcome,
  type Result,
  refuse,
} from '../../model/evidence/index.ts';
import { equilibriumMoisture } from '../../model/moisture/index.ts';
import { yearOfAir } from '../../model/moisture/year-of-air.ts';
import { bandNote } from '../../model/movement/board-evidence.ts';
import { calculator } from '../kit/calculator.ts';
import { type Answered, boardAnswer } from './board.ts';
import { alternatives, example, type Inputs, inputs, together } from './inputs.ts';
import { panelAnswer } from './panel.ts';
import { airSeries } from './series.ts';
import { verdictOf } from './verdict.ts';

export const seasonalMovementCalculator = calculator({
  id: 'seasonal-movement',
  title: 'Movement through the year',
  question: 'How wide, and how cupped, will this board be through the year where it is going?',
  summary: 'From a board or panel, how dry it is and where it will live: its width and cup, month by month.',
  inputs,
  alternatives,
  together,
  example,
  figures: {
    swing: { label: 'Swing between narrowest and widest' },
    narrowest: { label: 'Narrowest' },
    widest: { label: 'Widest' },
    changeFromNow: {
      label: 'Change from now',
      help: 'The larger of the two; its ends are the narrowest and the widest.',
    },
    cup: { label: 'Greatest cup' },
    faceDifference: { label: 'Difference of the two faces' },
    step: { label: 'Step between staves' },
    inlaySwing: { label: 'Movement that the inlay does not follow' },
    inlayPercent: { label: 'The same as a share' },
    moistureNow: { label: 'Moisture content now' },
    driest: { label: 'Driest' },
    wettest: { label: 'Wettest' },
  },
  compute(given) {
    const now = moistureNow(given);
    if (!now.ok) return now;
    const air = yearOfAir(given);
    if (!air.ok) return air;
    const { readings, basis } = air.value;
    const question = { given, moistureNow: now.value.value, readings, airBasis: basis };
    const board: Outcome<Answered> = given.staves ? panelAnswer(question) : boardAnswer(question);
    if (!board.ok) return board;
    const { figures, series, drawing, evidence, moved } = board.value;
    const cautions = [...board.value.cautions, ...air.value.cautions, lagCaution];
    const result: Result = {
      verdict: verdictOf(moved, cautions),
      figures: {
        ...figures,
        ...(now.value.figure ? { moistureNow: now.value.figure } : {}),
        ...extremes(readings, basis),
      },
      series: [...series, ...airSeries(readings)],
      drawings: [drawing],
      cautions,
      evidence: [...evidence, ...now.value.evidence, ...air.value.evidence, bandNote, measuredYearNote],
    };
    return answer(result);
  },
});

/** What a year that somebody measured says of boards taken to be at balance. */
const measuredYearNote: EvidenceNote = {
  text: 'In the one measured year that we could read, a thick slab of nailed boards outdoors under cover moved 0.53 %, where free boards at balance would have moved 0.83 %. Nothing is taken off here: a single board lags less than such a slab.',
  basis: 'published',
  citation: { source: 'hwang-2022', locator: 'Table 4', seen: 'source-text' },
};

/** Said beside widths that are those at balance. */
const lagCaution: Caution = {
  id: 'board-lags',
  level: 'note',
  text: 'The board is taken to be at balance with each month. A thick or finished board follows weeks behind and swings less.',
  basis: 'derived',
};

interface Now {
  value: number;
  /** Null where it is the reader's own figure. */
  figure: Figure | null;
  evidence: readonly EvidenceNote[];
}

/** The board's moisture content now: by meter, or at balance with the air of the shop. */
function moistureNow({ moistureNow: metered, shopTemperature, shopHumidity }: Inputs): Outcome<Now> {
  if (metered !== undefined) return answer({ value: metered, figure: null, evidence: [] });
  if (shopTemperature === undefined || shopHumidity === undefined) {
    return refuse(
      'moistureNow',
      'It was not said how dry the board is',
      'Give a meter’s reading such as 8 %, or temperature and humidity of the shop.',
    );
  }
  const value = equilibriumMoisture(shopTemperature, shopHumidity);
  return answer({
    value,
    figure: {
      label: 'Moisture content now',
      value,
      unit: '%',
      basis: 'derived',
      citation: { source: 'fpl-gtr-190', locator: 'Eq. 4-5' },
      note: 'At balance with the air of the shop.',
    },
    evidence: [cite(equilibriumMoisture, 'Gives the board’s moisture now from the air of the shop.')],
  });
}

/** The driest and the wettest month or season. */
function extremes(
  readings: readonly { label: string; moisture: number }[],
  basis: Basis,
): Record<'driest' | 'wettest', Figure> {
  const byMoisture = [...readings].sort((a, b) => a.moisture - b.moisture);
  const figure = (label: string, at: { label: string; moisture: number }): Figure => ({
    label,
    value: at.moisture,
    unit: '%',
    basis,
    citation: { source: 'fpl-gtr-190', locator: 'Eq. 4-5' },
    note: `Moisture content at balance, ${at.label}.`,
  });
  const first = byMoisture[0] as { label: string; moisture: number };
  return {
    driest: figure('Driest', first),
    wettest: figure('Wettest', byMoisture[byMoisture.length - 1] ?? first),
  };
}
