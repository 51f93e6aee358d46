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

/** What stands in data at the steps of a pointer: own keys only; undefined where nothing does. */
export function at(data: unknown, steps: readonly string[]): unknown {
  return steps.reduce<unknown>(
    (value, step) =>
      typeof value === 'object' && value !== null && Object.hasOwn(value, step)
        ? (value as Record<string, unknown>)[step]
        : undefined,
    data,
  );
}
