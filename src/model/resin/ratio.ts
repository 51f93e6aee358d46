import { equation } from '../evidence/index.ts';

const mixSymbols = {
  mass: [
    { tex: 'm_A, m_B', meaning: 'mass of part A (resin) and part B (hardener)', unit: 'g' },
    { tex: '\\rho_A, \\rho_B', meaning: 'densities of the parts', unit: 'g/mL' },
  ],
  volume: { tex: 'V_A, V_B', meaning: 'volumes of the parts', unit: 'mL' },
} as const;

/** Ratio by weight that is the same mix as a ratio by volume. */
export const weightRatioOfVolume = equation(
  {
    id: 'resin-weight-ratio',
    title: 'Mix ratio by weight from the ratio by volume',
    tex: '\\frac{m_B}{m_A} = \\frac{V_B}{V_A} \\cdot \\frac{\\rho_B}{\\rho_A}',
    symbols: [...mixSymbols.mass, mixSymbols.volume],
    validity: 'Exact. Both densities at one temperature.',
    basis: 'derived',
    remarks: 'Mass is density times volume; nothing else goes in.',
  },
  /**
   * @param volumeRatio parts of B to one of A by volume
   * @param densityA g/mL
   * @param densityB g/mL
   * @returns parts of B to one of A by weight
   */
  (volumeRatio: number, densityA: number, densityB: number): number => (volumeRatio * densityB) / densityA,
);

/**
 * Ratio by volume that is the same mix as a ratio by weight: the inverse of `weightRatioOfVolume`.
 *
 * @param weightRatio parts of B to one of A by weight
 * @param densityA g/mL
 * @param densityB g/mL
 * @returns parts of B to one of A by volume
 */
export function volumeRatioOfWeight(weightRatio: number, densityA: number, densityB: number): number {
  return (weightRatio * densityA) / densityB;
}

/** Density of a mix whose parts keep their volumes. */
export const mixedDensity = equation(
  {
    id: 'resin-mixed-density',
    title: 'Density of the mix',
    tex: '\\rho = \\frac{m_A + m_B}{m_A/\\rho_A + m_B/\\rho_B}',
    symbols: [{ tex: '\\rho', meaning: 'density of the mix, still liquid', unit: 'g/mL' }, ...mixSymbols.mass],
    validity:
      'Volumes are taken to add. The cured resin is a little denser: it shrinks by some percent as it cures, after it has filled the place.',
    basis: 'derived',
  },
  /**
   * @param weightRatio parts of B to one of A by weight
   * @param densityA g/mL
   * @param densityB g/mL
   * @returns g/mL
   */
  (weightRatio: number, densityA: number, densityB: number): number =>
    (1 + weightRatio) / (1 / densityA + weightRatio / densityB),
);

/** Parts A and B of a mix. */
export interface Parts {
  /** g. */
  massA: number;
  massB: number;
  /** mL. */
  volumeA: number;
  volumeB: number;
}

/** Masses of the parts in a mass of mix. */
export const partsOfMass = equation(
  {
    id: 'resin-parts',
    title: 'Parts of a mix',
    tex: 'm_A = \\frac{M}{1 + w}, \\qquad m_B = \\frac{M\\,w}{1 + w}',
    symbols: [
      { tex: 'M', meaning: 'mass of the mix', unit: 'g' },
      { tex: 'w', meaning: 'parts of B to one of A by weight', unit: '1' },
      ...mixSymbols.mass.slice(0, 1),
    ],
    validity: 'Exact. Pigment comes on top.',
    basis: 'derived',
  },
  /**
   * @param mass mass of the mix, g
   * @param weightRatio parts of B to one of A by weight
   * @param densityA g/mL
   * @param densityB g/mL
   * @returns masses in g and volumes in mL
   */
  (mass: number, weightRatio: number, densityA: number, densityB: number): Parts => {
    const massA = mass / (1 + weightRatio);
    const massB = mass - massA;
    return { massA, massB, volumeA: massA / densityA, volumeB: massB / densityB };
  },
);

/**
 * Percent by which two statements of one ratio may differ: up to the first by rounding; beyond the second one of them is wrong, and
 * nothing is dosed until it is known which. Memory: a mix should be off by no more than 2 to 3 %.
 */
export const ratioLimits = { rounding: 2, stop: 5 } as const;

/** What a mix ratio says, or why it says nothing. */
export type RatioReading = { ok: true; value: number } | { ok: false; problem: string; wayOut: string };

const ratioPattern = /^(\d+(?:[.,]\d+)?|[.,]\d+)\s*(?::|\/|to|\s)\s*(\d+(?:[.,]\d+)?|[.,]\d+)$/i;
/** No two-part resin that is poured lies outside these parts of B to one of A. */
const ratioRange = { least: 0.02, most: 5 };

/**
 * Read a mix ratio, resin first: `2:1`, `100:43`, `1 to 1`, `100 : 83,6`.
 *
 * @returns parts of B (hardener) to one of A (resin)
 */
export function parseMixRatio(text: string): RatioReading {
  const shown = text.replace(/\s+/g, ' ').trim().slice(0, 40);
  const match = ratioPattern.exec(text.replace(/\s+/g, ' ').trim());
  const wayOut = 'Write parts of resin to parts of hardener, such as 2:1 or 100:43.';
  if (!match) return { ok: false, problem: `“${shown}” is not a mix ratio`, wayOut };
  const [a, b] = [match[1], match[2]].map((part) => Number((part ?? '').replace(',', '.'))) as [number, number];
  const value = b / a;
  if (!(a > 0 && b > 0)) return { ok: false, problem: `“${shown}” leaves one part out`, wayOut };
  if (!(value >= ratioRange.least && value <= ratioRange.most)) {
    return {
      ok: false,
      problem: `“${shown}” is ${Number(value.toPrecision(3))} of hardener to one of resin; this takes ${ratioRange.least} to ${ratioRange.most}`,
      wayOut: 'Resin stands first, hardener second: 2:1 is two of resin to one of hardener.',
    };
  }
  return { ok: true, value };
}

/** A mix ratio as bottles have it, resin first: `2:1`, `1:2`, `100:43`. @param ratio parts of hardener to one of resin */
export function writeMixRatio(ratio: number): string {
  const whole = (value: number) => Math.abs(value - Math.round(value)) < 1e-6 * value;
  if (whole(1 / ratio)) return `${Math.round(1 / ratio)}:1`;
  if (whole(ratio)) return `1:${Math.round(ratio)}`;
  return `100:${Number((100 * ratio).toPrecision(3))}`;
}
