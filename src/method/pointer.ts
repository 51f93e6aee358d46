/** A JSON Pointer taken apart, or why it is none and at which of its characters. */
export type PointerReading = { ok: true; steps: string[] } | { ok: false; at: number; why: string };

/**
 * Read a JSON Pointer (RFC 6901, section 3): empty for the whole document, else a slash before each step, in which `~1` stands for a slash and
 * `~0` for a tilde.
 */
export function readPointer(pointer: string): PointerReading {
  if (pointer !== '' && !pointer.startsWith('/'))
    return { ok: false, at: 0, why: 'a reference begins with a slash, such as /parameters/depth.' };
  const tilde = pointer.search(/~(?![01])/);
  if (tilde >= 0) return { ok: false, at: tilde, why: 'in a reference ~ is written ~0, and a slash inside a name ~1.' };
  return { ok: true, steps: stepsOfPointer(pointer) };
}

/**
 * The steps of a JSON Pointer (RFC 6901): `/a~1b/c` gives `a/b` and `c`.
 *
 * @param pointer empty for the whole document, else with a slash before each step
 */
export function stepsOfPointer(pointer: string): string[] {
  return pointer
    .split('/')
    .slice(1)
    .map((step) => step.replaceAll('~1', '/').replaceAll('~0', '~'));
}

/** The JSON Pointer that leads along steps: `a/b` and `c` give `/a~1b/c`. */
export function pointerOf(steps: readonly (string | number)[]): string {
  return steps.map((step) => `/${String(step).replaceAll('~', '~0').replaceAll('/', '~1')}`).join('');
}

/** What stands in data at the steps of a pointer: own keys only, and in a list its numbers; undefined where nothing does. */
export function at(data: unknown, steps: readonly string[]): unknown {
  return steps.reduce<unknown>((value, step) => {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, step)) return undefined;
    // RFC 6901, section 4: digits without a leading zero; a list's own length is no part of it.
    if (Array.isArray(value) && !/^(0|[1-9]\d*)$/.test(step)) return undefined;
    return (value as Record<string, unknown>)[step];
  }, data);
}
