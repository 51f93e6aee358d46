import type { EvidenceNote } from '../evidence/index.ts';
import type { Section } from './section.ts';

/** How a board was cut from the log, by the rings on its end. */
export const cuts = ['flatsawn', 'rift', 'quartersawn'] as const;

/** How a board was cut from the log: one of `cuts`. */
export type Cut = (typeof cuts)[number];

/** Angle between rings and face in the middle of the width, degrees. */
export const ringAngles: Readonly<Record<Cut, number>> = { flatsawn: 0, rift: 45, quartersawn: 90 };

/** Least distance from pith to board that is assumed, mm: nearer wood is juvenile and shrinks otherwise. */
const leastAssumedDistance = 100;

/**
 * Where the pith is taken to be when only the cut or ring angle is known: as far from the board's middle as the board is
 * wide, and no nearer than 100 mm or its thickness, in the direction that gives the ring angle.
 *
 * A flatsawn board of width w so placed comes from a log at least 2.24 w across: a common case, and rather a near pith
 * than a far one, so that the cup shown is seldom too small.
 *
 * @param width mm
 * @param thickness mm
 * @param ringAngle degrees between rings and face in the middle of the width, 0 to 90
 */
export function assumedSection(width: number, thickness: number, ringAngle: number): Section {
  const distance = Math.max(width, thickness, leastAssumedDistance);
  // Cosines by the smaller angle, so that 90° is exact.
  const angle = (ringAngle * Math.PI) / 180;
  const height = ringAngle <= 45 ? distance * Math.cos(angle) : distance * Math.sin(((90 - ringAngle) * Math.PI) / 180);
  return { width, thickness, pithDepth: height - thickness / 2, pithOffset: distance * Math.sin(angle) };
}

/** What an answer must say where the pith was assumed. */
export const assumedPithNote: EvidenceNote = {
  text: 'The place of the pith was not measured. For cup and drawing it is taken as far from the middle of the board as the board is wide, and at least 100 mm; the width comes from straight rings and does not depend on it.',
  basis: 'shop-practice',
};

/**
 * Angle between rings and face in the middle of the width, from the place of the pith.
 *
 * @param pithDepth mm from the pith up to the plane of the heart-side face
 * @param pithOffset mm sideways from the pith to the middle of the width
 * @param thickness mm
 * @returns degrees, 0 (flatsawn) to 90 (quartersawn)
 */
export function ringAngleAt(pithDepth: number, pithOffset: number, thickness: number): number {
  return (Math.atan2(Math.abs(pithOffset), Math.abs(pithDepth + thickness / 2)) * 180) / Math.PI;
}
