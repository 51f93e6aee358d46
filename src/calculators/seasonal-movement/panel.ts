import {
  answer,
  type Basis,
  type EvidenceNote,
  type Outcome,
  refuse,
  weakestBasis,
} from '../../model/evidence/index.ts';
import { cappedCaution, cutCaution, movementNote } from '../../model/movement/board-evidence.ts';
import { movementProperties, panelNotes, panelThroughYear, type SpeciesMovement } from '../../model/movement/index.ts';
import { amount } from '../../model/quantity/index.ts';
import type { StaveInput } from '../kit/staves-field.ts';
import type { Answered, Question } from './board.ts';
import { panelDrawing } from './drawing.ts';
import { inlayAnswer, widthFigures } from './figures.ts';
import { bandedSeries } from './series.ts';

/** Width of a glued panel through the year: the sum of its staves. */
export function panelAnswer({ given, moistureNow, readings, airBasis }: Question): Outcome<Answered> {
  const staves = given.staves ?? [];
  if (given.pithDepth !== undefined || given.pithOffset !== undefined) {
    return refuse(
      'pithDepth',
      'The pith can be placed for one board, not for a panel',
      'Give each stave its cut instead.',
    );
  }
  const woods: SpeciesMovement[] = [];
  for (const [index, stave] of staves.entries()) {
    const wood = movementProperties(stave.species);
    if (!wood.ok)
      return {
        ok: false,
        errors: wood.errors.map(({ message }) => ({ field: 'staves', message: `Stave ${index + 1}: ${message}` })),
      };
    woods.push(wood.value);
  }
  const outcome = panelThroughYear({
    staves: staves.map(({ width, cut }, index) => ({
      width,
      geometry: { cut: cut ?? given.cut ?? 'flatsawn' },
      properties: (woods[index] as SpeciesMovement).properties,
    })),
    thickness: given.thickness,
    moistureNow,
    moistures: readings,
  });
  if (!outcome.ok) return { ok: false, errors: outcome.errors.map(staveError) };
  const year = outcome.value;
  const basis: Basis = weakestBasis([
    airBasis,
    ...year.staves.map((stave, index) => (woods[index] as SpeciesMovement).basis[stave.equation]),
  ]);
  const width = staves.reduce((sum, stave) => sum + stave.width, 0);
  const inlay = inlayAnswer({ width, swing: year.swing, changeFromNow: year.changeFromNow }, given.inlayWidth, basis);
  if (!inlay.ok) return inlay;
  const capped = year.staves.findIndex((stave) => stave.cappedNow || stave.cappedLabels.length > 0);
  return answer({
    figures: {
      ...widthFigures(year, basis),
      step: {
        value: year.greatestStep.value,
        low: 0,
        high: year.greatestStep.value,
        band: 'From none, where neighbours are alike, to the largest difference in thickness between two neighbours.',
        basis,
        note: `The largest difference in thickness between neighbours, in ${year.greatestStep.label}; half of it shows on each face.`,
      },
      ...inlay.value.figures,
    },
    series: [
      bandedSeries(
        'width',
        'Width',
        `Width of the panel by month: from ${amount(year.narrowest.value, 'mm', 4)} in ${year.narrowest.label} to ${amount(year.widest.value, 'mm', 4)} in ${year.widest.label}.`,
        year.states.map(({ label, width: at }) => ({ label, at })),
      ),
    ],
    drawing: panelDrawing(year),
    cautions: [
      ...inlay.value.cautions,
      ...(capped >= 0 ? [cappedCaution((woods[capped] as SpeciesMovement).properties.shrinkageStart)] : []),
      cutCaution,
    ],
    evidence: [
      ...woodNotes(
        staves,
        woods,
        year.staves.map((stave) => stave.equation),
      ),
      { text: panelNotes.band, basis: 'derived' },
      { text: panelNotes.cup, basis: 'derived' },
    ],
    moved: { ...year, inlay: inlay.value.movement },
  });
}

/** Each equation and each figure of each wood once, however many staves rest on it. */
function woodNotes(
  staves: readonly StaveInput[],
  woods: readonly SpeciesMovement[],
  equations: readonly ('13-2' | '13-3')[],
): EvidenceNote[] {
  const notes = staves.flatMap((_, index) => {
    const by = equations[index] ?? '13-3';
    const { properties, evidence } = woods[index] as SpeciesMovement;
    return [movementNote(by, properties), ...evidence[by]];
  });
  return [...new Map(notes.map((note) => [note.text, note])).values()];
}

/** An error on a stave's part is an error of the one field that holds the staves. */
function staveError({ field, message }: { field: string; message: string }) {
  const stave = /^staves\.(\d+)/.exec(field);
  return stave ? { field: 'staves', message: `Stave ${Number(stave[1]) + 1}: ${message}` } : { field, message };
}
