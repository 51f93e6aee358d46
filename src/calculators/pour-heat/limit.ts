import type { Figure } from '../../model/evidence/index.ts';
import { mixedDensity } from '../../model/resin/ratio.ts';
import type { Resin } from '../../model/resin/types.ts';

/** A limit of the sheet on the volume or the mass of one pour, held against a pour of this area. */
export interface AmountLimit {
  /** Volume in mL or mass in g, as the sheet states it. */
  figure: Figure;
  /** The same of this pour; undefined where its area was not given, so that the limit is not checked. */
  here: number | undefined;
  /** Depth at which a pour of this area reaches the limit, mm. */
  depth: number | undefined;
}

/**
 * The limits on volume and mass that a sheet states, each checked where the area is known.
 *
 * @param depth of the pour, mm
 * @param area of the pour, mm²
 * @param usualDensity of a mix whose densities or ratio are not known, g/mL
 */
export function amountLimits(
  { figures }: Resin,
  depth: number,
  area: number | undefined,
  usualDensity: number,
): AmountLimit[] {
  const { weightRatio, densityA, densityB, greatestVolume, greatestMass } = figures;
  const density =
    weightRatio && densityA && densityB
      ? mixedDensity(weightRatio.value, densityA.value, densityB.value)
      : usualDensity;
  const limit = (figure: Figure | null, perMillilitre: number): AmountLimit[] => {
    if (!figure) return [];
    if (area === undefined) return [{ figure, here: undefined, depth: undefined }];
    const perMillimetre = (perMillilitre * area) / 1000;
    return [{ figure, here: perMillimetre * depth, depth: figure.value / perMillimetre }];
  };
  return [...limit(greatestVolume, 1), ...limit(greatestMass, density)];
}
