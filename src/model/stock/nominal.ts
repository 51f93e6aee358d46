import committed from './lumber.json' with { type: 'json' };
import { inch } from './lumber.ts';
import type { HardwoodGrade, LumberData, NominalThickness } from './lumber-data.ts';

const data = committed as LumberData;

/** Nominal thicknesses of the hardwood trade, thinnest first, from the table `hardwood-thickness`. */
export const nominalThicknesses: readonly NominalThickness[] = data.thicknesses;

/** Hardwood grades from the table `hardwood-grades`, best first. */
export const hardwoodGrades: readonly HardwoodGrade[] = data.grades;

/** The grade with this id, for example `1-common`. */
export function gradeById(id: string): HardwoodGrade | undefined {
  return hardwoodGrades.find((grade) => grade.id === id);
}

/** How lumber is bought: rough from the saw, or surfaced on two faces. */
export type Surfacing = 'rough' | 's2s';

/** Kiln-dried rough lumber may be this much under its nominal thickness, mm (a forum answer that cites the rules, quoted). */
export const roughShortfall = inch / 16;

const tolerance = 1e-6;

/**
 * The thinnest nominal thickness that leaves enough wood.
 *
 * @param needed thickness to be had from the board before it is planed (rough) or sanded (surfaced), mm
 * @param surfacing how it is bought
 * @returns undefined where no nominal thickness is thick enough
 */
export function nominalFor(needed: number, surfacing: Surfacing): NominalThickness | undefined {
  return nominalThicknesses.find(
    (nominal) => (surfacing === 'rough' ? nominal.rough : nominal.s2s) >= needed - tolerance,
  );
}

/**
 * What surfacing both faces takes off in the trade: 3/16 in up to 1 1/2 in of rough thickness, 1/4 in above.
 *
 * @param rough nominal rough thickness, mm
 * @returns mm
 */
export function surfacingLoss(rough: number): number {
  return rough <= 1.5 * inch + tolerance ? (3 / 16) * inch : inch / 4;
}
