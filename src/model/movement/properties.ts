import {
  answer,
  type Basis,
  derivedBasis,
  type EvidenceNote,
  type Figure,
  type Outcome,
  refuse,
} from '../evidence/index.ts';
import type { FigureName, Species } from '../species/types.ts';
import { usualShrinkageStart } from './formulas.ts';
import type { MovementEquation } from './strain.ts';

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

/** A coefficient as printed for the wood; one that was worked out from the shrinkage says nothing that Eq. 13-3 does not. */
function printed(figure: Figure | null): Figure | null {
  return figure && figure.basis !== 'derived' ? figure : null;
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
  return answer({
    properties: {
      radialShrinkage: radial.value,
      tangentialShrinkage: tangential.value,
      shrinkageStart: start?.value ?? usualShrinkageStart,
      radialCoefficient: radialCoefficient?.value ?? null,
      tangentialCoefficient: tangentialCoefficient?.value ?? null,
    },
    basis: {
      '13-2': derivedBasis(byCoefficient.map(({ basis }) => basis)),
      '13-3': derivedBasis(byShrinkage.map(({ basis }) => basis)),
    },
    evidence: {
      '13-2': byCoefficient.map((each) => note(species, each)),
      '13-3': byShrinkage.map((each) => note(species, each)),
    },
  });
}
