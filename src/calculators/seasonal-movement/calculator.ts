import { answer, cite, type EvidenceNote, type Outcome, refuse } from '../../model/evidence/index.ts';
import { equilibriumMoisture } from '../../model/moisture/index.ts';
import { yearOfAir } from '../../model/moisture/year-of-air.ts';
import { bandNote } from '../../model/movement/board-evidence.ts';
import { calculator, type FigureValue } from '../kit/calculator.ts';
import { type Answered, boardAnswer } from './board.ts';
import { lagCaution, wetterThanItsPlace } from './cautions.ts';
import { figures, moistureFigures } from './figures.ts';
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
  figures,
  compute(given) {
    const now = moistureNow(given);
    if (!now.ok) return now;
    const air = yearOfAir(given);
    if (!air.ok) return air;
    const { readings, basis } = air.value;
    const question = { given, moistureNow: now.value.value, readings, airBasis: basis };
    const board: Outcome<Answered> = given.staves ? panelAnswer(question) : boardAnswer(question);
    if (!board.ok) return board;
    const { series, drawing, evidence, moved } = board.value;
    const wet = wetterThanItsPlace(now.value.value, readings);
    const cautions = [...wet, ...board.value.cautions, ...air.value.cautions, lagCaution];
    return answer({
      verdict: verdictOf(moved, cautions, wet.length > 0),
      figures: {
        ...board.value.figures,
        ...(now.value.figure ? { moistureNow: now.value.figure } : {}),
        ...moistureFigures(readings, basis),
      },
      series: [...series, ...airSeries(readings)],
      drawings: [drawing],
      cautions,
      evidence: [...evidence, ...now.value.evidence, ...air.value.evidence, bandNote, measuredYearNote],
    });
  },
});

/** What a year that somebody measured says of boards taken to be at balance. */
const measuredYearNote: EvidenceNote = {
  text: 'In the one measured year that we could read, a thick slab of nailed boards outdoors under cover moved 0.53 %, where free boards at balance would have moved 0.83 %. Nothing is taken off here: a single board lags less than such a slab.',
  basis: 'published',
  citation: { source: 'hwang-2022', locator: 'Table 4', seen: 'source-text' },
};

interface Now {
  value: number;
  /** Null where it is the reader's own figure. */
  figure: FigureValue | null;
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
      value,
      basis: 'derived',
      citation: { source: 'fpl-gtr-190', locator: 'Eq. 4-5' },
    },
    evidence: [cite(equilibriumMoisture, 'Gives the board’s moisture now from the air of the shop.')],
  });
}
