import { equation } from '../evidence/index.ts';
import { erfc, scaledErfc, scaledErfcBeyondLinear } from './error-function.ts';

// A board of thickness 2l, in numbers without units: Fo = D·t/l² is time, L = S·l/D compares the resistance inside the
// board with that at its face, and ξ is the distance from the middle as a share of l. Change is 0 at the start and 1 at balance.

const crank = (locator: string) => ({ source: 'crank-1975' as const, locator, seen: 'memory' as const });
const numbering =
  'The book was not opened, so its equation numbers are from memory. The series itself is proved here: by its limits, by the short-time form, and by a time-stepping solution in the tests.';

/**
 * Below this Fo the two faces do not feel each other (the neglected part is smaller than exp(−1/Fo), 1e-43), and the
 * short-time form is exact; above it, 24 terms leave less than exp(−23²π²·0.01), 1e-22.
 */
const shortTime = 0.01;
const termCount = 24;

const symbols = {
  fo: { tex: '\\mathrm{Fo}', meaning: 'time, D t / l²', unit: '1' },
  ell: { tex: 'L', meaning: 'resistance of the board against that of its face, S l / D', unit: '1' },
  beta: { tex: '\\beta_n', meaning: 'roots of β tan β = L', unit: '1' },
  change: { tex: 'E', meaning: 'share of the whole change that the mean moisture content has made', unit: '1' },
};

/**
 * The n-th positive root of β tan β = L.
 *
 * Newton’s iteration on β − (n−1)π − atan(L/β), which rises and is concave: from a start below the root it climbs to it and
 * cannot overshoot, for every L.
 *
 * @param n from 1
 * @param ell from just above 0 to Infinity
 */
export function surfaceRoot(n: number, ell: number): number {
  const asymptote = (n - 1) * Math.PI;
  if (ell === Number.POSITIVE_INFINITY) return asymptote + Math.PI / 2;
  let beta =
    n === 1 ? Math.sqrt(ell / (1 + (4 * ell) / Math.PI ** 2)) : asymptote + Math.atan(ell / (asymptote + Math.PI / 2));
  for (let step = 0; step < 60; step += 1) {
    const gap = beta - asymptote - Math.atan(ell / beta);
    const next = beta - gap / (1 + ell / (beta * beta + ell * ell));
    if (!(next > beta)) break;
    beta = next;
  }
  return beta;
}

/** Roots and the two coefficients of each term: of the mean, and of the profile. */
interface Terms {
  beta: readonly number[];
  mean: readonly number[];
  profile: readonly number[];
}

/**
 * The terms of the series for one L, worked out once for every time that is asked for.
 *
 * @param ell from just above 0 to Infinity
 */
function seriesTerms(ell: number): Terms {
  const beta: number[] = [];
  const mean: number[] = [];
  const profile: number[] = [];
  for (let n = 1; n <= termCount; n += 1) {
    const root = surfaceRoot(n, ell);
    const sign = n % 2 === 1 ? 1 : -1;
    const squares = root * root + ell * ell;
    beta.push(root);
    mean.push(Number.isFinite(ell) ? (2 * ell * ell) / (root * root * (squares + ell)) : 2 / (root * root));
    // cos β = ±β/√(β² + L²) at a root, which keeps the term finite as L grows.
    profile.push(sign * (Number.isFinite(ell) ? (2 * ell * Math.sqrt(squares)) / ((squares + ell) * root) : 2 / root));
  }
  return { beta, mean, profile };
}

/** Mean change of a board, from the series or, for short times, from the form of an endless solid with a resisting face. */
function meanChange(fo: number, ell: number, terms: Terms): number {
  if (fo <= 0) return 0;
  if (fo < shortTime) {
    if (ell === Number.POSITIVE_INFINITY) return 2 * Math.sqrt(fo / Math.PI);
    return scaledErfcBeyondLinear(ell * Math.sqrt(fo)) / ell;
  }
  let left = 0;
  for (const [index, root] of terms.beta.entries()) left += (terms.mean[index] as number) * Math.exp(-root * root * fo);
  return Math.min(1, Math.max(0, 1 - left));
}

/** Share of its change of moisture that a board whose two faces resist has made, 0 to 1. */
export const fickMean = equation(
  {
    id: 'fick-board-mean',
    title: 'Mean moisture of a board whose two faces resist',
    tex: 'E = 1 - \\sum_{n=1}^{\\infty} \\frac{2 L^2 \\, e^{-\\beta_n^2 \\mathrm{Fo}}}{\\beta_n^2 (\\beta_n^2 + L^2 + L)}, \\qquad \\beta_n \\tan \\beta_n = L',
    symbols: [symbols.change, symbols.beta, symbols.ell, symbols.fo],
    validity:
      'One dimension, across the thickness, with constant D and S. Within about four thicknesses of an unsealed end the board changes faster than this.',
    basis: 'memory',
    citation: crank('Eq. 4.53'),
    remarks: numbering,
  },
  /**
   * Share of the whole change that the mean moisture content has made.
   *
   * @param fo D·t/l², from 0
   * @param ell S·l/D, from just above 0 to Infinity (a face at balance at once)
   * @returns 0 at the start, rising to 1
   */
  (fo: number, ell: number): number => meanChange(fo, ell, seriesTerms(ell)),
);

