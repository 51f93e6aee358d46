import { equation } from '../evidence/index.ts';
import { day } from '../quantity/seconds.ts';
import { gelPoint } from './clock.ts';
import { crossingOf } from './crossings.ts';
import { steady } from './history.ts';
import { workConversion } from './kinetics.ts';
import { bodyOf } from './pour-body.ts';
import { heightOf, hottestOf, vertex, workspaceOf } from './pour-steps.ts';
import type { Pour, PourOptions, PourRecord, PourRun } from './pour-types.ts';

export type { Base, Channel, Pour, PourOptions, PourRun } from './pour-types.ts';

/** Above this the model is wrong (boiling, decomposition, rising heat capacity), and so is the pour, °C. */
export const runawayTemperature = 120;

/** A pour counts as cooled when its hottest place is within this of the air, K. */
export const coolWithin = 5;

/** Conversion of a face beyond which a layer poured on it bonds no better than to any cured resin; from memory. */
export const recoatConversion = 0.75;

/** Runs end here, s: a resin that has not set in a month will not. */
export const longestRun = 30 * day;

/**
 * How finely a pour is cut where nothing is said: cells in the depth of resin and in 20 mm of base, and the change of conversion in
 * a step. A channel so cut is within 2 % of the rise of one cut three times as fine.
 */
const usualPool = { cells: [20, 12], conversionStep: 0.01 } as const;
const usualChannel = { cells: [12, 8], conversionStep: 0.02 } as const;

/** Steps are no longer than this, s, or than this share of the time since mixing, where a resin takes days. */
const longestStep = 900;
const longestShare = 0.01;
const firstStep = 1;
const mostSteps = 20_000;
/** Once gelled through and down to such a share of its greatest rise above the coldest air, a pour is warmed without rising as far again. */
const spentShare = 0.4;
/** The first step after the air has jumped, s, or as a share of the time since mixing where that is more. */
const stepAfterJump = 30;
const shareAfterJump = 0.002;

/**
 * Follow a pour from mixing until it has set and cooled, or runs away.
 *
 * Heat is conducted across the depth of resin and base (see `conduction.ts`), in a channel across its width too (`plane.ts`); the
 * cure gives heat ρ·H·dα/dt in the resin, taken at the middle of each step and found by up to three passes; steps are so long
 * that no cell cures by more than about `conversionStep`, and end where the air jumps. Slowing of the cure by vitrification is
 * left out: it begins well after gel and hardly any heat is left then.
 *
 * Where the air changes, the run goes on for a day of its changes after the last gel, since warmth that comes late can still
 * make it hot.
 *
 * @param pour sizes, materials and temperatures
 * @param options grid, step and stop
 */
