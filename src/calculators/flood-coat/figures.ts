import type { Basis } from '../../model/evidence/index.ts';
import { bareWoodTakes } from '../../model/resin/dose.ts';
import { usualAngle } from '../../model/resin/flood.ts';
import type { FigureDeclaration, FigureValue } from '../kit/calculator.ts';
import type { Coat } from './coat.ts';

/** What the calculator may tell, the headline first. */
export const figures = {
  thickness: { label: 'Thickness at rest without a dam', unit: 'mm', digits: 2 },
  amountAtRest: { label: 'Resin for that thickness', unit: 'g', digits: 2, kept: true },
  amountWanted: { label: 'Resin for the thickness wanted', unit: 'g', digits: 3, kept: true },
  overEdge: { label: 'Of it over the edge without a dam', unit: 'g', digits: 2, kept: true },
  holdingAngle: {
    label: 'Contact angle that would hold it',
    unit: 'deg',
    digits: 2,
    help: 'Seen from the side, between the face and the rim of a drop at rest: the more a face repels the liquid, the larger.',
  },
  capillaryLength: {
    label: 'Capillary length',
    unit: 'mm',
    digits: 3,
    help: 'Below this size surface tension outweighs gravity: no puddle stands higher than twice it.',
    minor: true,
  },
} as const satisfies Record<string, FigureDeclaration>;

const angles = `Contact angles of ${usualAngle.low} and ${usualAngle.high}°: they differ from face to face and are not measured here.`;

/**
 * The figures of a coat.
 *
 * @param basis of what follows from tension, density and angle
 * @param poured false of a coat that must not be poured so: it has no amount
 */
export function figuresOf(
  coat: Coat,
  basis: Basis,
  poured: boolean,
): Partial<Record<keyof typeof figures, FigureValue>> {
  const { rest, least, most, unsure, wanted, holding, grams } = coat;
  const band = (scale: (thickness: number) => number) =>
    unsure ? { low: scale(least), high: scale(most), band: angles } : {};
  const spills = wanted !== undefined && wanted > rest;
  const lost = (thickness: number) => Math.max(0, grams?.((wanted ?? 0) - thickness) ?? 0);
  return {
    thickness: { value: rest, basis, ...band((thickness) => thickness) },
    ...(grams && poured
      ? {
          amountAtRest: {
            value: grams(rest),
            basis,
            ...band(grams),
            note: `On a face that drinks nothing: bare wood takes ${bareWoodTakes} first.`,
          },
          ...(wanted === undefined ? {} : { amountWanted: { value: grams(wanted), basis } }),
          ...(spills
            ? {
                overEdge: {
                  value: lost(rest),
                  basis,
                  ...(unsure ? { low: lost(most), high: lost(least), band: 'The same two contact angles.' } : {}),
                },
              }
            : {}),
        }
      : {}),
    ...(holding !== null && spills && poured
      ? {
          holdingAngle: {
            value: holding,
            basis,
            note: `Resin on wood or cured resin shows about ${usualAngle.low} to ${usualAngle.high}°.`,
          },
        }
      : {}),
    capillaryLength: { value: coat.capillary, basis },
  };
}
