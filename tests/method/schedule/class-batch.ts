import type { Activity, Hold, Lag, Problem } from '../../../src/method/schedule/index.ts';

/** Steps of one board: name, minutes, what it takes; a name that begins with `wait` runs through closed hours. */
const steps: readonly (readonly [string, number, Readonly<Record<string, number>>])[] = [
  ['choose', 10, { student: 1 }],
  ['mark', 15, { student: 1 }],
  ['crosscut', 5, { saw: 1, student: 1 }],
  ['joint', 10, { jointer: 1, student: 1 }],
  ['plane', 10, { planer: 1, student: 1 }],
  ['rip', 10, { saw: 1, student: 1 }],
  ['glue', 15, { student: 1 }],
  ['wait-glue', 240, { clamps: 2 }],
  ['flatten', 15, { planer: 1, student: 1 }],
  ['template', 15, { student: 1 }],
  ['rout', 20, { router: 1, student: 1 }],
  ['seal', 10, { student: 1 }],
  ['wait-seal', 120, {}],
  ['mix', 10, { scale: 1, teacher: 1, student: 1 }],
  ['pour', 10, { teacher: 1, student: 1 }],
  ['wait-cure', 1440, {}],
  ['demould', 10, { student: 1 }],
  ['level', 20, { router: 1, student: 1 }],
  ['sand-80', 20, { sander: 1, student: 1 }],
  ['sand-120', 15, { sander: 1, student: 1 }],
  ['sand-180', 15, { sander: 1, student: 1 }],
  ['round-over', 10, { router: 1, student: 1 }],
  ['oil', 10, { student: 1 }],
  ['wait-oil', 720, {}],
  ['label', 5, { student: 1 }],
];

/**
 * A class that makes a board each, two evenings a week and a Saturday, in a shop with one of most machines: 25 steps a board, with mixed resin
 * poured within ten minutes, moulds held from pour to demoulding, and waits that run through closed hours.
 *
 * @param boards how many boards; each has its own maker
 */
export function classBatch(boards: number): Problem {
  const activities: Activity[] = [];
  const lags: Lag[] = [];
  const holds: Hold[] = [];
  const resources: Record<string, number> = {
    saw: 1,
    jointer: 1,
    planer: 1,
    router: 2,
    sander: 3,
    clamps: 12,
    scale: 1,
    teacher: 1,
    mould: 6,
  };
  for (let board = 1; board <= boards; board += 1) {
    const maker = `maker-${board}`;
    resources[maker] = 1;
    const id = (step: string) => `${step}-${board}`;
    steps.forEach(([step, duration, { student, ...uses }], at) => {
      const waits = step.startsWith('wait');
      activities.push({
        id: id(step),
        duration,
        splittable: step.startsWith('sand'),
        uses: student === undefined ? uses : { ...uses, [maker]: student },
        ...(waits ? {} : { calendar: 'class' }),
      });
      const before = steps[at - 1];
      if (before === undefined) return;
      const most = step === 'pour' ? 10 : waits ? 0 : undefined;
      lags.push({
        from: id(before[0]),
        to: id(step),
        kind: 'end-start',
        ...(most === undefined ? {} : { most }),
      });
    });
    holds.push({ resource: 'mould', units: 1, from: id('pour'), to: id('demould') });
  }
  const day = 1440;
  const open: { start: number; end: number }[] = [];
  for (let week = 0; week < 12; week += 1)
    for (const [weekday, start, end] of [
      [1, 1110, 1260],
      [3, 1110, 1260],
      [5, 540, 960],
    ] as const)
      open.push({ start: (7 * week + weekday) * day + start, end: (7 * week + weekday) * day + end });
  return {
    activities,
    lags,
    holds,
    resources,
    calendars: [{ id: 'class', open }],
    horizon: 12 * 7 * day,
  };
}
