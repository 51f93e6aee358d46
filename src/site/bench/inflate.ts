/** What came out, or why nothing did. */
export type Inflated =
  | { ok: true; bytes: Uint8Array<ArrayBuffer> }
  | { ok: false; why: 'too long' | 'damaged' | 'not here' };

/**
 * Inflate raw deflate, and stop as soon as more comes out than was allowed: a few hundred kilobytes can hold hundreds of megabytes.
 *
 * @param most bytes that may come out
 */
export async function inflate(packed: Uint8Array<ArrayBuffer>, most: number): Promise<Inflated> {
  if (typeof DecompressionStream === 'undefined') return { ok: false, why: 'not here' };
  const reader = new Blob([packed]).stream().pipeThrough(new DecompressionStream('deflate-raw')).getReader();
  const parts: Uint8Array[] = [];
  let length = 0;
  try {
    for (;;) {
      const { done, value } = await reader.read();
      if (done) break;
      length += value.length;
      if (length > most) {
        reader.cancel().catch(() => undefined);
        return { ok: false, why: 'too long' };
      }
      parts.push(value);
    }
  } catch {
    return { ok: false, why: 'damaged' };
  }
  const bytes = new Uint8Array(length);
  let at = 0;
  for (const part of parts) {
    bytes.set(part, at);
    at += part.length;
  }
  return { ok: true, bytes };
}

/** Bytes as text in UTF-8, or undefined where they are none. */
export function utf8(bytes: Uint8Array): string | undefined {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return undefined;
  }
}
