import {
  answer,
  type Basis,
  derivedBasis,
  type EvidenceNote,
  type Figure,
  type Outcome,
  refuse,
  weakestBasis,
} from '../evidence/index.ts';
import type { FigureName, Species } from '../species/types.ts';
import { usualShrinkageStart } from './formulas.ts';
import { type MovementEquation, seam } from './strain.ts';

/** What a wood's movement is computed from. */
export interface MovementProperties {
  /** Radial shrinkage from green to ovendry, % of the green dimension. */
  radialShrinkage: number;
  /** Tangential shrinkage from green to ovendry, % of the green dimension. */
  tangentialShrinkage: number;
  /** Moisture content at which shrinkage starts, %. */
  shrinkageStart: number;
  /** Radial change per 1 % moisture content as printed for this very wood, a fraction; null where none is. */
  radialCoefficient: number | null;
  /** Tangential change per 1 % moisture content as printed for this very wood, a fraction; null where none is. */
  tangentialCoefficient: number | null;
}

/** A wood's properties, and what an answer made from them rests on. */
export interface SpeciesMovement {
  properties: MovementProperties;
  /** Basis of a change computed by each equation: never firmer than derived, nor than the weakest figure that goes in. */
  basis: Readonly<Record<MovementEquation, Basis>>;
  /** The figures that go in, as evidence notes, by equation. */
  evidence: Readonly<Record<MovementEquation, readonly EvidenceNote[]>>;
}

/** A coefficient as Table 13-5 prints it for the wood; one worked out from the shrinkage says nothing that Eq. 13-3 does not. */
function printed(figure: Figure | null): Figure | null {
  return figure && figure.basis !== 'derived' && figure.citation?.locator?.startsWith('Table 13-5') ? figure : null;
}

/** How far apart the two equations may lie by rounding and by their different footing, as a fraction of the change. */
const usualSeam = 0.03;

/** What must be said of a wood whose coefficients and shrinkage, each as printed, do not follow from each other. */
function disagreement(species: Species, properties: MovementProperties, basis: Basis): EvidenceNote[] {
  const apart = seam(properties);
  const worst = apart ? Math.max(apart.radial, apart.tangential) : 0;
  if (worst <= usualSeam) return [];
  return [
    {
      text: `The handbook’s two tables disagree on ${species.name}: its coefficients (Table 13-5) and its shrinkage (Table 4-3 or 4-4) give changes that differ by up to ${Math.round(worst * 100)} %`,
      basis,
    },
  ];
}

function note(species: Species, figure: Figure): EvidenceNote {
  const unit = figure.unit === '%' ? ' %' : '';
  return {
    text: `${species.name}, ${figure.label.toLowerCase()}: ${figure.value}${unit}`,
    basis: figure.basis,
    ...(figure.citation ? { citation: figure.citation } : {}),
  };
}

/** Largest shrinkage that is believed of a wood, %: twice the largest in the handbook's tables. */
const mostShrinkage = 30;

/** Whether a shrinkage can be computed with. */
const sound = (figure: Figure | null): figure is Figure =>
  figure !== null && figure.value > 0 && figure.value <= mostShrinkage;

/**
 * Read a wood's movement properties from its record.
 *
 * Coefficients are taken only where Table 13-5 prints them for the wood itself; where they are derived, Eq. 13-3 is used.
 *
 * @param species a wood with its figures resolved
 * @returns properties, basis and evidence; an error on the field `species` where its shrinkage is not published
 */
export function movementProperties(species: Species): Outcome<SpeciesMovement> {
  const figure = (name: FigureName) => species.figures[name];
  const radial = figure('radialShrinkage');
  const tangential = figure('tangentialShrinkage');
  if (!sound(radial) || !sound(tangential)) {
    const missing = [sound(radial) ? '' : 'radial', sound(tangential) ? '' : 'tangential']
      .filter(Boolean)
      .join(' and ');
    return refuse(
      'species',
      `The ${missing} shrinkage of ${species.name} is not published in the tables here, so its movement cannot be computed`,
      'Pick a near relative with published shrinkage, or measure an offcut: mark it, weigh it, dry it and measure again.',
    );
  }
  const start = figure('shrinkageStart');
  const radialCoefficient = printed(figure('radialCoefficient'));
  const tangentialCoefficient = printed(figure('tangentialCoefficient'));
  const byShrinkage = start ? [radial, tangential, start] : [radial, tangential];
  const byCoefficient =
    radialCoefficient && tangentialCoefficient ? [radialCoefficient, tangentialCoefficient] : byShrinkage;
  const properties: MovementProperties = {
    radialShrinkage: radial.value,
    tangentialShrinkage: tangential.value,
    shrinkageStart: start?.value ?? usualShrinkageStart,
    radialCoefficient: radialCoefficient?.value ?? null,
    tangentialCoefficient: tangentialCoefficient?.value ?? null,
  };
  const basis = {
    '13-2': derivedBasis(byCoefficient.map((each) => each.basis)),
    '13-3': derivedBasis(byShrinkage.map((each) => each.basis)),
  };
  const apart = disagreement(species, properties, weakestBasis([basis['13-2'], basis['13-3']]));
  return answer({
    properties,
    basis,
    evidence: {
      '13-2': [...byCoefficient.map((each) => note(species, each)), ...apart],
      '13-3': [...byShrinkage.map((each) => note(species, each)), ...apart],
    },
  });
}
