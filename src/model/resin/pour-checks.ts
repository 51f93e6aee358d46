import type { CheckSet, CheckValue } from '../evidence/index.ts';
import { fickProfile } from '../moisture/index.ts';
import { gasConstant } from '../quantity/constants.ts';
import { woodConductivity, woodHeatCapacity } from './base.ts';
import { cellCureOf } from './cells.ts';
import { conductorOf, gridOf } from './conduction.ts';
import { criticalCylinder, criticalDelta, criticalSlab, criticalSlabBy, criticalSphere } from './critical.ts';
import { classKinetics, classThermal, type Kinetics, kelvin } from './kinetics.ts';
import { type PourRun, runawayTemperature, runPour } from './pour.ts';
import { greatestDepth } from './pour-plan.ts';
import { type ReferencePour, referencePours } from './reference-pours.ts';
import { classPour } from './usual-pour.ts';

const own = (locator: string) => ({ source: 'kerf-and-cure' as const, locator });

/** Kinetics that do not change with temperature, for closed forms. */
const isothermal = (orders: Pick<Kinetics, 'k2At25C' | 'k1OverK2' | 'm' | 'n'>): Kinetics => ({
  activationEnergy: 0,
  heatOfReaction: 0,
  ...orders,
});

/** Conversion after a time at constant temperature, in steps of one hundredth of it. */
export function isothermalConversion(kinetics: Kinetics, seconds: number): number {
  const cure = cellCureOf(kinetics);
  const at25 = new Float64Array([25]);
  let before = new Float64Array(1);
  let after = new Float64Array(1);
  for (let step = 0; step < 400; step += 1) {
    cure(before, after, at25, 0, seconds / 400);
    [before, after] = [after, before];
  }
  return before[0] as number;
}

/** Share of the first temperature difference left at the cells of a slab, one face insulated, by this scheme. */
export function slabCooling(biot: number, fourier: number, cells: number): Float64Array {
  const grid = gridOf([{ thickness: 1, cells, conductivity: 1, heatCapacity: 1 }], { low: 0, high: biot });
  const conductor = conductorOf(grid);
  const steps = 400;
  conductor.setStep(fourier / steps);
  const none = new Float64Array(cells);
  let before = new Float64Array(cells).fill(1);
  let after = new Float64Array(cells);
  for (let step = 0; step < steps; step += 1) {
    conductor.step(before, none, 0, after);
    [before, after] = [after, before];
  }
  return before;
}

const adiabatic = (): PourRun =>
  runPour(
    {
      kinetics: { ...classKinetics.fast, m: 1, n: 1, heatOfReaction: 380_000 },
      resin: { ...classThermal, heatCapacity: 1800 },
      depth: 20,
      base: null,
      filmTop: 0,
      filmBottom: 0,
      shopTemperature: 25,
      resinTemperature: 25,
    },
    { stop: Number.POSITIVE_INFINITY, until: 6 * 3600 },
  );

const biotOne = [0.1, 0.5, 1, 2].flatMap((fourier) =>
  (
    [
      ['core', 1 / 80, 0],
      ['face', 79 / 80, 39],
    ] as const
  ).map(
    ([id, place, cell]): CheckValue => ({
      id: `slab-${fourier}-${id}`,
      what: `Share of the temperature difference left at x/L ${place.toFixed(4)}, Bi 1, Fo ${fourier}`,
      published: 1 - fickProfile(place, fourier, 1),
      ours: () => slabCooling(1, fourier, 40)[cell] as number,
      unit: '1',
      tolerance: 0.0002,
      reason: 'Two hundredths of a percent of the whole, at 40 cells.',
      citation: own('series of a slab with a film at its face, summed as it stands'),
    }),
  ),
);

const coldFaces = (['slab', 'cylinder', 'sphere'] as const).map((shape) => {
  const published = { slab: criticalSlab(), cylinder: criticalCylinder, sphere: criticalSphere() }[shape];
  const road = {
    slab: 'z tanh z = 1, δ = 2z²/cosh²z',
    cylinder: 'closed form, exactly 2',
    sphere: 'the steady equation integrated from the middle outwards',
  }[shape];
  return { shape, published, road };
});

/** RT/E of the class sets at 25 °C. */
const coolness = (gasConstant * kelvin(25)) / classKinetics.fast.activationEnergy;
const arrheniusSource = (theta: number) => Math.exp(theta / (1 + coolness * theta));

/** Depths that warm by 25 K, mm, by temperature of the shop, °C, by a program apart (`tests/second-roads`). */
export const depthsFor25 = [
  [
    'fast',
    [
      [15, 5.1],
      [20, 3.8],
      [25, 3.0],
      [30, 2.3],
    ],
  ],
  [
    'slow',
    [
      [15, 25],
      [20, 19],
      [25, 14],
      [30, 11],
    ],
  ],
] as const;

