/**
 * Forty pours as a program apart computed them, on the same equations and assumptions; `tests/second-roads` makes them again, by the
 * plainest scheme there is and without any of this code, within two percent: the two class sets over 20 mm of hardwood,
 * 10 W/(m²·K) above and 5 below, resin and base at the temperature of the shop, 20 cells in the resin and 12 in the base.
 *
 * Columns: class set; depth, mm; shop, °C; peak, °C; and in minutes from mixing the peak, the end of working time, the first
 * and the last gel. A peak above 120 °C is a runaway: past that the model is wrong, so only the order of events counts.
 */
export type ReferencePour = readonly [
  kinetics: 'fast' | 'slow',
  depth: number,
  shop: number,
  peak: number,
  timeToPeak: number,
  timeToWork: number,
  firstGel: number,
  lastGel: number,
];

export const referencePours: readonly ReferencePour[] = [
  ['fast', 3, 15, 22.3, 182.3, 122.4, 214.1, 217.3],
  ['fast', 6, 15, 67.3, 141.7, 104.5, 133.5, 135.0],
  ['fast', 12, 15, 175.4, 92.8, 84.8, 92.0, 92.9],
  ['fast', 25, 15, 246.8, 74.5, 70.1, 73.5, 74.7],
  ['fast', 50, 15, 255.0, 68.0, 63.2, 65.4, 68.3],
  ['fast', 3, 20, 33.2, 116.0, 76.6, 120.4, 122.1],
  ['fast', 6, 20, 128.1, 77.5, 64.3, 75.4, 76.3],
  ['fast', 12, 20, 192.2, 56.8, 52.8, 56.3, 57.0],
  ['fast', 25, 20, 249.5, 47.9, 45.1, 47.1, 48.3],
  ['fast', 50, 20, 253.0, 45.3, 41.8, 43.2, 45.7],
  ['fast', 3, 25, 50.9, 71.2, 48.5, 67.8, 68.6],
  ['fast', 6, 25, 161.1, 46.3, 40.3, 45.3, 45.8],
  ['fast', 12, 25, 211.8, 36.4, 33.7, 35.7, 36.3],
  ['fast', 25, 25, 251.6, 31.7, 29.7, 31.0, 32.1],
  ['fast', 50, 25, 250.2, 30.7, 28.2, 29.2, 31.3],
  ['fast', 3, 30, 85.7, 42.1, 31.1, 39.6, 40.2],
  ['fast', 6, 30, 181.9, 29.0, 25.8, 28.4, 28.7],
  ['fast', 12, 30, 234.6, 23.9, 22.0, 23.4, 23.9],
  ['fast', 25, 30, 254.6, 21.9, 20.0, 20.9, 21.9],
  ['fast', 50, 30, 247.6, 21.2, 19.3, 20.1, 21.7],
  ['slow', 3, 15, 15.7, 1187.8, 896.0, 1852.7, 1856.9],
  ['slow', 6, 15, 16.5, 1157.8, 869.4, 1766.4, 1782.6],
  ['slow', 12, 15, 19.0, 1112.8, 812.6, 1559.8, 1622.0],
  ['slow', 25, 15, 39.6, 1003.5, 690.2, 962.7, 1070.6],
  ['slow', 50, 15, 191.2, 621.6, 547.7, 606.2, 620.9],
  ['slow', 3, 20, 21.1, 779.8, 583.2, 1197.1, 1201.1],
  ['slow', 6, 20, 22.5, 759.5, 558.6, 1112.1, 1127.5],
  ['slow', 12, 20, 27.3, 718.8, 509.3, 900.1, 956.6],
  ['slow', 25, 20, 104.3, 539.6, 416.6, 511.9, 527.6],
  ['slow', 50, 20, 214.4, 379.3, 338.5, 368.9, 379.0],
  ['slow', 3, 25, 26.7, 526.8, 383.5, 777.7, 781.5],
  ['slow', 6, 25, 29.1, 503.7, 361.3, 693.5, 707.8],
  ['slow', 12, 25, 40.3, 471.7, 320.8, 489.5, 524.0],
  ['slow', 25, 25, 145.8, 310.3, 258.9, 300.1, 305.9],
  ['slow', 50, 25, 224.6, 242.9, 217.3, 235.1, 242.6],
  ['slow', 3, 30, 32.6, 358.1, 254.4, 505.9, 509.4],
  ['slow', 6, 30, 36.9, 339.1, 235.3, 423.2, 435.4],
  ['slow', 12, 30, 68.1, 292.0, 204.7, 271.5, 281.2],
  ['slow', 25, 30, 169.7, 192.0, 166.3, 187.0, 190.4],
  ['slow', 50, 30, 229.5, 160.9, 144.3, 154.8, 160.6],
];
