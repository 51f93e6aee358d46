const hour = 60;
const day = 24 * hour;

/** A time as somebody reads it off a clock and a calendar, to the minute: `3 h 49 min`, `2 d 15 h 58 min`. Part of a minute is left off: a window is none too long. */
export function exactTime(minutes: number): string {
  const whole = Math.floor(minutes + 1e-6);
  const parts = [
    [Math.floor(whole / day), 'd'],
    [Math.floor((whole % day) / hour), 'h'],
    [whole % hour, 'min'],
  ] as const;
  return (
    parts
      .filter(([count]) => count > 0)
      .map(([count, unit]) => `${count}\u00a0${unit}`)
      .join(' ') || '0\u00a0min'
  );
}

/** A time to wait at least, `7 d 14 h`: beyond a day up to the full hour, since nobody knows a cure or a drying to the minute. min */
export const noLessThan = (minutes: number): string =>
  exactTime(minutes > day ? Math.ceil(minutes / hour - 1e-6) * hour : Math.ceil(minutes - 1e-6));
