import type { Figure } from '../../model/evidence/index.ts';
import { flatsawnChange } from '../../model/movement/index.ts';
import { nearestAlternatives } from '../../model/species/index.ts';
import type { Species, SpeciesDossier } from '../../model/species/types.ts';
import type { WoodFacts } from '../wood/facts.ts';
import { type WoodName, type WoodRow, woodName, woodRow } from '../woods/row.ts';

/** The moisture contents between which woods are compared: a heated room in winter, and the damp end of what the coefficients hold for. */
const from = 6;
const to = 12;
/** Widths of the board that a wood's page speaks of, mm: 300 mm and 12 in. */
const boards = { metric: 300, inch: 304.8 };

/** What the pages of the woods show, worked out once when the site is built. */
export interface Woods {
  rows: readonly WoodRow[];
  names: readonly WoodName[];
  facts: readonly WoodFacts[];
}

/** What each wood is called, in order of name. */
export const namesOfWoods = (dossiers: readonly SpeciesDossier[]): WoodName[] => byName(dossiers).map(woodName);

const byName = (dossiers: readonly SpeciesDossier[]) =>
  [...dossiers].sort((a, b) => a.name.localeCompare(b.name, 'en'));

export function gatherWoods(dossiers: readonly SpeciesDossier[]): Woods {
  const swings = new Map(dossiers.map((wood) => [wood.id, swing(wood)]));
  const yardstick = dossiers.find((wood) => wood.id === 'sugar-maple')?.figures.sideHardness12?.value;
  if (yardstick === undefined)
    throw new Error('The side hardness of sugar maple is missing: every hardness is shown against it.');
  const sorted = byName(dossiers);
  return {
    rows: sorted.map((wood) => woodRow(wood, swings.get(wood.id) ?? null)),
    names: namesOfWoods(dossiers),
    facts: sorted.map((wood) => ({
      wood,
      swing: swings.get(wood.id) ?? null,
      board: board(wood),
      yardstick,
      alternatives: nearestAlternatives(wood, 6).map((other) => ({
        id: other.id,
        name: other.name,
        hardness: other.figures.sideHardness12?.value ?? null,
        swing: swings.get(other.id)?.value ?? null,
      })),
    })),
  };
}

/** Change of width of a flatsawn board in percent: that of a board 100 mm wide in mm. */
function swing(wood: Species): Figure | null {
  const change = flatsawnChange(wood, 100, from, to);
  return change && { ...change, unit: '%' };
}

function board(wood: Species): WoodFacts['board'] {
  const metric = flatsawnChange(wood, boards.metric, from, to);
  const inch = flatsawnChange(wood, boards.inch, from, to);
  return metric && inch && { metric, inch };
}
