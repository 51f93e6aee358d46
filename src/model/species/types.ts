import type { Citation, Figure } from '../evidence/index.ts';
import type { SpeciesRecord } from './record.ts';

/** Names of the numeric figures of a wood, in the order in which they are listed. */
export const figureNames = [
  'radialShrinkage',
  'tangentialShrinkage',
  'volumetricShrinkage',
  'shrinkageStart',
  'radialCoefficient',
  'tangentialCoefficient',
  'specificGravityGreen',
  'specificGravity12',
  'density12',
  'densityAirDry',
  'sideHardnessGreen',
  'sideHardness12',
] as const;

/** The name of a figure of a wood: one of `figureNames`. */
export type FigureName = (typeof figureNames)[number];

/** What is known in words about a wood: pores, tyloses, decay, dust. */
export interface Statement {
  /** Plain words, as close to the source as sense allows. */
  text: string;
  basis: Figure['basis'];
  citation?: Citation;
  /** True where it says that somebody may become allergic, not only irritated. */
  sensitising?: true;
  /** True where it says that the wood gives food a flavour. */
  flavours?: true;
}

/** Arrangement of the pores: what the tables call a wood, `none` for softwoods, which have no pores. */
export type PoreArrangement = 'ring-porous' | 'semi-ring-porous' | 'diffuse-porous' | 'none';
/** Whether pores are seen open on a planed face, as far as the tables say. */
export type PoreOpenness = 'closed' | 'open' | 'plugged' | 'none';

/** What can touch food, judged by a rule with reasons. It never says that a wood is safe. */
export interface FoodAssessment {
  level: 'usual' | 'with-care' | 'better-not' | 'not-enough-known';
  /** One short line for a list, for example `Usual kind of wood for a food surface`. */
  summary: string;
  reasons: readonly FoodReason[];
}

/** What a rule has to say for or against a wood under food. */
export interface FoodReason {
  /** Id of the rule that gave the reason, for example `hard-enough`. */
  rule: string;
  /** `for`, `against` the use, or `unknown` where the tables are silent. */
  speaks: 'for' | 'against' | 'unknown';
  text: string;
  basis: Figure['basis'];
  citation?: Citation;
}

/** How a wood moves by a source beside the one whose coefficients were chosen, per 1 % of moisture content, as fractions. */
export interface OtherMovement {
  /** The printed coefficients of Table 13-5, or the shrinkage in volume of trees measured one by one. */
  by: 'coefficients' | 'trees';
  radial: number;
  tangential: number;
  basis: Figure['basis'];
  citation: Citation;
  note?: string;
}

/** A wood with its figures resolved: for each name the firmest figure that the tables carry, or null where none is published. */
export interface Species {
  /** Common name in natural order, lower case with hyphens, for example `sugar-maple`. */
  id: string;
  /** Common name in natural order, sentence case, for example `Sugar maple`. */
  name: string;
  /** Other common and trade names, for example `hard maple`. */
  tradeNames: readonly string[];
  /** Botanical name, or null where none is recorded; `botanicalBasis` says how it is known. */
  botanical: string | null;
  botanicalBasis: Figure['basis'];
  /** True where the FDA Food Code names the wood for cutting boards. */
  namedByFoodCode?: true;
  kind: SpeciesRecord['kind'];
  origin: SpeciesRecord['origin'];
  figures: Readonly<Record<FigureName, Figure | null>>;
  /** Movement by other sources; empty where only one speaks of it. */
  otherMovement: readonly OtherMovement[];
  pores: { arrangement: PoreArrangement | null; openness: PoreOpenness | null; statements: readonly Statement[] };
  tyloses: Statement | null;
  decay:
    | (Pick<Statement, 'text' | 'basis' | 'citation'> & {
        group: 'resistant or very resistant' | 'moderately resistant' | 'slightly or nonresistant' | null;
      })
    | null;
  /** Published effects of dust, splinters and sap. An empty list means that nothing was read, not that there is nothing. */
  effects: readonly Statement[];
  /** What a document says of the taste or smell that the wood gives, or null where none was read. */
  taste: Statement | null;
  food: FoodAssessment;
}

/** A wood with everything that its tables say, also what lost to a firmer figure; made when the site is built. */
export interface SpeciesDossier extends Species {
  /** Figures that another row or document gives for the same name, or for a name of its own (ball hardness, design values). */
  others: readonly { name: FigureName | 'other'; figure: Figure }[];
  /** Remarks on the rows: suspicious, group values, differences between editions. */
  remarks: readonly string[];
  /** Table rows joined to the record: table name, row label and line of the file. */
  rows: readonly { table: string; label: string; line: number }[];
}
