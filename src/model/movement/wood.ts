import type { Figure } from '../evidence/index.ts';
import type { Species } from '../species/types.ts';
import { banded, bandOf, boardVariation, spreadOf } from './band.ts';
import { movementProperties } from './properties.ts';
import { chooseEquation, movementRecords, strains } from './strain.ts';

/**
 * Change of width of a flatsawn board of a wood with straight rings, with its band.
 *
 * @param species a wood with its figures resolved
 * @param width at the start, mm
 * @param from moisture content at the start, %
 * @param to moisture content at the end, %
 * @returns the change in mm, positive when the board grows; null where the wood's shrinkage is not published
 */
export function flatsawnChange(species: Species, width: number, from: number, to: number): Figure | null {
  const wood = movementProperties(species);
  if (!wood.ok) return null;
  const { properties, basis } = wood.value;
  const chosen = chooseEquation([from, to], properties);
  if (!chosen.ok) return null;
  const equation = chosen.value;
  const [less, average, more] = bandOf(strains(from, to, properties, equation), spreadOf(properties, equation)).map(
    ({ tangential }) => tangential * width,
  ) as [number, number, number];
  const { citation } = movementRecords[equation];
  return {
    label: 'Change of width, flatsawn',
    ...banded(less, average, more),
    unit: 'mm',
    band: boardVariation.sentence,
    basis: basis[equation],
    ...(citation ? { citation } : {}),
    note: `From ${from} to ${to} % moisture content, by Eq. ${equation}.`,
    digits: 2,
  };
}
