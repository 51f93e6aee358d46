import type { CheckSet, CheckValue } from '../evidence/index.ts';
import { minute } from '../quantity/seconds.ts';
import { quadratureTime, rateFactor, timeToConversion } from './clock.ts';
import { type CupRun, cupOf, fineGrid, runCup } from './cup.ts';
import { fitRate } from './fit.ts';
import { capillaryLength, puddleThickness } from './flood.ts';
import { arrhenius, classKinetics, classThermal } from './kinetics.ts';
import { runawayTemperature } from './pour.ts';

const own = (locator: string) => ({ source: 'kerf-and-cure' as const, locator });
type Class = keyof typeof classKinetics;

/** Thin layers: class set, °C, and minutes to the conversions 0.2 and 0.577 as a program apart steps them (`tests/second-roads`). */
export const thinLayers: readonly (readonly [name: Class, celsius: number, work: number, gel: number])[] = [
  ['fast', 15, 144.46, 302.55],
  ['fast', 20, 95.18, 199.35],
  ['fast', 25, 63.6, 133.2],
  ['fast', 30, 43.07, 90.2],
  ['slow', 15, 921.15, 1929.26],
  ['slow', 20, 606.95, 1271.2],
  ['slow', 25, 405.56, 849.39],
  ['slow', 30, 274.61, 575.15],
];

const thinValues = thinLayers.flatMap(([name, celsius, work, gel]): CheckValue[] =>
  (
    [
      [0.2, work],
      [0.577, gel],
    ] as const
  ).map(([conversion, published]) => ({
    id: `${name}-${celsius}-${conversion}`,
    what: `${name} class set at ${celsius} °C, time to the conversion ${conversion}`,
    published,
    ours: () => timeToConversion(conversion, celsius, classKinetics[name]) / minute,
    unit: 'min',
    tolerance: published * 1e-3,
    reason: 'Rates are rounded to five figures.',
    citation: own('a second program that steps through time, tests/second-roads'),
  })),
);

const quadratureValues = thinLayers.map(([name, celsius]): CheckValue => {
  const kinetics = classKinetics[name];
  const k2 = arrhenius(kinetics.k2At25C, kinetics.activationEnergy, celsius);
  return {
    id: `quadrature-${name}-${celsius}`,
    what: `${name} class set at ${celsius} °C, time to the conversion 0.8: the closed form against the integral worked out numerically`,
    published: quadratureTime(0.8, k2, kinetics) / minute,
    ours: () => timeToConversion(0.8, celsius, kinetics) / minute,
    unit: 'min',
    tolerance: 1e-4,
    reason: 'Two roads to one number: only rounding may remain.',
    citation: own('the rate of cure, integrated by quadrature'),
  };
});

/** Cups of a program apart (`tests/second-roads`): class set, g, °C, highest temperature in °C, minutes to the gel of the first cell and to work. */
export const referenceCups: readonly (readonly [
  name: Class,
  mass: number,
  celsius: number,
  peak: number,
  gel: number,
  work: number,
])[] = [
  ['fast', 25, 25, 284.7, 32.5, 30.8],
  ['fast', 50, 25, 283, 31, 29.6],
  ['fast', 100, 25, 277.9, 30, 28.9],
  ['fast', 200, 25, 270.9, 29.4, 28.4],
  ['fast', 500, 25, 260, 29.1, 28.2],
  ['fast', 1000, 25, 252, 29, 28.1],
  ['fast', 100, 15, 280, 72.1, 68.5],
  ['fast', 100, 20, 280.4, 45.5, 43.7],
  ['fast', 100, 30, 273.2, 20.4, 19.6],
  ['slow', 25, 25, 34.2, 560.3, 325.1],
  ['slow', 50, 25, 43.2, 450.1, 302.8],
  ['slow', 100, 25, 82.8, 360, 277.8],
  ['slow', 200, 25, 171.2, 301.2, 253],
  ['slow', 500, 25, 243.6, 251.8, 225.6],
  ['slow', 1000, 25, 248.1, 228.7, 211.3],
  ['slow', 100, 15, 21.6, 1369.2, 757.1],
  ['slow', 100, 20, 34.7, 706.2, 458.4],
  ['slow', 100, 30, 165.7, 203.4, 171.5],
];

const runs = new Map<string, CupRun | undefined>();

function cupRun(name: Class, mass: number, celsius: number): CupRun | undefined {
  const key = `${name} ${mass} ${celsius}`;
  if (!runs.has(key)) {
    const cup = cupOf(mass, classThermal, fineGrid);
    runs.set(key, runCup(cup, classKinetics[name], { air: celsius, until: 'peak' }));
  }
  return runs.get(key);
}

