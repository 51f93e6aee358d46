/** Clock of a zone at an instant, such as `2027-01-12T18:30`: what a field for a local time holds. */
export function localTime(zone: string, instant: number): string {
  return new Intl.DateTimeFormat('sv-SE', { timeZone: zone, dateStyle: 'short', timeStyle: 'short' })
    .format(instant)
    .replace(' ', 'T');
}

/** Minutes that the clock of a zone is ahead of universal time at an instant. */
function aheadAt(zone: string, instant: number): number {
  const whole = Math.floor(instant / 60_000) * 60_000;
  return Math.round((Date.parse(`${localTime(zone, whole)}:00Z`) - whole) / 60_000);
}

/**
 * A local time of a zone as a moment with its distance from universal time (RFC 3339); undefined where the text is none. Of an hour that the clock
 * shows twice it is the first; one that it skips is taken as much later.
 *
 * @param local such as `2027-01-12T18:30`
 */
export function stampOf(zone: string, local: string): string | undefined {
  if (!/^\d{4}-\d\d-\d\dT\d\d:\d\d$/.test(local)) return undefined;
  const asUniversal = Date.parse(`${local}:00Z`);
  if (!Number.isFinite(asUniversal) || new Date(asUniversal).toISOString().slice(0, 16) !== local) return undefined;
  // A day around it, the clock has changed or has not: the two distances that can hold.
  const distances = [aheadAt(zone, asUniversal - 86_400_000), aheadAt(zone, asUniversal + 86_400_000)];
  const found = distances.map((ahead) => ({ ahead, instant: asUniversal - ahead * 60_000 }));
  const { instant } =
    found
      .filter(({ ahead, instant: each }) => aheadAt(zone, each) === ahead)
      .sort((one, other) => one.instant - other.instant)[0] ?? (found[0] as { instant: number });
  return withOffset(zone, instant).replace('.000', '');
}

/**
 * An instant on the clock of a zone, with its distance from universal time: `2027-01-12T18:30:00.125-06:00`. To the thousandth, since entries stand in
 * the order in which they were written.
 */
export function withOffset(zone: string, instant: number): string {
  const ahead = aheadAt(zone, instant);
  const two = (value: number) => String(value).padStart(2, '0');
  const size = Math.abs(ahead);
  const seconds = two(Math.floor(instant / 1000) % 60);
  const parts = String(instant % 1000).padStart(3, '0');
  return `${localTime(zone, instant)}:${seconds}.${parts}${ahead < 0 ? '-' : '+'}${two(Math.floor(size / 60))}:${two(size % 60)}`;
}

/** A clock that shows the minute before somebody else’s is no contradiction, ms. */
export const clocksApart = 2 * 60_000;

/**
 * What is wrong with a time at which something is said to have happened: `fault` where it cannot be, as when it has not come yet; `remark` where it
 * can, and is seldom meant.
 *
 * @param local as a field holds it, `2027-01-12T18:30`
 * @param opened instant at which the batch was opened, ms
 * @param now instant, ms
 */
export function whenFault(
  zone: string,
  local: string,
  opened: number,
  now: number,
): { fault?: string; remark?: string } {
  const stamp = stampOf(zone, local);
  if (stamp === undefined) return { fault: 'No whole day and time stand there. Give both, such as 2027-01-12 18:30.' };
  const instant = Date.parse(stamp);
  const words = (at: number) => localTime(zone, at).replace('T', ' ');
  if (instant > now + clocksApart)
    return {
      fault: `${words(instant)} has not come yet: it is ${words(now)} in the shop. Give the day and time at which it was, not at which it will be.`,
    };
  if (instant < opened - clocksApart)
    return {
      remark: `That is before the batch was opened, ${words(opened)}. It is written down so; change it if another day was meant.`,
    };
  return {};
}
