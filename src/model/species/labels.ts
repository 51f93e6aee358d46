import type { FigureName } from './types.ts';

/** Label and unit of each figure. */
export const figureKinds: Readonly<Record<FigureName, { label: string; unit: string }>> = {
  radialShrinkage: { label: 'Radial shrinkage, green to ovendry', unit: '%' },
  tangentialShrinkage: { label: 'Tangential shrinkage, green to ovendry', unit: '%' },
  volumetricShrinkage: { label: 'Volumetric shrinkage, green to ovendry', unit: '%' },
  shrinkageStart: { label: 'Moisture content where shrinkage is taken to start', unit: '%' },
  radialCoefficient: { label: 'Radial coefficient of dimensional change', unit: '1' },
  tangentialCoefficient: { label: 'Tangential coefficient of dimensional change', unit: '1' },
  specificGravityGreen: { label: 'Specific gravity, ovendry mass and green volume', unit: '1' },
  specificGravity12: { label: 'Specific gravity at 12 % moisture content', unit: '1' },
  density12: { label: 'Density at 12 % moisture content', unit: 'kg/m3' },
  densityAirDry: { label: 'Density, air-dry', unit: 'kg/m3' },
  sideHardnessGreen: { label: 'Side hardness, green', unit: 'N' },
  sideHardness12: { label: 'Side hardness at 12 % moisture content', unit: 'N' },
};

/** Label of each figure, for a table or a form that names it without its value. */
export const figureLabels = Object.fromEntries(
  Object.entries(figureKinds).map(([name, { label }]) => [name, label]),
) as Readonly<Record<FigureName, string>>;
