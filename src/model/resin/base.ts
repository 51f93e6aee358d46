import { type Citation, type EvidenceNote, equation } from '../evidence/index.ts';
import type { ThermalProperties } from './kinetics.ts';

export const woodConductivity = equation(
  {
    id: 'wood-handbook-4-15',
    title: 'Thermal conductivity of wood across the grain',
    tex: 'k = G_x\\,(B + C x) + A',
    symbols: [
      { tex: 'k', meaning: 'thermal conductivity', unit: 'W/(m K)' },
      { tex: 'G_x', meaning: 'specific gravity on ovendry mass and volume at moisture content x', unit: '1' },
      { tex: 'x', meaning: 'moisture content', unit: '%' },
      { tex: 'A', meaning: '0.01864', unit: 'W/(m K)' },
      { tex: 'B', meaning: '0.1941', unit: 'W/(m K)' },
      { tex: 'C', meaning: '0.004064', unit: 'W/(m K)' },
    ],
    validity:
      'Specific gravity above 0.3, moisture content below 25 %, near 24 °C. Single boards differ by up to 20 %; 2 to 3 % more for each 10 °C.',
    basis: 'published',
    citation: { source: 'fpl-gtr-190', locator: 'Eq. 4-15', seen: 'source-text' },
  },
  /**
   * @param gravity specific gravity on ovendry mass and volume at that moisture content
   * @param moisture moisture content, %
   * @returns W/(m·K)
   */
  (gravity: number, moisture: number): number => gravity * (0.1941 + 0.004064 * moisture) + 0.01864,
);

export const woodHeatCapacity = equation(
  {
    id: 'wood-handbook-4-16',
    title: 'Heat capacity of wood',
    tex: 'c_{p,x} = \\frac{c_{p0} + c_{pw}\\,x/100}{1 + x/100} + x\\,(b_1 + b_2 T + b_3 x), \\quad c_{p0} = 0.1031 + 0.003867\\,T',
    symbols: [
      { tex: 'c_{p,x}', meaning: 'heat capacity at moisture content x', unit: 'kJ/(kg K)' },
      { tex: 'c_{p0}', meaning: 'heat capacity of dry wood', unit: 'kJ/(kg K)' },
      { tex: 'c_{pw}', meaning: 'heat capacity of water, 4.18', unit: 'kJ/(kg K)' },
      { tex: 'x', meaning: 'moisture content', unit: '%' },
      { tex: 'T', meaning: 'temperature', unit: 'K' },
      { tex: 'b_1', meaning: '-0.06191', unit: '' },
      { tex: 'b_2', meaning: '2.36e-4', unit: '' },
      { tex: 'b_3', meaning: '-1.33e-4', unit: '' },
    ],
    validity: 'Below fibre saturation, 7 to 147 °C.',
    basis: 'published',
    citation: { source: 'fpl-gtr-190', locator: 'Eqs. 4-16 to 4-18', seen: 'quoted' },
    remarks:
      'The range of temperatures is from memory. A library of general chemistry quotes the equations and computes 1.91 for 12 % and 340 K.',
  },
  /**
   * @param moisture moisture content, %
   * @param celsius temperature, °C
   * @returns J/(kg·K)
   */
  (moisture: number, celsius: number): number => {
    const kelvins = celsius + 273.15;
    const dry = 0.1031 + 0.003867 * kelvins;
    const bond = moisture * (-0.06191 + 2.36e-4 * kelvins - 1.33e-4 * moisture);
    return 1000 * ((dry + (4.18 * moisture) / 100) / (1 + moisture / 100) + bond);
  },
);

/** A material that resin is poured on. */
export interface BaseMaterial extends ThermalProperties {
  id: 'hardwood' | 'softwood' | 'mdf' | 'hdpe' | 'pp' | 'pvc' | 'pmma' | 'silicone' | 'foam' | 'resin';
  label: string;
  /** What a reader must know who picks it. */
  hint?: string;
  /** Where its density and conductivity come from, and its heat capacity where that is another place. */
  evidence: EvidenceNote;
}

const standard = (locator: string): Citation => ({ source: 'en-iso-10077-2', locator, seen: 'quoted' });

