/** Largest outline that is measured, in mm; also what keeps the whole numbers of the clipping library exact. */
export const largestSize = 10_000;