/** The same where the faces are at balance at once, 0 to 1. */
export const fickMeanFreeFace = equation(
  {
    id: 'fick-board-mean-free-face',
    title: 'Mean moisture of a board whose faces are at balance at once',
    tex: 'E = 1 - \\sum_{n=0}^{\\infty} \\frac{8}{(2n+1)^2 \\pi^2} \\, e^{-(2n+1)^2 \\pi^2 \\mathrm{Fo} / 4}',
    symbols: [symbols.change, symbols.fo],
    validity: 'The limit of no resistance at the face, L → ∞. For short times E = 2√(Fo/π).',
    basis: 'memory',
    citation: crank('Eq. 4.18'),
    remarks: numbering,
  },
  /**
   * Share of the whole change made by the mean, summed as it stands, 200 terms: what the general form is checked against.
   *
   * @param fo D·t/l², from 0
   */
  (fo: number): number => {
    let left = 0;
    for (let n = 199; n >= 0; n -= 1) {
      const odd = (2 * n + 1) ** 2 * Math.PI ** 2;
      left += (8 / odd) * Math.exp((-odd * fo) / 4);
    }
    return 1 - left;
  },
);

/** Change at a depth; the short-time form adds what comes from the far face, which matters near the middle alone. */
function localChange(xi: number, fo: number, ell: number, terms: Terms): number {
  if (fo <= 0) return 0;
  if (fo < shortTime) {
    const from = (depth: number) => {
      const near = depth / (2 * Math.sqrt(fo));
      if (ell === Number.POSITIVE_INFINITY) return erfc(near);
      const z = near + ell * Math.sqrt(fo);
      return Math.exp(-near * near) * (scaledErfc(near) - scaledErfc(z));
    };
    return Math.min(1, from(1 - xi) + from(1 + xi));
  }
  let left = 0;
  for (const [index, root] of terms.beta.entries()) {
    left += (terms.profile[index] as number) * Math.cos(root * xi) * Math.exp(-root * root * fo);
  }
  return Math.min(1, Math.max(0, 1 - left));
}

/** Moisture content at a depth of a board whose two faces resist, %. */
export const fickProfile = equation(
  {
    id: 'fick-board-profile',
    title: 'Moisture at a depth of a board whose two faces resist',
    tex: '\\frac{M - M_0}{M_e - M_0} = 1 - \\sum_{n=1}^{\\infty} \\frac{2 L \\cos(\\beta_n \\xi) \\, e^{-\\beta_n^2 \\mathrm{Fo}}}{(\\beta_n^2 + L^2 + L) \\cos \\beta_n}',
    symbols: [
      { tex: 'M', meaning: 'moisture content at the depth', unit: '%' },
      { tex: 'M_0', meaning: 'moisture content at the start', unit: '%' },
      { tex: 'M_e', meaning: 'moisture content at balance', unit: '%' },
      { tex: '\\xi', meaning: 'distance from the middle as a share of half the thickness', unit: '1' },
      symbols.beta,
      symbols.ell,
      symbols.fo,
    ],
    validity: 'As for the mean.',
    basis: 'memory',
    citation: crank('Eq. 4.50'),
    remarks: numbering,
  },
  /**
   * Share of the whole change made at a depth.
   *
   * @param xi 0 in the middle, 1 at the face
   * @param fo D·t/l², from 0
   * @param ell S·l/D, from just above 0 to Infinity
   */
  (xi: number, fo: number, ell: number): number => localChange(xi, fo, ell, seriesTerms(ell)),
);

/** Change against time of one board; the roots are found once. */
export interface BoardResponse {
  /** Share of the change made by the mean at Fo. */
  mean(fo: number): number;
  /** Share of the change made at ξ (0 middle, 1 face) at Fo. */
  at(xi: number, fo: number): number;
  /** The Fo at which the mean has made this share of the change. */
  timeFor(share: number): number;
}

/**
 * The response of a board with one L.
 *
 * @param ell S·l/D, from just above 0 to Infinity
 */
export function boardResponse(ell: number): BoardResponse {
  const terms = seriesTerms(ell);
  const mean = (fo: number) => meanChange(fo, ell, terms);
  return {
    mean,
    at: (xi, fo) => localChange(xi, fo, ell, terms),
    timeFor(share) {
      if (share <= 0) return 0;
      const wanted = Math.min(share, 1 - 1e-12);
      // The first term alone bounds the time from above: the others only make the change larger at a time.
      let high = Math.max(1, 40 / (terms.beta[0] as number) ** 2);
      let low = 0;
      for (let step = 0; step < 200 && high - low > 1e-14 * high; step += 1) {
        // Short times span decades, so the upper bound falls by tenths until the root is between.
        const middle = low === 0 ? high / 10 : (low + high) / 2;
        if (middle < 1e-300) break;
        if (mean(middle) < wanted) low = middle;
        else high = middle;
      }
      return high;
    },
  };
}