/** Plastics that moulds are lined with too, as a film or a tape which takes up no heat. */
const sheet: readonly BaseMaterial['id'][] = ['hdpe', 'pp', 'pvc', 'pmma'];

/** A plastic of the standard's table, with a heat capacity from memory. */
const plastic = (
  id: BaseMaterial['id'],
  label: string,
  [density, conductivity, heatCapacity]: readonly [number, number, number],
  row: string,
): BaseMaterial => ({
  id,
  label,
  ...(sheet.includes(id) ? { hint: 'solid sheet of 20 mm (3/4 in); for film or tape on MDF pick MDF' } : {}),
  density,
  conductivity,
  heatCapacity,
  evidence: {
    text: `${label}: ${density} kg/m³ and ${conductivity} W/(m·K) from the table; ${heatCapacity} J/(kg·K) from memory.`,
    basis: 'memory',
    citation: standard(row),
  },
});

/** What resin is poured on, the usual first. */
export const baseMaterials: readonly BaseMaterial[] = [
  {
    id: 'hardwood',
    label: 'Hardwood',
    density: 650,
    conductivity: 0.15,
    heatCapacity: 1650,
    evidence: {
      text: 'Hardwood: 650 kg/m³, 0.15 W/(m·K) and 1650 J/(kg·K), a specific gravity of 0.60 at 8 % moisture with some warmth; the equations of the handbook give 0.155 and 1530.',
      basis: 'derived',
      citation: { source: 'fpl-gtr-190', locator: 'Eqs. 4-15 and 4-16' },
    },
  },
  {
    id: 'softwood',
    label: 'Softwood',
    density: 430,
    conductivity: 0.11,
    heatCapacity: 1650,
    evidence: {
      text: 'Softwood: 430 kg/m³ and 0.11 W/(m·K), a specific gravity of 0.40 at 8 % moisture; 1650 J/(kg·K) as for hardwood.',
      basis: 'derived',
      citation: { source: 'fpl-gtr-190', locator: 'Eqs. 4-15 and 4-16' },
    },
  },
  {
    id: 'mdf',
    label: 'MDF',
    density: 750,
    conductivity: 0.14,
    heatCapacity: 1700,
    evidence: { text: 'MDF: 750 kg/m³, 0.14 W/(m·K) and 1700 J/(kg·K), from memory.', basis: 'memory' },
  },
  plastic('hdpe', 'HDPE', [980, 0.5, 1900], 'polyethylene HD'),
  plastic('pp', 'Polypropylene', [910, 0.22, 1800], 'polypropylene, solid'),
  plastic('pvc', 'Rigid PVC', [1390, 0.17, 900], 'PVC, rigid'),
  plastic('pmma', 'Acrylic glass (PMMA)', [1180, 0.18, 1500], 'PMMA'),
  plastic('silicone', 'Silicone mould', [1200, 0.35, 1300], 'silicone, pure'),
  {
    id: 'foam',
    label: 'Rigid foam',
    density: 35,
    conductivity: 0.035,
    heatCapacity: 1450,
    evidence: { text: 'Rigid foam: 35 kg/m³, 0.035 W/(m·K) and 1450 J/(kg·K), from memory.', basis: 'memory' },
  },
  {
    id: 'resin',
    label: 'Cured resin of an earlier layer',
    density: 1150,
    conductivity: 0.19,
    heatCapacity: 1700,
    evidence: {
      text: 'Cured resin: 1150 kg/m³, 0.19 W/(m·K) and 1700 J/(kg·K), from memory.',
      basis: 'memory',
    },
  },
];

const byId = new Map<string, BaseMaterial>(baseMaterials.map((material) => [material.id, material]));

/** The material of this id; hardwood for any other. */
export function baseMaterial(id: string): BaseMaterial {
  return byId.get(id) ?? (baseMaterials[0] as BaseMaterial);
}

/** Base that the sheet's own greatest depth is taken to mean, and that is meant where nothing is said: 20 mm of hardwood. */
export const usualBase = {
  thickness: 20,
  ...(({ density, conductivity, heatCapacity }) => ({ density, conductivity, heatCapacity }))(baseMaterial('hardwood')),
};

/** Film coefficients, W/(m²·K), radiation and free convection together: over a pour, and under its base. */
export const films = { covered: 6, still: 10, moving: 14, under: 5 } as const;
