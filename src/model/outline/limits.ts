/** Largest outline that is measured, in mm; also what keeps the whole numbers of the clipping library exact. */
export const largestSize = 10_000;

/** What a bit leaves standing off the line up to this, in mm, is sanded away and does not count. Common practice. */
export const leftToSand = 0.1;
