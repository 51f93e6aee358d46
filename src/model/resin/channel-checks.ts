import type { CheckSet, CheckValue } from '../evidence/index.ts';
import { erfc, fickProfile, scaledErfcBeyondLinear } from '../moisture/index.ts';
import { hour } from '../quantity/seconds.ts';
import { usualBase } from './base.ts';
import { channelSection } from './channel.ts';
import { changedAfter } from './history.ts';
import { classThermal } from './kinetics.ts';
import { planeConductorOf } from './plane.ts';
import { type Pour, type PourRun, runawayTemperature, runPour } from './pour.ts';
import { classPour } from './usual-pour.ts';

const own = (locator: string) => ({ source: 'kerf-and-cure' as const, locator });

const { thickness: _, ...hardwood } = usualBase;
const slowPour = (depth: number, shop: number, more: Partial<Pour> = {}): Pour => classPour('slow', depth, shop, more);

/**
 * Temperature of the cells of a section after a time, by this scheme without any cure, the air at 0 °C.
 *
 * @param start of the resin, °C; all else starts at 0
 * @param flux heat made in the resin, W/m³
 */
function sectionAfter(pour: Pour, cells: readonly [number, number], seconds: number, start: number, flux: number) {
  if (!pour.channel) throw new Error('A section is of a channel.');
  const { grid, resinColumns, baseRows } = channelSection(pour, pour.channel, cells);
  const places = Int32Array.from(grid.volumes, (__, at) => at);
  const inResin = (cell: number) => cell % grid.columns < resinColumns && cell >= baseRows * grid.columns;
  const conductor = planeConductorOf(grid, places);
  const steps = 400;
  conductor.setStep(seconds / steps);
  const source = Float64Array.from(grid.volumes, (volume, cell) => (inResin(cell) ? volume * flux : 0));
  let before = Float64Array.from(places, (cell) => (inResin(cell) ? start : 0));
  let after = new Float64Array(places.length);
  for (let step = 0; step < steps; step += 1) {
    conductor.step(before, source, 0, after);
    [before, after] = [after, before];
  }
  return { temperatures: before, grid, resinColumns };
}

const alpha = classThermal.conductivity / (classThermal.density * classThermal.heatCapacity);

/** A strip 12 mm wide in a slab of the same stuff, 20 mm thick, that loses heat from its upper face alone at a Biot number of 1. */
function strip(fourier: number, row: number, column: number): { ours: number; exact: number } {
  const deep = 0.02;
  const seconds = (fourier * deep ** 2) / alpha;
  const { temperatures, grid } = sectionAfter(
    slowPour(20, 0, {
      base: null,
      filmBottom: 0,
      filmTop: classThermal.conductivity / deep,
      channel: { width: 12, sides: classThermal },
    }),
    [20, 1],
    seconds,
    1,
    0,
  );
  const middle = (sizes: Float64Array, at: number) =>
    sizes.slice(0, at).reduce((sum, size) => sum + size, 0) + (sizes[at] as number) / 2;
  const [x, y] = [middle(grid.widths, column), middle(grid.heights, row)];
  const spread = 2 * Math.sqrt(alpha * seconds);
  const across = (2 - erfc((0.006 - x) / spread) - erfc((0.006 + x) / spread)) / 2;
  return {
    ours: temperatures[row * grid.columns + column] as number,
    exact: across * (1 - fickProfile(y / deep, fourier, 1)),
  };
}

/** A sheet of resin 1 mm thick between walls of wood, without loss to the air, that makes heat evenly: its warmth after a time, K. */
function walls(seconds: number): { ours: number; exact: number } {
  const [half, flux] = [0.0005, 10_000];
  const { temperatures, resinColumns } = sectionAfter(
    slowPour(50, 0, { base: null, filmBottom: 0, filmTop: 0, channel: { width: 1, sides: hardwood } }),
    [14, 1],
    seconds,
    0,
    flux,
  );
  const effusivity = Math.sqrt(hardwood.conductivity * hardwood.density * hardwood.heatCapacity);
  const lag = effusivity / (classThermal.density * classThermal.heatCapacity * half);
  return {
    // At the wall: within the sheet it is a little warmer, which no lumped sheet knows.
    ours: temperatures[resinColumns - 1] as number,
    exact: ((flux * half) / effusivity / lag) * scaledErfcBeyondLinear(lag * Math.sqrt(seconds)),
  };
}

/** Channels of slow resin as the second model has them: width, depth, mm; shop, °C; rise, K. */
const channels = [
  [12, 19, 20, 2.5],
  [22, 19, 20, 4.4],
  [60, 19, 20, 11],
  [200, 19, 20, 24],
  [12, 45, 24, 10],
  [22, 45, 24, 33],
] as const;

/** Pools of slow resin poured cold and warmed at once: depth, mm; before and after, °C; warmed after, h; peaks warmed and kept cold, °C. */
const warmed = [
  [25, 12, 21, 12, 88, 24],
  [28, 12, 21, 12, 105, 30],
  [30, 10, 21, 12, 120, 24],
] as const;

