import { answer } from '../../model/evidence/index.ts';
import {
  bandNote,
  cappedCaution,
  cutCaution,
  movementNote,
  ringAngleNotes,
} from '../../model/movement/board-evidence.ts';
import {
  banded,
  bandOf,
  boardVariation,
  type Cut,
  chooseEquation,
  movementProperties,
  ringAngles,
  spreadOf,
  straightRingStrain,
  strains,
} from '../../model/movement/index.ts';
import { amount } from '../../model/quantity/index.ts';
import { calculator, type FigureValue } from '../kit/calculator.ts';
import { alternatives, example, inputs } from './inputs.ts';

/** A change that no rule shows is none, mm. */
const leastChange = 0.005;

export const widthChangeCalculator = calculator({
  id: 'width-change',
  title: 'Change of width',
  question: 'How much wider or narrower does this board become when its moisture changes?',
  summary: 'From a wood, a width, the cut and two moisture contents: how much wider or narrower the board becomes.',
  inputs,
  alternatives,
  example,
  figures: {
    change: { label: 'Change of width', unit: 'mm', digits: 2, help: 'Above zero the board grows wider.' },
    widthAfter: { label: 'Width after', unit: 'mm', digits: 4 },
    percent: { label: 'Share of the width', unit: '%', digits: 2 },
  },
  compute({ species, width, moistureFrom, moistureTo, cut, ringAngle }) {
    const wood = movementProperties(species);
    if (!wood.ok) return wood;
    const { properties, basis, evidence } = wood.value;
    const chosen = chooseEquation([moistureFrom, moistureTo], properties);
    if (!chosen.ok) return chosen;
    const by = chosen.value;
    const moved = strains(moistureFrom, moistureTo, properties, by);
    const angle = ringAngle ?? ringAngles[cut ?? 'flatsawn'];
    const [less, average, more] = bandOf(moved, spreadOf(properties, by)).map((strain) =>
      straightRingStrain(angle, strain),
    ) as [number, number, number];
    const figure = (of: (strain: number) => number): FigureValue => ({
      ...banded(of(less), of(average), of(more)),
      band: boardVariation.sentence,
      basis: basis[by],
      citation: { source: 'fpl-gtr-190', locator: `Eq. ${by}` },
    });
    const grown = average * width;

    return answer({
      verdict: {
        level: moved.capped ? 'care' : 'good',
        text:
          Math.abs(grown) < leastChange
            ? 'No change: the wood is as dry at the end as at the start, as far as it moves.'
            : `${grown > 0 ? 'Grows' : 'Shrinks'} by ${amount(Math.abs(grown), 'mm', 2)}, from ${amount(width, 'mm', 4)} to ${amount(width + grown, 'mm', 4)}.`,
      },
      figures: {
        change: { ...figure((strain) => strain * width), note: cutWords(cut, angle) },
        widthAfter: figure((strain) => (1 + strain) * width),
        percent: figure((strain) => strain * 100),
      },
      cautions: [
        ...(moved.capped ? [{ ...cappedCaution(properties.shrinkageStart), own: true }] : []),
        ...(ringAngle === undefined ? [cutCaution] : []),
      ],
      evidence: [movementNote(by, properties), ...ringAngleNotes(angle), ...evidence[by], bandNote],
    });
  },
});

function cutWords(cut: Cut | undefined, angle: number): string {
  return cut === undefined && angle !== 0
    ? `Rings at ${angle}° to the face.`
    : `Taken as ${cut ?? 'flatsawn'}: rings at ${angle}° to the face.`;
}
