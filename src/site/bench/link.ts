import { inflate, utf8 } from './inflate.ts';
import { longestText } from './names.ts';

/** What stands before the packed text, behind the # of an address. */
const key = 'method=';

/** Characters of a whole address that mail and message programs carry unbroken; common practice. */
export const longestLink = 8_000;

/** A text takes up to three bytes a character, and none of more than this is unpacked. */
const mostBytes = 262_144;

/** A link that is larger than this holds nothing that was made here. Characters. */
const mostPacked = 262_144;

function toBase64Url(bytes: Uint8Array): string {
  let signs = '';
  for (let at = 0; at < bytes.length; at += 0x8000) signs += String.fromCharCode(...bytes.subarray(at, at + 0x8000));
  return btoa(signs).replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '');
}

function fromBase64Url(text: string): Uint8Array<ArrayBuffer> | undefined {
  if (!/^[A-Za-z0-9_-]+$/.test(text)) return undefined;
  try {
    return Uint8Array.from(atob(text.replaceAll('-', '+').replaceAll('_', '/')), (sign) => sign.charCodeAt(0));
  } catch {
    return undefined;
  }
}

/** The part of an address that carries a text, from its # on; undefined where this browser cannot pack it. */
export async function fragmentOf(text: string): Promise<string | undefined> {
  if (typeof CompressionStream === 'undefined') return undefined;
  const packed = new Blob([text]).stream().pipeThrough(new CompressionStream('deflate-raw'));
  return `#${key}${toBase64Url(new Uint8Array(await new Response(packed).arrayBuffer()))}`;
}

/** A link as made, or why a file is the way. */
export type MadeLink = { ok: true; link: string } | { ok: false; message: string };

/** An address that carries a method, where it is short enough to be sent on. */
export async function linkOf(page: string, text: string): Promise<MadeLink> {
  const fragment = await fragmentOf(text);
  if (fragment === undefined)
    return { ok: false, message: 'This browser cannot pack a text into a link. Hand on the file instead.' };
  const link = page + fragment;
  if (link.length <= longestLink) return { ok: true, link };
  return {
    ok: false,
    message: `A link to this method would be ${link.length.toLocaleString('en-US')} characters long, and mail programs break one of more than ${longestLink.toLocaleString('en-US')}. Hand on the file instead.`,
  };
}

/** What a link carries, or why it cannot be read. */
export type ReadLink = { ok: true; text: string } | { ok: false; message: string };

const damaged =
  'The link is damaged: a part of it may have been lost on the way. Ask for it again, or for the file of the method.';

/**
 * The text that an address carries behind its #.
 *
 * @returns undefined where it carries none
 */
export async function readFragment(fragment: string): Promise<ReadLink | undefined> {
  const packed = fragment.replace(/^#/, '');
  if (!packed.startsWith(key)) return undefined;
  const most = `more than ${longestText.toLocaleString('en-US')} characters, the most that is read as a method`;
  if (packed.length > mostPacked) return { ok: false, message: `The link holds ${most}. It was not opened.` };
  const bytes = fromBase64Url(packed.slice(key.length));
  if (!bytes) return { ok: false, message: damaged };
  const inflated = await inflate(bytes, mostBytes);
  if (!inflated.ok) {
    if (inflated.why === 'too long') return { ok: false, message: `The link holds ${most}. It was not opened.` };
    if (inflated.why === 'damaged') return { ok: false, message: damaged };
    return { ok: false, message: 'This browser cannot unpack a link. Ask for the file of the method.' };
  }
  const text = utf8(inflated.bytes);
  if (text === undefined) return { ok: false, message: damaged };
  if (text.length > longestText) return { ok: false, message: `The link holds ${most}. It was not opened.` };
  return { ok: true, text };
}
