import {
  answer,
  type Basis,
  type Caution,
  cite,
  type Drawing,
  type EvidenceNote,
  type Outcome,
  refuse,
  type Series,
  weakestBasis,
} from '../../model/evidence/index.ts';
import type { MoistureReading } from '../../model/moisture/index.ts';
import { cappedCaution, cutCaution, movementNote, ringAngleNotes } from '../../model/movement/board-evidence.ts';
import {
  assumedPithNote,
  type BoardGeometry,
  type BoardYear,
  boardThroughYear,
  movementProperties,
  ringMap,
} from '../../model/movement/index.ts';
import { amount, asTyped } from '../../model/quantity/index.ts';
import { nearPith } from './cautions.ts';
import { boardDrawing } from './drawing.ts';
import { inlayAnswer, ofBoards, type Values, widthFigures } from './figures.ts';
import type { Inputs } from './inputs.ts';
import { bandedSeries } from './series.ts';
import type { Moved } from './verdict.ts';

/** What is asked of a board or a panel, once its moisture now and the air to come are known. */
export interface Question {
  given: Inputs;
  /** % */
  moistureNow: number;
  readings: readonly MoistureReading[];
  /** The weakest of what the readings rest on. */
  airBasis: Basis;
}

/** The part of an answer that is about the wood. */
export interface Answered {
  figures: Values;
  series: readonly Series[];
  drawing: Drawing;
  cautions: readonly Caution[];
  evidence: readonly EvidenceNote[];
  moved: Moved;
}

/** Width and cup of one board through the year. */
export function boardAnswer({ given, moistureNow, readings, airBasis }: Question): Outcome<Answered> {
  const { species, width, thickness, inlayWidth } = given;
  if (!species)
    return refuse('species', 'No wood was given', 'Give a wood such as white-ash, or the staves of a panel.');
  if (width === undefined)
    return refuse(
      'width',
      'No width was given',
      `Give the width across the grain, such as ${asTyped({ metric: '300 mm', inch: '12 in' })}.`,
    );
  const geometry = boardGeometry(given);
  if (!geometry.ok) return geometry;
  const wood = movementProperties(species);
  if (!wood.ok) return wood;
  const { properties } = wood.value;
  const outcome = boardThroughYear({
    width,
    thickness,
    geometry: geometry.value,
    moistureNow,
    moistures: readings,
    properties,
  });
  if (!outcome.ok) return outcome;
  const year = outcome.value;
  const basis = weakestBasis([wood.value.basis[year.equation], airBasis]);
  const inlay = inlayAnswer({ width, swing: year.swing, changeFromNow: year.changeFromNow }, inlayWidth, basis);
  if (!inlay.ok) return inlay;
  const capped = year.cappedNow || year.cappedLabels.length > 0;
  return answer({
    figures: { ...widthFigures(year, basis), ...cupFigures(year, basis), ...inlay.value.figures },
    series: boardSeries(year),
    drawing: boardDrawing(year),
    cautions: [
      ...nearPith(year),
      ...inlay.value.cautions,
      ...(capped ? [cappedCaution(properties.shrinkageStart)] : []),
      ...(year.pithAssumed ? [cutCaution] : []),
    ],
    evidence: [
      movementNote(year.equation, properties),
      ...(year.pithAssumed ? [...ringAngleNotes(year.ringAngle), assumedPithNote] : []),
      cite(
        ringMap,
        year.pithAssumed ? 'Gives cup and drawing.' : 'Gives width, cup and drawing from the place of the pith.',
      ),
      ...wood.value.evidence[year.equation],
    ],
    moved: { ...year, cup: year.greatestCup.value, inlay: inlay.value.movement },
  });
}

/** How the board lay in the log, as far as it was said: flatsawn where nothing was. */
function boardGeometry({ cut, pithDepth, pithOffset }: Inputs): Outcome<BoardGeometry> {
  if (pithDepth === undefined && pithOffset === undefined) return answer({ cut: cut ?? 'flatsawn' });
  if (pithDepth === undefined) {
    return refuse(
      'pithDepth',
      'The pith was measured sideways but not in depth',
      `Give how far it lies below the heart-side face, such as ${asTyped({ metric: '60 mm', inch: '2 1/2 in' })}.`,
    );
  }
  return answer({ pithDepth, pithOffset: pithOffset ?? 0 });
}

function cupFigures(year: BoardYear, basis: Basis): Values {
  const { greatestCup: cup } = year;
  const side = cup.value >= 0 ? 'Hollow on the bark side' : 'Hollow on the heart side';
  const state = year.states.reduce((most, one) =>
    Math.abs(one.faceDifference.value) > Math.abs(most.faceDifference.value) ? one : most,
  );
  const assumed = year.pithAssumed ? ' With the pith at an assumed place.' : '';
  return {
    cup: ofBoards(
      cup,
      basis,
      `${Math.abs(cup.value) < 0.005 ? 'None to speak of' : side}, in ${cup.label}: the gap under a straight-edge on the ${cup.face}-side face.${assumed}`,
    ),
    faceDifference: ofBoards(
      state.faceDifference,
      basis,
      `Bark-side face less heart-side face, in ${state.label}.${assumed}`,
    ),
  };
}

function boardSeries({ states, section, narrowest, widest }: BoardYear): Series[] {
  const cups = states.map((state) => state.cup.bark.value);
  return [
    bandedSeries(
      'width',
      'Width',
      `Width by month of a board ${amount(section.width, 'mm')} wide now: from ${amount(narrowest.value, 'mm', 4)} in ${narrowest.label} to ${amount(widest.value, 'mm', 4)} in ${widest.label}.`,
      states.map(({ label, width }) => ({ label, at: width })),
    ),
    bandedSeries(
      'cup',
      'Cup of the bark-side face',
      `Gap under a straight-edge by month, from ${amount(Math.min(...cups), 'mm', 2)} to ${amount(Math.max(...cups), 'mm', 2)}; above zero the bark side is hollow.`,
      states.map(({ label, cup }) => ({ label, at: cup.bark })),
    ),
  ];
}
