import { equation } from '../evidence/index.ts';

/** Standard gravity, m/s². */
const gravity = 9.80665;
const radians = Math.PI / 180;

export const capillaryLength = equation(
  {
    id: 'capillary-length',
    title: 'Capillary length of a liquid',
    tex: 'l_c = \\sqrt{\\frac{\\gamma}{\\rho\\,g}}',
    symbols: [
      { tex: 'l_c', meaning: 'size below which surface tension outweighs gravity', unit: 'm' },
      { tex: '\\gamma', meaning: 'surface tension', unit: 'N/m' },
      { tex: '\\rho', meaning: 'density', unit: 'kg/m³' },
      { tex: 'g', meaning: 'standard gravity, 9.80665', unit: 'm/s²' },
    ],
    validity: 'Any liquid in air.',
    basis: 'published',
    citation: { source: 'de-gennes-2004', seen: 'quoted' },
  },
  /**
   * @param surfaceTension N/m
   * @param density kg/m³
   * @returns mm
   */
  (surfaceTension: number, density: number): number => 1000 * Math.sqrt(surfaceTension / (density * gravity)),
);

export const puddleThickness = equation(
  {
    id: 'puddle-thickness',
    title: 'Thickness at which a puddle comes to rest on a level face',
    tex: 'e = 2\\,l_c \\sin\\frac{\\theta}{2} = \\sqrt{\\frac{2\\gamma\\,(1 - \\cos\\theta)}{\\rho\\,g}}',
    symbols: [
      { tex: 'e', meaning: 'thickness away from the rim', unit: 'm' },
      { tex: 'l_c', meaning: 'capillary length', unit: 'm' },
      { tex: '\\theta', meaning: 'contact angle of the liquid on the face, 0 where it wets it wholly', unit: '°' },
      { tex: '\\gamma', meaning: 'surface tension', unit: 'N/m' },
      { tex: '\\rho', meaning: 'density', unit: 'kg/m³' },
    ],
    validity:
      'A puddle much wider than it is thick, on a level face without a dam, before it gels. What soaks in, drips or gels on the way is not in it.',
    basis: 'published',
    citation: { source: 'de-gennes-2004', seen: 'quoted' },
  },
  /**
   * @param surfaceTension N/m
   * @param density kg/m³
   * @param contactAngle degrees, 0 to 180
   * @returns mm
   */
  (surfaceTension: number, density: number, contactAngle: number): number =>
    2 * capillaryLength(surfaceTension, density) * Math.sin((contactAngle / 2) * radians),
);

/** The contact angle at which a coat of this thickness would stand by itself, degrees; null where no angle holds it. */
export function angleThatHolds(thickness: number, surfaceTension: number, density: number): number | null {
  const sine = thickness / (2 * capillaryLength(surfaceTension, density));
  return sine > 1 ? null : (2 * Math.asin(sine)) / radians;
}

/** Mixed coating resin, from memory: surface tension in N/m, density in kg/m³. */
export const usualResin = { surfaceTension: 0.04, density: 1100 } as const;

/** Contact angles of resin on wood and on cured resin that are taken where none was measured, degrees: a middle and its band. */
export const usualAngle = { value: 45, low: 30, high: 60 } as const;
