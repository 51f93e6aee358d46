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
import { listed } from '../quantity/index.ts';
import { followsFromShrinkage } from '../species/derive.ts';
import type { FigureName, Species } from '../species/types.ts';
import { type Strains, usualShrinkageStart } from './formulas.ts';
import { type MovementEquation, seam, strains, usualSeam } from './strain.ts';

/** What a wood's movement is computed from. */
export interface MovementProperties {
  /** Radial shrinkage from green to ovendry, % of the green dimension; null where only coefficients are printed. */
  radialShrinkage: number | null;
  /** Tangential shrinkage from green to ovendry, % of the green dimension; null where only coefficients are printed. */
  tangentialShrinkage: number | null;
  /** Moisture content at which shrinkage starts, %. */
  shrinkageStart: number;
  /** Radial change per 1 % moisture content as printed for this very wood, a fraction; null where none is. */
  radialCoefficient: number | null;
  /** Tangential change per 1 % moisture content as printed for this very wood, a fraction; null where none is. */
  tangentialCoefficient: number | null;
  /** True where the coefficients are the wood's unit shrinkage and no row of Table 13-5. */
  unitShrinkage?: true;
  /** Change per 1 % moisture content by other sources, fractions; the band holds them. Absent where none speaks. */
  elsewhere?: readonly Strains[];
}

/** A wood's properties, and what an answer made from them rests on. */
export interface SpeciesMovement {
  properties: MovementProperties;
  /** Basis of a change computed by each equation: never firmer than derived, nor than the weakest figure that goes in. */
  basis: Readonly<Record<MovementEquation, Basis>>;
  /** The figures that go in, as evidence notes, by equation. */
  evidence: Readonly<Record<MovementEquation, readonly EvidenceNote[]>>;
}

/** Unit shrinkage as an Australian page prints it: the change in service for 1 % of moisture content, another thing than shrinkage. */
function isUnitShrinkage(figure: Figure | null): boolean {
  return figure?.citation?.source === 'queensland-timber';
}

/**
 * A coefficient as Table 13-5 prints it for the wood, or its unit shrinkage; one worked out from the shrinkage says
 * nothing that Eq. 13-3 does not.
 */
function printed(name: 'radialCoefficient' | 'tangentialCoefficient', { figures }: Species): Figure | null {
  const figure = figures[name];
  return figure === null || figure.basis === 'derived' || followsFromShrinkage(name, figures) ? null : figure;
}

/** What unit shrinkage is, where it takes the place of a coefficient. */
function unitShrinkageNote(species: Species): EvidenceNote[] {
  const { radialCoefficient } = species.figures;
  if (!isUnitShrinkage(radialCoefficient)) return [];
  return [
    {
      text: `The coefficients of ${species.name} are its unit shrinkage: the change in service for 1 % of moisture content, of timber reconditioned after seasoning. By Australian practice it is found from 12 to 5 %; the page does not say so.`,
      basis: 'shop-practice',
      ...(radialCoefficient?.citation ? { citation: radialCoefficient.citation } : {}),
    },
  ];
}

/** What must be said of a wood whose coefficients and shrinkage, each as printed, do not follow from each other. */
function disagreement(species: Species, properties: MovementProperties, basis: Basis): EvidenceNote[] {
  const apart = seam(properties);
  const worst = apart ? Math.max(apart.radial, apart.tangential) : 0;
  if (worst <= usualSeam) return [];
  return [
    {
      text: `The handbook’s two tables disagree on ${species.name}: its coefficients (Table 13-5) and its shrinkage (Table 4-3 or 4-4) give changes that differ by up to ${Math.round(worst * 100)} %. The band holds both.`,
      basis,
    },
  ];
}

/** Change across the flat by a source beside the one used: how far from it, in words. */
function apartWords(other: number, used: number): string {
  const percent = Math.round(Math.abs(other / used - 1) * 100);
  return `${percent} % ${other > used ? 'more' : 'less'}`;
}