function warmedPour(depth: number, from: number, to: number, seconds: number): PourRun {
  return runPour(slowPour(depth, from, { air: changedAfter(seconds, from, to) }));
}

const second = own('a second model of our own, on a grid of its own');
const twoPercent = (value: number) => 0.02 * value + 0.5 * 10 ** Math.min(0, 1 - Math.ceil(Math.log10(value)));

/** Check values of channels and of pours in air that changes. */
export const channelChecks: readonly CheckSet[] = [
  {
    id: 'channel-closed-forms',
    title: 'Heat in a cross-section against closed forms',
    kind: 'check',
    about:
      'Conduction in the section of a channel, without cure, against solutions on paper: a warm strip in a slab of the same stuff that cools at one face, and a thin sheet that warms the two walls it stands between.',
    values: [
      ...[0.05, 0.2, 0.5].flatMap((fourier) =>
        (
          [
            ['middle', 0, 0],
            ['wall', 0, 9],
            ['face', 19, 0],
          ] as const
        ).map(
          ([id, row, column]): CheckValue => ({
            id: `strip-${fourier}-${id}`,
            what: `Share of the warmth left in a strip, ${id === 'middle' ? 'in its middle, at the insulated face' : id === 'wall' ? 'beside its edge, at the insulated face' : 'in its middle, at the open face'}, Bi 1, Fo ${fourier}`,
            published: strip(fourier, row, column).exact,
            ours: () => strip(fourier, row, column).ours,
            unit: '1',
            tolerance: 0.003,
            reason: 'Three thousandths of the whole, at 20 rows: the cells are even, the exact values those of points.',
            citation: own('error functions across, times the series of a slab with a film at its face'),
          }),
        ),
      ),
      ...[600, 3600, 14_400].map(
        (seconds): CheckValue => ({
          id: `walls-${seconds}`,
          what: `Warmth of a sheet of 1 mm between wooden walls, 10 kW/m³, after ${seconds / 60} min`,
          published: walls(seconds).exact,
          ours: () => walls(seconds).ours,
          unit: 'K',
          tolerance: 0.01 * walls(seconds).exact,
          reason: 'One percent: the sheet is taken as even in temperature on paper, and the wood as endless.',
          citation: own('flux into two half-spaces with a lumped capacity between them, by Laplace transform'),
        }),
      ),
    ],
  },
  {
    id: 'channel-second-model',
    title: 'Channels and late warmth against a second model',
    kind: 'comparison',
    about:
      'Rises of channels of slow casting resin over 20 mm of hardwood, and peaks of pools that are poured cold and then warmed, as a second model of our own gave them. Both rest on the same equations; where they part by more, the section of the other was coarser or its walls were taken otherwise. Neither is a measured pour.',
    values: [
      ...channels.map(
        ([width, depth, shop, rise]): CheckValue => ({
          id: `channel-${width}-${depth}`,
          what: `Rise of a channel ${width} mm wide and ${depth} mm deep at ${shop} °C`,
          published: rise,
          ours: () => runPour(slowPour(depth, shop, { channel: { width, sides: hardwood } })).peakRise,
          unit: 'K',
          tolerance: twoPercent(rise),
          reason: 'Two percent, and half of the last digit given.',
          citation: second,
        }),
      ),
      ...warmed.flatMap(([depth, from, to, hours, peak, cold]): CheckValue[] => [
        {
          id: `warmed-${depth}`,
          what: `Peak of ${depth} mm poured at ${from} °C, the shop heated to ${to} °C after ${hours} h`,
          published: peak,
          ours: () => Math.min(runawayTemperature, warmedPour(depth, from, to, hours * hour).peakTemperature),
          unit: 'Cel',
          tolerance: 1,
          reason: 'The other is given to a degree.',
          citation: second,
        },
        {
          id: `kept-cold-${depth}`,
          what: `Peak of ${depth} mm poured at ${from} °C and kept there`,
          published: cold,
          ours: () => runPour(slowPour(depth, from)).peakTemperature,
          unit: 'Cel',
          tolerance: 0.6,
          reason: 'Half of the last digit given.',
          citation: second,
        },
      ]),
      {
        id: 'warmed-at-first-gel',
        what: 'Peak of 25 mm poured at 15 °C and warmed to 30 °C at the first gel',
        published: 62,
        ours: () => {
          const gel = runPour(slowPour(25, 15)).timeToFirstGel ?? Number.NaN;
          return warmedPour(25, 15, 30, gel).peakTemperature;
        },
        unit: 'Cel',
        tolerance: 1,
        reason: 'The other is given to a degree. Ours lies lower: how quickly its shop warmed is not known.',
        citation: second,
      },
      {
        id: 'warmed-when-cold-again',
        what: 'The same, warmed to 30 °C twelve hours after it has gelled through',
        published: 40,
        ours: () => {
          const gel = runPour(slowPour(25, 15)).timeToLastGel ?? Number.NaN;
          return warmedPour(25, 15, 30, gel + 12 * hour).peakTemperature;
        },
        unit: 'Cel',
        tolerance: 3,
        reason: 'It was given as 0 to 3 K more than the pour’s own peak.',
        citation: second,
      },
    ],
  },
];
