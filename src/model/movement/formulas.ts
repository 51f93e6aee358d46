import { equation } from '../evidence/index.ts';

/** Moisture content at which shrinkage starts in most woods, %. */
export const usualShrinkageStart = 30;

/** Moisture contents between which Eq. 13-2 holds, %. */
export const smallRange = { from: 6, to: 14 } as const;

/** Change of a dimension over a small range of moisture, by the coefficient of Table 13-5. */
export const changeByCoefficient = equation(
  {
    id: 'wood-handbook-13-2',
    title: 'Change of dimension over a small range of moisture',
    tex: '\\Delta D = D_I\\,[\\,C_T\\,(M_F - M_I)\\,]',
    symbols: [
      { tex: '\\Delta D', meaning: 'change of dimension', unit: 'mm' },
      { tex: 'D_I', meaning: 'dimension at the start', unit: 'mm' },
      { tex: 'C_T', meaning: 'dimensional change coefficient, tangential; C_R for the radial direction', unit: '1/%' },
      { tex: 'M_F', meaning: 'moisture content at the end', unit: '%' },
      { tex: 'M_I', meaning: 'moisture content at the start', unit: '%' },
    ],
    validity: 'Both moisture contents from 6 % to 14 %.',
    basis: 'published',
    citation: { source: 'fpl-gtr-190', locator: 'Eq. 13-2', seen: 'quoted' },
    remarks:
      'The equation was read where a university extension service quotes it; its limits in the title of Table 13-5. ' +
      'The coefficient is printed for the dimension at 10 % moisture content; the equation applies it to the dimension at the start, whatever that is.',
  },
  /**
   * @param initial dimension at the start, mm
   * @param coefficient change per 1 % moisture content, as a fraction of the dimension
   * @param from moisture content at the start, %
   * @param to moisture content at the end, %
   * @returns change of the dimension, mm; negative when it shrinks
   */
  (initial: number, coefficient: number, from: number, to: number): number => initial * (coefficient * (to - from)),
);

/** Change of a dimension between any two moisture contents up to the start of shrinkage. */
export const changeByShrinkage = equation(
  {
    id: 'wood-handbook-13-3',
    title: 'Change of dimension over a wide range of moisture',
    tex: '\\Delta D = \\frac{D_I\\,(M_F - M_I)}{\\dfrac{F\\,(100)}{S_T} - F + M_I}',
    symbols: [
      { tex: '\\Delta D', meaning: 'change of dimension', unit: 'mm' },
      { tex: 'D_I', meaning: 'dimension at the start', unit: 'mm' },
      { tex: 'M_F', meaning: 'moisture content at the end', unit: '%' },
      { tex: 'M_I', meaning: 'moisture content at the start', unit: '%' },
      { tex: 'S_T', meaning: 'tangential shrinkage from green to ovendry; S_R for the radial direction', unit: '%' },
      { tex: 'F', meaning: 'moisture content at which shrinkage starts: 30, or 22 for four woods', unit: '%' },
    ],
    validity: 'Both moisture contents from 0 % to F. Wood wetter than F is as large as at F, and is counted so.',
    basis: 'memory',
    citation: { source: 'fpl-gtr-190', locator: 'Eq. 13-3', seen: 'memory' },
    remarks:
      'The text of the page gives limits and symbols, but the formula is an image that was not read: its form is from memory, and follows exactly from Eq. 4-9, which was read. ' +
      'The handbook prints 30 where F stands here; 22 is used for northern white-cedar, western redcedar, redwood and teak, whose rows of Table 13-5 follow from it.',
  },
  /**
   * @param initial dimension at the start, mm
   * @param shrinkage from green to ovendry, % of the green dimension, less than 100
   * @param from moisture content at the start, %, no more than `start`
   * @param to moisture content at the end, %, no more than `start`
   * @param start moisture content at which shrinkage starts, %
   * @returns change of the dimension, mm; negative when it shrinks
   */
  (initial: number, shrinkage: number, from: number, to: number, start: number = usualShrinkageStart): number =>
    // Multiplied through by the shrinkage, so that a wood that does not shrink gives 0 instead of a division by 0.
    (initial * (shrinkage * (to - from))) / (100 * start - shrinkage * (start - from)),
);

/** Strains of free wood in the two directions across the grain, as fractions of the dimension at the start. */
export interface Strains {
  radial: number;
  tangential: number;
}

/** Strain across a face that straight, parallel rings meet at an angle. */
export const straightRingStrain = equation(
  {
    id: 'kerf-straight-rings',
    title: 'Strain across a face that straight rings meet at an angle',
    tex: '\\varepsilon = \\sqrt{(1+\\varepsilon_t)^2\\cos^2\\theta + (1+\\varepsilon_r)^2\\sin^2\\theta} - 1',
    symbols: [
      { tex: '\\varepsilon', meaning: 'strain across the face', unit: '1' },
      { tex: '\\varepsilon_t', meaning: 'tangential strain', unit: '1' },
      { tex: '\\varepsilon_r', meaning: 'radial strain', unit: '1' },
      { tex: '\\theta', meaning: 'angle between rings and face: 0 flatsawn, 45 rift, 90 quartersawn', unit: 'deg' },
    ],
    validity: 'Rings straight and parallel over the width, as in a board far from the pith. It gives no cup.',
    basis: 'derived',
    citation: { source: 'kerf-and-cure' },
    remarks:
      'The length of a line across the rings whose two parts stretch by themselves. For small strains it is the sum of the two strains weighted with cos² and sin².',
  },
  /**
   * @param ringAngle degrees between rings and face, 0 to 90
   * @param strains tangential and radial, fractions
   * @returns strain across the face, a fraction; exactly the tangential strain at 0 and the radial at 90
   */
  (ringAngle: number, { tangential, radial }: Strains): number => {
    const angle = (ringAngle * Math.PI) / 180;
    // Measured from the nearer of the two pure cuts, so that nothing is lost to rounding there.
    const [near, far, share] =
      ringAngle <= 45 ? [tangential, radial, Math.sin(angle) ** 2] : [radial, tangential, Math.cos(angle) ** 2];
    const difference = share * (far - near) * (2 + far + near);
    return near + difference / (1 + near + Math.sqrt((1 + near) ** 2 + difference));
  },
);
