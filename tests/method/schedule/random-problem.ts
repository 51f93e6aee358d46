import type { Activity, Hold, Lag, LagKind, Problem } from '../../../src/method/schedule/index.ts';

/** Whole numbers from 0 to below a limit, the same for the same seed (xorshift). */
export function dice(seed: number): (below: number) => number {
  let state = (Math.imul(seed + 1, 0x9e3779b1) ^ 0x5bd1e995) | 0 || 1;
  return (below) => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) % below;
  };
}

/** A small problem with waits of every kind, holds, calendars, windows and little room; some have no plan. */
export function randomProblem(seed: number): Problem {
  const roll = dice(seed);
  for (let warm = 0; warm < 8; warm += 1) roll(2);
  const count = 2 + roll(5);
  const horizon = count > 4 ? 8 + roll(3) : 9 + roll(6);
  const spans = (openShare: number) => {
    const open: { start: number; end: number }[] = [];
    for (let minute = roll(3); minute < horizon; ) {
      const end = Math.min(horizon, minute + 1 + roll(openShare));
      open.push({ start: minute, end });
      minute = end + roll(3);
    }
    return open;
  };
  const calendars = [
    { id: 'shop', open: spans(6) },
    { id: 'evening', open: spans(4) },
  ];
  const resources = { bench: 1 + roll(2), hands: 2 + roll(2) };
  const activities: Activity[] = Array.from({ length: count }, (_, at) => {
    const calendar = ['shop', 'evening', undefined, undefined][roll(4)];
    return {
      id: `a${at}`,
      duration: roll(8) === 0 ? 0 : 1 + roll(4),
      uses: { bench: roll(3) === 0 ? 1 : 0, hands: roll(3) },
      splittable: roll(2) === 0,
      ...(calendar === undefined ? {} : { calendar }),
    };
  });
  const kinds: LagKind[] = ['end-start', 'end-start', 'start-start', 'end-end', 'start-end'];
  const lags: Lag[] = [];
  for (let each = roll(count + 2); each > 0; each -= 1) {
    const one = roll(count);
    const two = roll(count);
    if (one === two) continue;
    const least = [undefined, roll(5), roll(5), -roll(4)][roll(4)];
    const most = roll(3) === 0 ? Math.max(0, least ?? 0) + roll(4) : undefined;
    lags.push({
      from: `a${roll(6) === 0 ? Math.max(one, two) : Math.min(one, two)}`,
      to: `a${roll(6) === 0 ? Math.min(one, two) : Math.max(one, two)}`,
      kind: kinds[roll(kinds.length)] as LagKind,
      ...(least === undefined ? {} : { least }),
      ...(most === undefined ? {} : { most }),
    });
  }
  const holds: Hold[] = [];
  if (roll(2) === 0) holds.push({ resource: 'bench', units: 1, from: 'a0', to: `a${roll(count)}` });
  if (roll(3) === 0) holds.push({ resource: 'hands', units: 1 + roll(2), from: `a${roll(count)}`, to: 'a1' });
  return {
    activities,
    lags: lags.filter(({ from, to }) => from !== to),
    holds,
    resources,
    calendars,
    horizon,
    ...(roll(4) === 0 ? { earliest: { a0: roll(5) } } : {}),
    ...(roll(4) === 0 ? { latest: { a1: horizon - roll(6) } } : {}),
  };
}
