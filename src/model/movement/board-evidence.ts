import { type Caution, cite, type EvidenceNote } from '../evidence/index.ts';
import {
  boardVariation,
  changeByCoefficient,
  changeByShrinkage,
  type MovementEquation,
  type MovementProperties,
  straightRingStrain,
} from './index.ts';

/** Which of the handbook's two equations an answer used, and why. */
export function movementNote(by: MovementEquation, properties: MovementProperties): EvidenceNote {
  if (by === '13-2') {
    return cite(
      changeByCoefficient,
      properties.unitShrinkage
        ? 'Eq. 13-2, with the wood’s unit shrinkage in place of a coefficient of Table 13-5.'
        : 'Eq. 13-2, used because every moisture content lies within 6 to 14 % and Table 13-5 has coefficients of the wood’s own.',
    );
  }
  const why =
    properties.radialCoefficient !== null && properties.tangentialCoefficient !== null
      ? 'because a moisture content lies outside 6 to 14 %'
      : 'with the wood’s shrinkage, because no coefficients of Table 13-5 stand for this wood';
  return cite(changeByShrinkage, `Eq. 13-3, used ${why}.`);
}

/** How a width follows from rings that are neither along nor across the face; empty where they are. */
export function ringAngleNotes(angle: number): EvidenceNote[] {
  if (angle === 0 || angle === 90) return [];
  return [
    cite(straightRingStrain, `The two directions combined for straight rings at ${Math.round(angle)}° to the face.`),
  ];
}

/** What the band of an answer means. */
export const bandNote: EvidenceNote = {
  text: boardVariation.sentence,
  basis: boardVariation.basis,
  citation: boardVariation.citation,
};

/** What must be said where a moisture content lies above that at which wood stops swelling. */
export function cappedCaution(shrinkageStart: number): Caution {
  return {
    id: 'above-fibre-saturation',
    level: 'note',
    text: `Above ${shrinkageStart} % moisture content wood neither swells nor shrinks: what lies above counts as ${shrinkageStart} %.`,
    basis: 'published',
    citation: { source: 'fpl-gtr-190', locator: 'Chapter 13, text under Eq. 13-3', seen: 'source-text' },
  };
}

/** The handbook's own warning on its formula. */
export const cutCaution: Caution = {
  id: 'seldom-perfectly-cut',
  level: 'note',
  text: 'Boards are seldom perfectly flatsawn or quartersawn: the width of a flatsawn board moves somewhat less than this, that of a quartersawn one somewhat more. Measure where the pith lay to come nearer.',
  basis: 'published',
  citation: { source: 'fpl-gtr-190', locator: 'Chapter 13', seen: 'source-text' },
};
