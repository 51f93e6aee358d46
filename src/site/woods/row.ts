import type { Basis, Figure } from '../../model/evidence/index.ts';
import type { WoodNames } from '../../model/species/find-woods.ts';
import type { FoodAssessment, PoreArrangement, PoreOpenness, Species } from '../../model/species/types.ts';

/** A number of the list with how it is known; the wood's own page says the rest. */
export interface Cell {
  value: number;
  basis: Basis;
}

/** A wood as the list, the type-ahead and the comparison need it: small, since all of them are sent at once. */
export interface WoodRow {
  id: string;
  name: string;
  tradeNames: readonly string[];
  botanical: string | null;
  kind: Species['kind'];
  origin: Species['origin'];
  /** Side hardness at 12 % moisture content, N. */
  hardness: Cell | null;
  /** Shrinkage from green to ovendry, %. */
  tangential: Cell | null;
  radial: Cell | null;
  /** Change of width of a flatsawn board from 6 to 12 % moisture content, % of the width at 6 %. */
  swing: Cell | null;
  /** Specific gravity at 12 % moisture content. */
  gravity: Cell | null;
  arrangement: PoreArrangement | null;
  openness: PoreOpenness | null;
  food: FoodAssessment['level'];
  foodSummary: string;
  /** How many published effects of dust, splinters or sap were read. */
  effects: number;
}

const cell = (figure: Figure | null): Cell | null =>
  figure && { value: Number(figure.value.toPrecision(6)), basis: figure.basis };

/**
 * A wood as a row of the list.
 *
 * @param species the wood
 * @param swing change of width of a flatsawn board from 6 to 12 % moisture content, by the movement model
 */
export function woodRow(species: Species, swing: Figure | null): WoodRow {
  const { figures } = species;
  return {
    id: species.id,
    name: species.name,
    tradeNames: species.tradeNames,
    botanical: species.botanical,
    kind: species.kind,
    origin: species.origin,
    hardness: cell(figures.sideHardness12),
    tangential: cell(figures.tangentialShrinkage),
    radial: cell(figures.radialShrinkage),
    swing: cell(swing),
    gravity: cell(figures.specificGravity12),
    arrangement: species.pores.arrangement,
    openness: species.pores.openness,
    food: species.food.level,
    foodSummary: species.food.summary,
    effects: species.effects.length,
  };
}

/** What the type-ahead of the home page and of the board form needs. */
export type WoodName = WoodNames;

export function woodName({ id, name, tradeNames, botanical }: Species): WoodName {
  return { id, name, tradeNames, botanical };
}
