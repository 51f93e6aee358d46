/**
 * Names in an order in which each comes after all that it needs, or a circle: names that need each other, in the order of need.
 *
 * @param names in the order to keep where nothing else decides
 * @param needs what each needs; names outside the list are left aside
 */
export function orderByNeed(
  names: readonly string[],
  needs: (name: string) => readonly string[],
): { order: readonly string[] } | { circle: readonly string[] } {
  const known = new Set(names);
  const done = new Set<string>();
  const order: string[] = [];
  for (const start of names) {
    // A walk by hand: a chain of a hundred steps must not end the stack.
    const open: { name: string; left: string[] }[] = [];
    const enter = (name: string) => open.push({ name, left: needs(name).filter((need) => known.has(need)) });
    if (!done.has(start)) enter(start);
    while (open.length > 0) {
      const top = open[open.length - 1] as { name: string; left: string[] };
      const next = top.left.shift();
      if (next === undefined) {
        open.pop();
        done.add(top.name);
        order.push(top.name);
        continue;
      }
      if (done.has(next)) continue;
      const from = open.findIndex(({ name }) => name === next);
      if (from >= 0) return { circle: open.slice(from).map(({ name }) => name) };
      enter(next);
    }
  }
  return { order };
}