const runs = new Map<ReferencePour, PourRun>();
function runOf(pour: ReferencePour): PourRun {
  const [kinetics, depth, shop] = pour;
  const known = runs.get(pour);
  if (known) return known;
  const run = runPour(classPour(kinetics, depth, shop));
  runs.set(pour, run);
  return run;
}

/** The values of one pour: rise and four times of one that settles, the time to work of one that runs away. */
function pourValues(pour: ReferencePour, at: number): CheckValue[] {
  const [kinetics, depth, shop, peak, timeToPeak, timeToWork, firstGel, lastGel] = pour;
  const words = `${kinetics} class set, ${depth} mm, ${shop} °C`;
  const value = (id: string, what: string, published: number, unit: string, ours: (run: PourRun) => number | null) => ({
    id: `p${at + 1}-${id}`,
    what: `${words}: ${what}`,
    published,
    ours: () => ours(runOf(pour)) ?? Number.NaN,
    unit,
    tolerance: 0.02 * published + 0.05,
    reason: 'Two percent, and half of the last digit that the other program printed.',
    citation: own('a second program on the same equations, tests/second-roads'),
  });
  const minutes = (seconds: number | null) => (seconds === null ? null : seconds / 60);
  const work = value('work', 'end of working time', timeToWork, 'min', (run) => minutes(run.timeToWork));
  if (peak > runawayTemperature) {
    // The two programs part above the stop; that both pass it at nearly one time is what can be compared.
    return [
      work,
      value('stop', 'first gel, or 120 °C where that comes sooner', firstGel, 'min', (run) =>
        run.outcome === 'runaway' ? minutes(run.timeToFirstGel ?? run.timeToPeak) : null,
      ),
    ];
  }
  return [
    value('rise', 'rise at the peak', Number((peak - shop).toFixed(1)), 'K', (run) => run.peakRise),
    value('peak', 'time to the peak', timeToPeak, 'min', (run) => minutes(run.timeToPeak)),
    work,
    value('first-gel', 'first gel', firstGel, 'min', (run) => minutes(run.timeToFirstGel)),
    value('last-gel', 'last gel', lastGel, 'min', (run) => minutes(run.timeToLastGel)),
  ];
}

