import { equation } from '../evidence/index.ts';

/** Kilograms per cubic metre in a pound per cubic foot (0.45359237 kg / 0.3048³ m³). */
export const kilogramsPerCubicMetre = 0.45359237 / 0.3048 ** 3;

/**
 * Coefficient of dimensional change that follows from total shrinkage.
 *
 * @param shrinkage radial or tangential shrinkage, green to ovendry, % of the green dimension
 * @param start moisture content at which shrinkage is taken to start, %
 * @returns change per 1 % of moisture content, as a fraction of the dimension at 10 %
 */
export const coefficientFromShrinkage = equation(
  {
    id: 'coefficient-from-shrinkage',
    title: 'Coefficient of dimensional change from total shrinkage',
    tex: 'C = \\frac{S / (100\\,F)}{1 - \\dfrac{S}{100}\\,\\dfrac{F - 10}{F}}',
    symbols: [
      { tex: 'C', meaning: 'change for 1 % of moisture content, as a fraction of the dimension at 10 %', unit: '1' },
      { tex: 'S', meaning: 'radial or tangential shrinkage, green to ovendry, of the green dimension', unit: '%' },
      { tex: 'F', meaning: 'moisture content at which shrinkage is taken to start', unit: '%' },
    ],
    validity:
      'Moisture contents from 6 to 14 %. F is 30 %, but 22 % for northern white-cedar, western redcedar, redwood and teak.',
    basis: 'derived',
    citation: { source: 'fpl-gtr-190', locator: 'Table 13-5, how its values follow from Table 4-3' },
    remarks:
      'The formula is ours: shrinkage spread evenly from F to 0 %, on the dimension at 10 %. It gives 85 of the 90 rows of Table 13-5 that have a row in Table 4-3 within one unit of the last printed digit. The footnote that names the 22 % and the 10 % dimension is from memory.',
  },
  (shrinkage: number, start: number): number => {
    const fraction = shrinkage / 100;
    return fraction / start / (1 - (fraction * (start - 10)) / start);
  },
);

/**
 * Shrinkage from green to a moisture content.
 *
 * @param total shrinkage green to ovendry, %
 * @param moisture moisture content, %
 * @param start moisture content at which shrinkage starts, %
 * @returns shrinkage, % of the green dimension; 0 at and above the start
 */
export const shrinkageTo = equation(
  {
    id: 'wood-handbook-4-9',
    title: 'Shrinkage to a moisture content',
    tex: 'S_x = S_0 \\left(1 - \\frac{x}{MC_{fs}}\\right)',
    symbols: [
      { tex: 'S_x', meaning: 'shrinkage from green to moisture content x', unit: '%' },
      { tex: 'S_0', meaning: 'shrinkage from green to ovendry (Tables 4-3 and 4-4)', unit: '%' },
      { tex: 'x', meaning: 'moisture content', unit: '%' },
      { tex: 'MC_{fs}', meaning: 'fibre saturation, where shrinkage starts', unit: '%' },
    ],
    validity: 'x from 0 % to fibre saturation, which is taken as 30 % where it is not known.',
    basis: 'published',
    citation: { source: 'fpl-gtr-282', locator: 'Eq. 4-9', seen: 'quoted' },
  },
  (total: number, moisture: number, start: number): number => total * (1 - Math.min(moisture, start) / start),
);

/**
 * Specific gravity at a moisture content, estimated from basic specific gravity.
 *
 * @param basic specific gravity on ovendry mass and green volume
 * @param moisture moisture content, %
 * @param start moisture content at which shrinkage starts, %
 */
export const specificGravityAt = equation(
  {
    id: 'wood-handbook-4-13',
    title: 'Specific gravity at a moisture content, estimated',
    tex: 'G_x = \\frac{G_b}{1 - 0.265\\,G_b \\left(1 - x / MC_{fs}\\right)}',
    symbols: [
      { tex: 'G_x', meaning: 'specific gravity on ovendry mass and volume at moisture content x', unit: '1' },
      { tex: 'G_b', meaning: 'basic specific gravity, on ovendry mass and green volume', unit: '1' },
      { tex: 'x', meaning: 'moisture content', unit: '%' },
      { tex: 'MC_{fs}', meaning: 'fibre saturation', unit: '%' },
    ],
    validity:
      'x from 0 % to fibre saturation (30 %). An estimate: volumetric shrinkage is taken as 26.5 times basic specific gravity.',
    basis: 'published',
    citation: { source: 'fpl-gtr-282', locator: 'Eq. 4-13', seen: 'quoted' },
    remarks:
      'The printed example for white ash at 12 % has 0.605; the equation as printed gives 0.603. The Checks page shows the difference.',
  },
  (basic: number, moisture: number, start: number): number =>
    basic / (1 - 0.265 * basic * (1 - Math.min(moisture, start) / start)),
);

