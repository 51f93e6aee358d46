/** Gas constant, J/(mol·K); exact since 2019. */
export const gasConstant = 8.314462618;

/** Newtons in a pound-force, exact by definition (0.45359237 kg × 9.80665 m/s²). */
export const newtonsPerPound = 4.4482216152605;