/** What other sources say of a wood's movement, each where it lies further from the answer than rounding goes. */
function otherSources(species: Species, properties: MovementProperties): EvidenceNote[] {
  const used = strains(10, 11, properties, '13-3');
  return species.otherMovement.flatMap(({ by, radial, tangential, basis, citation, note }): EvidenceNote[] => {
    const far = [radial / used.radial, tangential / used.tangential].some((ratio) => Math.abs(ratio - 1) > usualSeam);
    if (!far) return [];
    const words = `tangential movement ${apartWords(tangential, used.tangential)}, radial ${apartWords(radial, used.radial)}`;
    const text =
      by === 'coefficients'
        ? `The handbook’s two tables disagree on ${species.name}: Table 13-5 prints coefficients of ${radial} radial and ${tangential} tangential. Against its shrinkage they give ${words}. The shrinkage is used, because it was read; the band holds both.`
        : `Trees of ${species.name} measured one by one give, with their shrinkage in volume shared out as the handbook’s is, ${words} than the handbook’s shrinkage. ${note ?? ''} The band holds them.`;
    return [{ text, basis, citation }];
  });
}

function note(species: Species, figure: Figure): EvidenceNote {
  const unit = figure.unit === '%' ? ' %' : '';
  return {
    // What a figure is of matters here: one old lot moves as its trees did.
    text: `${species.name}, ${figure.label.toLowerCase()}: ${figure.value}${unit}${figure.note ? `. ${figure.note}` : ''}`,
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
 * Coefficients are taken only where Table 13-5 prints them for the wood itself, or a page its unit shrinkage; where they
 * are derived, Eq. 13-3 is used. Shrinkage in volume or to 12 % is never taken for either.
 *
 * @param species a wood with its figures resolved
 * @returns properties, basis and evidence; an error on the field `species` where neither its shrinkage nor coefficients of its own are
 *   published
 */
export function movementProperties(species: Species): Outcome<SpeciesMovement> {
  const figure = (name: FigureName) => species.figures[name];
  const radial = figure('radialShrinkage');
  const tangential = figure('tangentialShrinkage');
  const radialCoefficient = printed('radialCoefficient', species);
  const tangentialCoefficient = printed('tangentialCoefficient', species);
  const byCoefficientAlone = radialCoefficient !== null && tangentialCoefficient !== null;
  if ((!sound(radial) || !sound(tangential)) && !byCoefficientAlone) {
    const missing = listed([sound(radial) ? '' : 'radial', sound(tangential) ? '' : 'tangential'].filter(Boolean));
    return refuse(
      'species',
      `The ${missing} shrinkage of ${species.name} is not published in the tables here, so its movement cannot be computed`,
      'Pick a near relative with published shrinkage, or measure an offcut: mark it, weigh it, dry it and measure again.',
    );
  }
  const start = figure('shrinkageStart');
  const bothShrinkages = sound(radial) && sound(tangential) ? [radial, tangential] : [];
  const byShrinkage = start && bothShrinkages.length > 0 ? [...bothShrinkages, start] : bothShrinkages;
  const byCoefficient =
    radialCoefficient && tangentialCoefficient ? [radialCoefficient, tangentialCoefficient] : byShrinkage;
  const properties: MovementProperties = {
    radialShrinkage: bothShrinkages[0]?.value ?? null,
    tangentialShrinkage: bothShrinkages[1]?.value ?? null,
    shrinkageStart: start?.value ?? usualShrinkageStart,
    radialCoefficient: radialCoefficient?.value ?? null,
    tangentialCoefficient: tangentialCoefficient?.value ?? null,
    ...(isUnitShrinkage(radialCoefficient) ? { unitShrinkage: true as const } : {}),
    ...(species.otherMovement.length > 0
      ? { elsewhere: species.otherMovement.map(({ radial, tangential }) => ({ radial, tangential })) }
      : {}),
  };
  const basis = {
    '13-2': derivedBasis(byCoefficient.map((each) => each.basis)),
    '13-3': derivedBasis((bothShrinkages.length > 0 ? byShrinkage : byCoefficient).map((each) => each.basis)),
  };
  const apart = [
    ...unitShrinkageNote(species),
    ...disagreement(species, properties, weakestBasis([basis['13-2'], basis['13-3']])),
    ...otherSources(species, properties),
  ];
  return answer({
    properties,
    basis,
    evidence: {
      '13-2': [...byCoefficient.map((each) => note(species, each)), ...apart],
      '13-3': [...byShrinkage.map((each) => note(species, each)), ...apart],
    },
  });
}
