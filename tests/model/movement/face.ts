import { type Point, ringMap, type Section, type Strains } from '../../../src/model/movement/index.ts';

/** Points of a face, closely spaced, after a change. */
export function face(section: Section, strains: Strains, y: number, pieces = 20_000): Point[] {
  const map = ringMap(section, strains);
  return Array.from({ length: pieces + 1 }, (_, at) => map([section.width * (at / pieces - 0.5), y]));
}
