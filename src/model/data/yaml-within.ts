import type { Scalar } from 'yaml';

/** Characters behind the backslash of an escape that stand for one without ink, which reading for places passes over. */
const blankEscapes = 'nrt_NLP \t\r\n';

/** How long an escape is, from its backslash on. */
function escapeLength(kind: string): number {
  return { x: 4, u: 6, U: 10 }[kind] ?? 2;
}

/**
 * Where a character of a text value stands in the file: lines of a value are folded, indented, quoted and escaped there, so that only
 * characters with ink are followed; a blank stands behind the last of them.
 *
 * @param text the whole file
 * @param node the value
 * @param offset in the value, from 0
 */
export function offsetWithin(text: string, node: Scalar<string>, offset: number): number {
  const [start, end] = node.range ?? [0, 0];
  const quote = node.type === 'QUOTE_DOUBLE' ? '"' : node.type === 'QUOTE_SINGLE' ? "'" : '';
  const block = node.type === 'BLOCK_LITERAL' || node.type === 'BLOCK_FOLDED';
  let at = block ? Math.max(start, text.indexOf('\n', start)) : start + quote.length;
  const passBlanks = () => {
    while (at < end) {
      if (/\s/.test(text[at] as string)) at += 1;
      else if (quote === '"' && text[at] === '\\' && blankEscapes.includes(text[at + 1] as string)) at += 2;
      else return;
    }
  };
  for (let read = 0; read < Math.min(offset, node.value.length); read += 1) {
    if (/\s/.test(node.value[read] as string)) continue;
    passBlanks();
    if (quote === '"' && text[at] === '\\') {
      const length = escapeLength(text[at + 1] as string);
      // A character of two units may be one escape.
      if (length === 10 && (node.value.codePointAt(read) ?? 0) > 0xffff) read += 1;
      at += length;
    } else at += quote === "'" && text[at] === "'" ? 2 : 1;
  }
  if (offset < node.value.length && !/\s/.test(node.value[offset] as string)) passBlanks();
  return Math.min(at, end);
}
