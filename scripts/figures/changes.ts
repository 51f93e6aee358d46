import Papa from 'papaparse';

type Row = Readonly<Record<string, string>>;

/** Rows of a file of figures, by what they are about. */
function rowsOf(csv: string): Map<string, Row> {
  const { data } = Papa.parse<Record<string, string>>(csv, { header: true, skipEmptyLines: true });
  return new Map(data.map((row) => [`${row['of']} ${row['figure']}`, row]));
}

/** One number against another in words: which way, from what to what, by how much of the first. */
function moved(before: string, now: string): string {
  const [from, to] = [Number(before), Number(now)];
  if (before === '' || now === '' || Number.isNaN(from) || Number.isNaN(to))
    return `${before || 'none'} → ${now || 'none'}`;
  const share =
    from === 0 ? '' : ` (${to > from ? '+' : '−'}${Number(Math.abs(((to - from) / from) * 100).toPrecision(2))} %)`;
  return `${to > from ? 'up' : 'down'} from ${before} to ${now}${share}`;
}

/**
 * What differs between two states of a file of figures, a line for each change: which figure, which way it moved, from what to what.
 *
 * @param before the text as it was reviewed
 * @param now the text as it comes now
 */
export function figureChanges(before: string, now: string): string[] {
  const [old, fresh] = [rowsOf(before), rowsOf(now)];
  const changed = [...fresh].flatMap(([key, row]) => {
    const was = old.get(key);
    if (!was) return [`${key}: new, ${row['value']} ${row['unit']}`];
    return Object.keys(row).flatMap((column) => {
      const [one = '', other = ''] = [was[column], row[column]];
      return one === other ? [] : [`${key}: ${column} ${moved(one, other)}`];
    });
  });
  const gone = [...old.keys()].filter((key) => !fresh.has(key)).map((key) => `${key}: gone`);
  return [...changed, ...gone];
}