const cupValues = referenceCups.flatMap(([name, mass, celsius, peak, gel, work]): CheckValue[] => {
  const words = `${name} class set, ${mass} g at ${celsius} °C`;
  const common = {
    unit: 'min',
    reason: 'Two percent, which is far less than what any data sheet means by its figure.',
    citation: own('a second program, tests/second-roads'),
  };
  const key = `${name}-${mass}-${celsius}`;
  return [
    {
      ...common,
      id: `${key}-work`,
      what: `${words}, end of working time`,
      published: work,
      ours: () => (cupRun(name, mass, celsius)?.work ?? 0) / minute,
      tolerance: 0.02 * work,
    },
    {
      ...common,
      id: `${key}-gel`,
      what: `${words}, gel`,
      published: gel,
      ours: () => (cupRun(name, mass, celsius)?.gel ?? 0) / minute,
      tolerance: 0.02 * gel,
    },
    {
      ...common,
      id: `${key}-peak`,
      what: `${words}, highest temperature${peak > runawayTemperature ? `; above ${runawayTemperature} °C both call it run away` : ''}`,
      published: Math.min(peak, runawayTemperature),
      ours: () => cupRun(name, mass, celsius)?.peak ?? 0,
      unit: 'Cel',
      tolerance: peak > runawayTemperature ? 0 : 0.02 * (peak - celsius),
      reason: 'Two percent of the rise. A run stops at 120 °C, above which the physics is wrong.',
    },
  ];
});

const fitted = (
  [
    ['fast', 30, 6.2186e-4],
    ['slow', 360, 9.7521e-5],
  ] as const
).map(
  ([name, minutes, published]): CheckValue => ({
    id: `fit-${name}`,
    what: `rate at 25 °C with which a cup of 100 g at 25 °C gels in ${minutes} min`,
    published,
    ours: () => {
      const kinetics = classKinetics[name];
      const common = { mass: 100, temperature: 25, means: 'gel', kinetics, thermal: classThermal } as const;
      const rate = fitRate({ potLife: minutes * minute, ...common });
      return rate.ok ? rate.value : 0;
    },
    unit: '/s',
    tolerance: 0.01 * published,
    reason: 'One percent: the other program bisected the rate on a grid of its own.',
    citation: own('fitted by a second program, tests/second-roads'),
  }),
);

/** kJ/mol, and the factors from 15 to 25 °C and from 20 to 30 °C, worked out by hand. */
export const factors = [
  [44, 1.85, 1.81],
  [48, 1.96, 1.91],
  [51.2, 2.05, 2],
  [58.6, 2.27, 2.21],
  [61.4, 2.36, 2.3],
  [65, 2.48, 2.41],
] as const;

const factorValues = factors.flatMap(([energy, cool, warm]): CheckValue[] =>
  (
    [
      [15, 25, cool],
      [20, 30, warm],
    ] as const
  ).map(([from, to, published]) => ({
    id: `factor-${energy}-${from}`,
    what: `how many times faster from ${from} to ${to} °C with ${energy} kJ/mol`,
    published,
    ours: () => rateFactor(energy * 1000, from, to),
    unit: '1',
    tolerance: 0.006,
    reason: 'Half of the last digit noted, and the rounding of both kelvin temperatures.',
    citation: own('worked out by hand'),
  })),
);

const puddles: readonly CheckValue[] = [
  {
    id: 'capillary-length',
    what: 'capillary length at 0.040 N/m and 1100 kg/m³',
    published: 1.93,
    ours: () => capillaryLength(0.04, 1100),
    unit: 'mm',
    tolerance: 0.005,
    reason: 'Half of the last digit noted.',
    citation: own('worked out by hand'),
  },
  ...(
    [
      [30, 1],
      [45, 1.47],
      [60, 1.93],
      [90, 2.72],
    ] as const
  ).map(
    ([angle, published]): CheckValue => ({
      id: `puddle-${angle}`,
      what: `thickness at rest at a contact angle of ${angle}°, by 2 l sin(θ/2), against the square root of 2γ(1 − cos θ)/(ρg)`,
      published,
      ours: () => puddleThickness(0.04, 1100, angle),
      unit: 'mm',
      tolerance: 0.0051,
      reason: 'Half of the last digit noted.',
      citation: own('the other form of the equation, worked out by hand'),
    }),
  ),
];

/** What the clock, the cup, the fit and the flood coat must reproduce. */
export const cureChecks: readonly CheckSet[] = [
  {
    id: 'cure-clock',
    title: 'Time to work and to gel of thin layers',
    kind: 'check',
    about:
      'The closed form of the clock against a program that steps through time, and against the same integral worked out numerically. It shows that the arithmetic is right; that a resin cures so is what the data sheet must say.',
    values: [...thinValues, ...quadratureValues],
  },
  {
    id: 'cure-cups',
    title: 'Cups of 25 to 1000 g against the runs of another program',
    kind: 'check',
    about:
      'Cups that heat themselves, on the same assumptions and by other numerics. No cup was measured: this shows that the equations are solved, not that a cup in your shop follows them.',
    values: [...cupValues, ...fitted],
  },
  {
    id: 'cure-rate-factors',
    title: 'How cure answers to warmth',
    kind: 'check',
    about: 'The factor on the rate for ten degrees, for activation energies of epoxy–amine systems.',
    values: factorValues,
  },
  {
    id: 'flood-coat',
    title: 'Thickness of a flood coat at rest',
    kind: 'check',
    about: 'The formula of a puddle with 0.040 N/m and 1100 kg/m³, both from memory; the arithmetic alone is checked.',
    values: puddles,
  },
];