function follow(pour: Pour, options: PourOptions = {}): PourRun {
  const usual = pour.channel ? usualChannel : usualPool;
  const {
    cells: fineness = usual.cells,
    conversionStep = usual.conversionStep,
    stop = runawayTemperature,
    mostRise = Number.POSITIVE_INFINITY,
    until = longestRun,
  } = options;
  const air = pour.air ?? steady(pour.shopTemperature);
  const body = bodyOf(pour, fineness);
  const { offset } = body;
  const cells = body.count - offset;
  const work = workspaceOf(pour, body, conversionStep);
  const worked = crossingOf(workConversion, cells);
  const gelled = crossingOf(gelPoint, cells);
  const closed = crossingOf(recoatConversion, cells);
  const crossings = [worked, gelled, closed];
  const record: PourRecord = { times: [], top: [], middle: [], bottom: [] };
  const keep = (time: number, temperatures: Float64Array) => {
    if (!options.record) return;
    record.times.push(time);
    record.top.push(temperatures[body.top] as number);
    record.middle.push(temperatures[body.middle] as number);
    record.bottom.push(temperatures[body.bottom] as number);
  };
  keep(0, work.before);

  // Times and hottest temperatures of the last steps; where the middle one is the peak, the parabola through them has its time.
  const times: [number, number, number] = [0, 0, 0];
  const highs: [number, number, number] = [pour.resinTemperature, pour.resinTemperature, pour.resinTemperature];
  const profile = work.before.slice();
  /** The warmest that the air has been. */
  let warmest = pour.shopTemperature;
  let [peak, timeToPeak, peakRise] = [pour.resinTemperature, 0, pour.resinTemperature - pour.shopTemperature];
  let [hottestHeight, hottestLevel] = [pour.depth / 2, body.levelOf(body.middle)];
  let [time, steps, lost] = [0, 0, 0];
  let corner = air.nextCorner(0);
  let step = Math.min(firstStep, until);
  let timeToCool: number | null = null;
  let outcome: PourRun['outcome'] = 'unfinished';

  while (outcome === 'unfinished' && time < until && steps < mostSteps) {
    // A step that would end just short of a jump ends at it.
    if (time + 1.01 * step >= corner) step = corner - time;
    const around = air.at(time + step / 2);
    if (!work.attempt(step, around)) {
      step *= Math.max(0.2, (0.9 * conversionStep) / work.change);
      continue;
    }
    const end = time + step;
    const cell = hottestOf(work.after, offset);
    const now = work.after[cell] as number;
    warmest = Math.max(warmest, around);
    const limit = Math.min(stop, warmest + mostRise);
    lost += work.lost(around);
    for (const crossing of crossings) crossing.note(work.alphaBefore, work.alphaAfter, time, step);
    keep(end, work.after);
    [times[0], times[1], times[2]] = [times[1], times[2], end];
    [highs[0], highs[1], highs[2]] = [highs[1], highs[2], now];
    if (now > peak) {
      hottestHeight = heightOf(body, work.after, cell);
      hottestLevel = body.levelOf(cell);
      profile.set(work.after);
    }
    if (now >= limit && now > peak) {
      peak = limit;
      timeToPeak = time + (step * (limit - highs[1])) / (now - highs[1]);
      peakRise = limit - warmest;
      for (const crossing of crossings) crossing.cut(timeToPeak);
      outcome = 'runaway';
    } else {
      if (now > peak) [peak, timeToPeak] = [now, end];
      else if (timeToPeak === times[1] && steps > 1) timeToPeak = vertex(times, highs);
      peakRise = Math.max(peakRise, now - warmest);
    }
    steps += 1;
    time = end;
    work.turn();
    if (outcome === 'runaway') break;
    if (timeToCool === null && gelled.last !== null && now - warmest <= coolWithin) timeToCool = end;
    const falling = now < peak - 0.02 * Math.abs(peak - warmest);
    const done = timeToCool !== null && closed.last !== null && falling;
    // Where no heat leaves it never cools; long after the last gel nothing more happens.
    const over = gelled.last !== null && end > 10 * gelled.last;
    // In air that changes, warmth may come after the peak: a day is waited for it, or until too little heat is left to make it matter.
    const changes = corner < Number.POSITIVE_INFINITY;
    const spent = gelled.last !== null && now - air.lowest < spentShare * peakRise;
    const awaits =
      changes && (options.peakOnly ? !spent : gelled.last === null || end < gelled.last + (air.period ?? day));
    if (over || (!awaits && (options.peakOnly ? gelled.first !== null && falling : done))) outcome = 'settled';
    const aim = work.change > 0 ? (0.9 * conversionStep) / work.change : 1.5;
    const jumps = end >= corner;
    if (jumps) corner = air.nextCorner(end);
    // A step of a section that is kept saves working its equations out anew, which costs more than the step itself.
    const kept = pour.channel && aim > 0.92 && aim < 1.4;
    step =
      jumps && !air.slopes
        ? Math.min(step, Math.max(stepAfterJump, shareAfterJump * end))
        : step * (kept ? 1 : pour.channel && aim < 1 ? 0.85 * aim : Math.min(1.5, aim));
    step = Math.min(step, Math.max(longestStep, longestShare * time), until - time);
  }

  const held = work.before.reduce(
    (sum, temperature, at) =>
      sum +
      (body.capacities[at] as number) * (temperature - (at < offset ? pour.shopTemperature : pour.resinTemperature)),
    0,
  );
  const across = body.across && { places: Array.from(body.across.places), cells: body.across.at(hottestLevel) };
  return {
    outcome,
    peakTemperature: peak,
    peakRise,
    timeToPeak,
    hottestHeight,
    timeToWork: worked.first,
    timeToFirstGel: gelled.first,
    timeToLastGel: gelled.last,
    timeToClose: closed.end,
    timeToCool,
    end: time,
    conversion: { least: Math.min(...work.alphaBefore), most: Math.max(...work.alphaBefore) },
    heat: { made: work.made, held, lost },
    steps,
    profile: {
      heights: Array.from(body.heights),
      temperatures: Array.from(body.column, (cell) => profile[cell] as number),
      resinFrom: body.resinFrom,
    },
    ...(across
      ? { across: { places: across.places, temperatures: Array.from(across.cells, (cell) => profile[cell] as number) } }
      : {}),
    record,
  };
}

export const runPour = equation(
  {
    id: 'heat-of-pour',
    title: 'Heat of a pour',
    tex: '\\rho\\,c_p\\,\\frac{\\partial T}{\\partial t} = \\frac{\\partial}{\\partial x}\\!\\left(k\\,\\frac{\\partial T}{\\partial x}\\right) + \\rho\\,H\\,\\frac{\\partial \\alpha}{\\partial t}',
    symbols: [
      { tex: 'T', meaning: 'temperature', unit: '°C' },
      { tex: 't', meaning: 'time from mixing', unit: 's' },
      { tex: 'x', meaning: 'height', unit: 'm' },
      { tex: '\\rho', meaning: 'density of resin or base', unit: 'kg/m³' },
      { tex: 'c_p', meaning: 'heat capacity', unit: 'J/(kg K)' },
      { tex: 'k', meaning: 'thermal conductivity', unit: 'W/(m K)' },
      { tex: 'H', meaning: 'heat of reaction; none in the base', unit: 'J/kg' },
      { tex: '\\alpha', meaning: 'conversion of the cure', unit: '1' },
    ],
    validity:
      'A flat pour without loss at its edges, without bubbles and fillers, up to 120 °C. At both faces heat leaves by a film coefficient of 5 to 14 W/(m² K).',
    basis: 'derived',
    citation: { source: 'kerf-and-cure', locator: 'conduction of heat with the rate of cure as its source' },
    remarks:
      'Solved on 20 cells of resin and 12 of base, with steps in which no cell cures by more than about 1 %. Ordering of cases, the way that depth goes with temperature, times of thin layers and the most that the heat could give can be trusted; a single peak cannot, within a factor of two.',
  },
  follow,
);
