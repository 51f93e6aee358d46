import fc from 'fast-check';
import type { MovementProperties, Section, Strains } from '../../../src/model/movement/index.ts';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Shrinkage as wide as any wood's, with coefficients that follow from it as the handbook's do, or without. */
export const anyProperties: fc.Arbitrary<MovementProperties> = fc
  .record({
    radial: number(0.5, 12),
    tangential: number(0.5, 16),
    start: fc.constantFrom(30, 22),
    printed: fc.boolean(),
  })
  .map(({ radial, tangential, start, printed }) => {
    const coefficient = (shrinkage: number) =>
      printed ? Math.round((1e5 * shrinkage) / (100 * start - shrinkage * (start - 10))) / 1e5 : null;
    return {
      radialShrinkage: radial,
      tangentialShrinkage: tangential,
      shrinkageStart: start,
      radialCoefficient: coefficient(radial),
      tangentialCoefficient: coefficient(tangential),
    };
  });

/** Boards of a shop, the pith outside them, from touching a face to a thousand metres away. */
export const anySection: fc.Arbitrary<Section> = fc
  .record({
    width: number(20, 800),
    thickness: number(3, 120),
    far: number(-3, 4),
    angle: number(0, Math.PI / 2),
    side: fc.constantFrom(-1, 1),
  })
  .map(({ width, thickness, far, angle, side }) => {
    const beyond = width * 10 ** far;
    // The pith leaves the board through a place of its outline that the angle picks.
    const reach = Math.min(width / 2 / Math.sin(angle), thickness / 2 / Math.cos(angle)) + beyond;
    return {
      width,
      thickness,
      pithDepth: reach * Math.cos(angle) - thickness / 2,
      pithOffset: side * reach * Math.sin(angle),
    };
  });

/** Strains from green to ovendry and back, of any wood. */
export const anyStrains: fc.Arbitrary<Strains> = fc.record({
  radial: number(-0.12, 0.14),
  tangential: number(-0.18, 0.2),
});

/** Strains of a year in a house. */
export const smallStrains: fc.Arbitrary<Strains> = fc.record({
  radial: number(-0.02, 0.02),
  tangential: number(-0.04, 0.04),
});

/** Hard maple of the handbook's tables. */
export const sugarMaple: MovementProperties = {
  radialShrinkage: 4.8,
  tangentialShrinkage: 9.9,
  shrinkageStart: 30,
  radialCoefficient: 0.00165,
  tangentialCoefficient: 0.00353,
};
