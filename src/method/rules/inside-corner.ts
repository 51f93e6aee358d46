import { amount } from '../../model/quantity/index.ts';
import { askedOf, figureOf, hasOwnCaution, numberTold, placeOf } from './kit.ts';
import { rule } from './rule.ts';

/** A hollow that the bit does not reach into. */
export const insideCorner = rule({
  id: 'inside-corner',
  level: 'stop',
  title: 'The bit follows every hollow',
  looksAt:
    'The diameter of the bit beside the least inside radius of the outline. Holes that a bit does not enter are bored and do not count.',
  why: 'A bit of diameter d follows a hollow of radius r only where d is at most 2 r; what it leaves standing must come off by hand.',
  find: (worked) =>
    askedOf(worked, 'template-fit').flatMap((calculation) => {
      const sharp = hasOwnCaution(calculation, 'sharp-corner');
      if (!sharp && !hasOwnCaution(calculation, 'bit-too-wide')) return [];
      const diameter = numberTold(calculation, 'bitDiameter');
      const radius = figureOf(calculation, 'insideRadius')?.value ?? 0;
      const left = figureOf(calculation, 'leftStanding')?.value ?? 0;
      const bit = diameter === undefined ? 'A router bit' : `A bit of ${amount(diameter, 'mm')}`;
      return [
        {
          ...placeOf(calculation),
          message: sharp
            ? `${bit} does not reach into a sharp inside corner of the outline${left > 0 ? `, and leaves ${amount(left, 'mm', 2)} standing there` : ''}.`
            : `${bit} does not follow a hollow of radius ${amount(radius, 'mm')}: it leaves ${amount(left, 'mm', 2)} standing.`,
          wayOut: sharp
            ? 'Round the corner on the outline, or finish it with a saw and a file, as a step of its own.'
            : `Take a bit of at most ${amount(2 * radius, 'mm')}, or round the hollow to ${amount((diameter ?? 0) / 2, 'mm')}.`,
        },
      ];
    }),
});
