import { equation } from '../evidence/index.ts';

/** A board as a slab between two faces, each behind a resistance. */
export interface Slab {
  /** mm. */
  thickness: number;
  /** Diffusion coefficient across the thickness, m²/s. */
  diffusion: number;
  /** Resistance between each face and the balance with the air, s/m: 1/S, and that of a coating. Above 0. */
  resistances: readonly [number, number];
}

/** A complex number: an amplitude and a phase beside those of the air. */
export interface Complex {
  re: number;
  im: number;
}

/** How a slab follows air that swings as a sine: each as a share of the air’s swing, a negative phase being a lag. */
export interface SlabResponse {
  mean: Complex;
  /** At the two faces, under any coating. */
  faces: readonly [Complex, Complex];
}

const metresPerMillimetre = 1e-3;

const complex = (re: number, im: number): Complex => ({ re, im });
const plus = (a: Complex, b: Complex) => complex(a.re + b.re, a.im + b.im);
const minus = (a: Complex, b: Complex) => complex(a.re - b.re, a.im - b.im);
const times = (a: Complex, b: Complex) => complex(a.re * b.re - a.im * b.im, a.re * b.im + a.im * b.re);

/** a/b without overflow: both divided by the larger part of b first. */
function over(a: Complex, b: Complex): Complex {
  const scale = Math.max(Math.abs(b.re), Math.abs(b.im));
  const [re, im] = [b.re / scale, b.im / scale];
  const size = (re * re + im * im) * scale;
  return complex((a.re * re + a.im * im) / size, (a.im * re - a.re * im) / size);
}

const one = complex(1, 0);

export const slabResponse = equation(
  {
    id: 'slab-in-swinging-air',
    title: 'Moisture of a board in air that swings',
    tex: String.raw`\begin{aligned}
\bar H &= (A + B)\,\frac{1 - e^{-k d}}{k d} \qquad k = \sqrt{\frac{i \omega}{D}} \qquad e = e^{-k d}\\
A &= \frac{1 + k D r_2 - e\,(1 - k D r_1)}{N} \qquad B = \frac{1 + k D r_1 - e\,(1 - k D r_2)}{N}\\
N &= (1 + k D r_1)(1 + k D r_2) - e^2 (1 - k D r_1)(1 - k D r_2)
\end{aligned}`,
    symbols: [
      {
        tex: String.raw`\bar H`,
        meaning: 'swing of the board’s mean moisture as a share of the swing at balance; its angle is the lag',
        unit: '1',
      },
      { tex: 'r_1,\\;r_2', meaning: 'resistance of air and coating at each face, 1/S + R', unit: 's/m' },
      { tex: 'D', meaning: 'diffusion coefficient', unit: 'm²/s' },
      { tex: 'd', meaning: 'thickness', unit: 'm' },
      { tex: '\\omega', meaning: 'angular frequency; 1.99 × 10⁻⁷ for a year', unit: '1/s' },
    ],
    validity:
      'The steady swing of a slab with constant coefficients, both faces in the same air. A year of any shape is the sum of its sines. Within about four thicknesses of an unsealed end the board follows faster than this.',
    basis: 'derived',
    citation: { source: 'kerf-and-cure', locator: 'Fick’s law for a sine, solved for two unlike faces' },
    remarks:
      'For two like faces it comes to 1/(q coth q + q²/L) with q = k d/2 and L = d/(2 D r), the form that the tests hold it against, beside a solution by time steps.',
  },
  /**
   * How a slab follows a sine.
   *
   * @param slab thickness, coefficient and resistances
   * @param angular angular frequency, 1/s, above 0
   */
  ({ thickness, diffusion, resistances }: Slab, angular: number): SlabResponse => {
    const depth = thickness * metresPerMillimetre;
    const wave = Math.sqrt(angular / (2 * diffusion));
    const k = complex(wave, wave);
    const fade = Math.exp(-wave * depth);
    const e = complex(fade * Math.cos(wave * depth), -fade * Math.sin(wave * depth));
    const [first, second] = resistances.map((resistance) => times(k, complex(resistance * diffusion, 0))) as [
      Complex,
      Complex,
    ];
    const open = [plus(one, first), plus(one, second)] as const;
    const shut = [times(e, minus(one, first)), times(e, minus(one, second))] as const;
    const determinant = minus(times(open[0], open[1]), times(shut[0], shut[1]));
    const a = over(minus(open[1], shut[0]), determinant);
    const b = over(minus(open[0], shut[1]), determinant);
    return {
      mean: over(times(plus(a, b), minus(one, e)), times(k, complex(depth, 0))),
      faces: [plus(a, times(b, e)), plus(times(a, e), b)],
    };
  },
);
