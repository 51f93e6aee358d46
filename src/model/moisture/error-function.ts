/** Γ(n/2 + 1) for n = 0, 1, 2 …, by recurrence from Γ(1) = 1 and Γ(3/2) = √π/2. */
const halfGamma: readonly number[] = (() => {
  const values = [1, Math.sqrt(Math.PI) / 2];
  for (let n = 2; n < 60; n += 1) values.push((values[n - 2] as number) * (n / 2));
  return values;
})();

/** Sum of (−z)ⁿ/Γ(n/2 + 1) from `first`, which is exp(z²)·erfc(z) where `first` is 0; for z up to about 1. */
function powerSeries(z: number, first: number): number {
  let sum = 0;
  let power = (-z) ** first;
  for (let n = first; n < halfGamma.length; n += 1) {
    const term = power / (halfGamma[n] as number);
    sum += term;
    if (Math.abs(term) < 1e-18 * Math.abs(sum)) break;
    power *= -z;
  }
  return sum;
}

/**
 * The scaled complementary error function exp(z²)·erfc(z), which stays finite where exp(z²) does not.
 *
 * @param z from 0 upwards
 * @returns a number in (0, 1], to about 13 digits
 */
export function scaledErfc(z: number): number {
  if (z < 1) return powerSeries(z, 0);
  if (z < 2.5) {
    // exp(z²) less the series of exp(z²)·erf(z), all of whose terms are positive.
    let term = z;
    let sum = z;
    for (let n = 1; n < 200 && term > sum * 1e-17; n += 1) {
      term *= (2 * z * z) / (2 * n + 1);
      sum += term;
    }
    return Math.exp(z * z) - (2 / Math.sqrt(Math.PI)) * sum;
  }
  // Laplace's continued fraction, from its 80th term backwards.
  let fraction = z;
  for (let n = 80; n >= 1; n -= 1) fraction = z + n / 2 / fraction;
  return 1 / (fraction * Math.sqrt(Math.PI));
}

/**
 * exp(z²)·erfc(z) − 1 + 2z/√π without the loss of digits near z = 0, where it is z² and smaller terms.
 *
 * @param z from 0 upwards
 */
export function scaledErfcBeyondLinear(z: number): number {
  return z < 1 ? powerSeries(z, 2) : scaledErfc(z) - 1 + (2 * z) / Math.sqrt(Math.PI);
}

/**
 * The complementary error function erfc(z), from 1 at 0 down to 0.
 *
 * @param z a number from 0 upwards
 */
export function erfc(z: number): number {
  return Math.exp(-z * z) * scaledErfc(z);
}