/** Check values of the heat of a pour. */
export const pourChecks: readonly CheckSet[] = [
  {
    id: 'pour-closed-forms',
    title: 'Heat and cure against closed forms',
    kind: 'check',
    about:
      'The parts of the calculation of a pour, each against a solution on paper: cooling of a slab, cure at constant temperature, and the rise of a pour that loses nothing. It shows that the arithmetic is right, not that resin obeys it.',
    values: [
      ...biotOne,
      {
        id: 'adiabatic-rise',
        what: 'Rise of a pour that loses no heat, 380 J/g and 1800 J/(kg·K)',
        published: 380_000 / 1800,
        ours: () => adiabatic().peakRise,
        unit: 'K',
        tolerance: 0.2,
        reason: '0.1 %: the last of the cure takes for ever.',
        citation: own('heat of reaction over heat capacity'),
      },
      {
        id: 'isothermal-n-2',
        what: 'Conversion with n = 2, k 1e-4 1/s, after 20,000 s',
        published: 1 - 1 / (1 + 1e-4 * 20_000),
        ours: () => isothermalConversion(isothermal({ k2At25C: 1e-4, k1OverK2: 0, m: 0, n: 2 }), 20_000),
        unit: '1',
        tolerance: 0.00001,
        reason: 'One in the fifth decimal.',
        citation: own('1 − 1/(1 + kt)'),
      },
      {
        id: 'isothermal-n-1.5',
        what: 'Conversion with n = 1.5, k 1e-4 1/s, after 20,000 s',
        published: 1 - (1 + 0.5 * 1e-4 * 20_000) ** -2,
        ours: () => isothermalConversion(isothermal({ k2At25C: 1e-4, k1OverK2: 0, m: 0, n: 1.5 }), 20_000),
        unit: '1',
        tolerance: 0.00001,
        reason: 'One in the fifth decimal.',
        citation: own('1 − (1 + kt/2)⁻²'),
      },
      {
        id: 'isothermal-autocatalytic',
        what: 'Conversion with m = n = 1, k1 1e-5 and k2 3e-4 1/s, after 15,000 s',
        published: (Math.exp(3.1e-4 * 15_000) - 1) / (Math.exp(3.1e-4 * 15_000) + 30),
        ours: () => isothermalConversion(isothermal({ k2At25C: 3e-4, k1OverK2: 1 / 30, m: 1, n: 1 }), 15_000),
        unit: '1',
        tolerance: 0.00001,
        reason: 'One in the fifth decimal.',
        citation: own('(e − 1)/(e + k2/k1), e = exp((k1 + k2)t)'),
      },
    ],
  },
  {
    id: 'pour-critical',
    title: 'When a body that heats itself runs away',
    kind: 'check',
    about:
      'The Frank-Kamenetskii number above which a slab, cylinder or ball with cold faces finds no balance, as the scheme of the pours finds it by following the body in time: against the numbers printed in a paper, and against the same worked out on paper to more digits. A scheme that splits heat from conduction fails this check. A pour is not such a body: its film of air governs.',
    values: [
      ...coldFaces.map(
        ({ shape, published, road }): CheckValue => ({
          id: `critical-${shape}`,
          what: `Critical δ of a ${shape}, exponential source, 40 cells`,
          published,
          ours: () => criticalDelta(shape, 40),
          unit: '1',
          tolerance: 0.005 * published,
          reason: 'Half a percent; the difference found is a tenth of that.',
          citation: own(road),
        }),
      ),
      ...(
        [
          ['slab', 0.88],
          ['cylinder', 2],
          ['sphere', 3.32],
        ] as const
      ).map(
        ([shape, published]): CheckValue => ({
          id: `critical-printed-${shape}`,
          what: `Critical δ of a ${shape} as printed`,
          published,
          ours: () => criticalDelta(shape, 40),
          unit: '1',
          tolerance: 0.005,
          reason: 'Half of the last digit printed.',
          citation: { source: 'thermal-explosions-slab', locator: 'abstract', seen: 'source-text' },
        }),
      ),
      {
        id: 'critical-arrhenius',
        what: `Critical δ of a slab, Arrhenius source with RT/E ${coolness.toFixed(4)}, 20 cells`,
        published: criticalSlabBy(arrheniusSource),
        ours: () => criticalDelta('slab', 20, arrheniusSource),
        unit: '1',
        tolerance: 0.01 * criticalSlabBy(arrheniusSource),
        reason: 'One percent, at 20 cells.',
        citation: own('quadrature of the steady equation'),
      },
    ],
  },
  {
    id: 'pour-runs',
    title: 'Forty pours against another program',
    kind: 'check',
    about:
      'Rise, time to the peak, end of working time, first and last gel of pours of two resins, five depths and four shops, as another program computed them on the same equations. It shows that ours is computed rightly. No measured pour was found to set beside either.',
    values: referencePours.flatMap(pourValues),
  },
  {
    id: 'pour-depths',
    title: 'Depths that warm by 25 K against another program',
    kind: 'check',
    about:
      'The depth over 20 mm of hardwood at which a pour of each class set warms by 25 K, at four temperatures of the shop, as another program found it.',
    values: depthsFor25.flatMap(([kinetics, depths]) =>
      depths.map(
        ([shop, published]): CheckValue => ({
          id: `depth-${kinetics}-${shop}`,
          what: `Depth that warms by 25 K, ${kinetics} class set, ${shop} °C`,
          published,
          ours: () => {
            const { depth: _, ...pour } = classPour(kinetics, 10, shop);
            const found = greatestDepth(pour, { depth: 10, coarseRise: 25 });
            return found.kind === 'found' ? found.depth : Number.NaN;
          },
          unit: 'mm',
          tolerance: 0.02 * published + (published < 10 ? 0.05 : 0.5),
          reason: 'Two percent, and half of the last digit that the other program printed.',
          citation: own('a second program on the same equations, tests/second-roads'),
        }),
      ),
    ),
  },
  {
    id: 'wood-heat',
    title: 'Heat in wood',
    kind: 'check',
    about:
      'The handbook’s equations for conductivity and heat capacity, against its own second set of units and against a value computed elsewhere.',
    values: [
      ...(
        [
          [0.4, 8],
          [0.6, 8],
          [0.68, 12],
        ] as const
      ).map(
        ([gravity, moisture]): CheckValue => ({
          id: `conductivity-${gravity}-${moisture}`,
          what: `Conductivity of wood of specific gravity ${gravity} at ${moisture} %, from the constants in Btu and inches`,
          published: (gravity * (1.34 + 0.028 * moisture) + 0.129) * 0.1442279,
          ours: () => woodConductivity(gravity, moisture),
          unit: 'W/(m.K)',
          tolerance: 0.001,
          reason: 'The constants in Btu are printed to three digits.',
          citation: { source: 'fpl-gtr-190', locator: 'Eq. 4-15', seen: 'source-text' },
        }),
      ),
      {
        id: 'heat-capacity-12-340',
        what: 'Heat capacity of wood at 12 % and 340 K',
        published: 1910,
        ours: () => woodHeatCapacity(12, 340 - 273.15),
        unit: 'J/(kg.K)',
        tolerance: 5,
        reason: 'Half of the last digit printed.',
        citation: { source: 'chemics', locator: 'cp_wood', seen: 'source-text' },
      },
    ],
  },
];