/**
 * Density of wood with the water in it.
 *
 * @param specificGravity on ovendry mass and volume at the moisture content
 * @param moisture moisture content, %
 * @returns density, kg/m3
 */
export const densityAt = equation(
  {
    id: 'wood-handbook-4-14',
    title: 'Density at a moisture content',
    tex: '\\rho_x = \\rho_w\\,G_x \\left(1 + \\frac{x}{100}\\right)',
    symbols: [
      { tex: '\\rho_x', meaning: 'density at moisture content x', unit: 'kg/m3' },
      { tex: '\\rho_w', meaning: 'density of water, 1000', unit: 'kg/m3' },
      { tex: 'G_x', meaning: 'specific gravity on ovendry mass and volume at moisture content x', unit: '1' },
      { tex: 'x', meaning: 'moisture content', unit: '%' },
    ],
    validity: 'Any moisture content, with the specific gravity at that moisture content.',
    basis: 'published',
    citation: { source: 'fpl-gtr-282', locator: 'Eq. 4-14', seen: 'quoted' },
    remarks: 'Table 4-6a of the same edition is this equation.',
  },
  (specificGravity: number, moisture: number): number => 1000 * specificGravity * (1 + moisture / 100),
);

/**
 * Most water that wood can hold.
 *
 * @param basic specific gravity on ovendry mass and green volume
 * @returns moisture content, %
 */
export const maximumMoisture = equation(
  {
    id: 'wood-handbook-4-3',
    title: 'Maximum moisture content',
    tex: 'MC_{\\max} = \\frac{100\\,(1.54 - G_b)}{1.54\\,G_b}',
    symbols: [
      { tex: 'MC_{\\max}', meaning: 'moisture content with every cavity full of water', unit: '%' },
      { tex: 'G_b', meaning: 'basic specific gravity, on ovendry mass and green volume', unit: '1' },
    ],
    validity: 'Basic specific gravity below 1.54, which is that of the cell wall.',
    basis: 'published',
    citation: { source: 'fpl-gtr-282', locator: 'Eq. 4-3', seen: 'quoted' },
    remarks:
      'The anchors printed beside it, 267 % at 0.30 and 44 % at 0.90, fit a cell wall of 1.50, not the 1.54 of the equation. The Checks page shows the difference.',
  },
  (basic: number): number => (100 * (1.54 - basic)) / (1.54 * basic),
);

/**
 * Volumetric shrinkage that follows from radial and tangential shrinkage.
 *
 * @param radial shrinkage green to ovendry, %
 * @param tangential shrinkage green to ovendry, %
 * @returns shrinkage of the volume, %, with 0.1 % along the grain
 */
export const volumeFromShrinkage = equation(
  {
    id: 'volume-from-shrinkage',
    title: 'Volumetric shrinkage from radial and tangential shrinkage',
    tex: 'S_V = 100\\left[1 - \\left(1 - \\frac{S_R}{100}\\right)\\left(1 - \\frac{S_T}{100}\\right)(1 - 0.001)\\right]',
    symbols: [
      { tex: 'S_V', meaning: 'volumetric shrinkage, green to ovendry', unit: '%' },
      { tex: 'S_R', meaning: 'radial shrinkage, green to ovendry', unit: '%' },
      { tex: 'S_T', meaning: 'tangential shrinkage, green to ovendry', unit: '%' },
    ],
    validity:
      'A check of printed rows, not a rule of nature: the handbook measured volume on other blocks than radial and tangential shrinkage.',
    basis: 'derived',
    citation: { source: 'kerf-and-cure' },
    remarks: 'The 0.1 % along the grain is the low end of what the handbook gives for most woods (p. 4-5, quoted).',
  },
  (radial: number, tangential: number): number => 100 * (1 - (1 - radial / 100) * (1 - tangential / 100) * (1 - 0.001)),
);

/** Every equation of the room, for the Equations page. */
export const equations = [
  coefficientFromShrinkage,
  volumeFromShrinkage,
  shrinkageTo,
  specificGravityAt,
  densityAt,
  maximumMoisture,
] as const;
