import { strToU8, zipSync } from 'fflate';
import { inflate, utf8 } from './inflate.ts';
import { fileName, longestText, nameOfFile, tidyText } from './names.ts';

/** A method as taken out of a file. */
export interface FileText {
  name: string;
  text: string;
}

/** Files of one zip, and bytes of it and of a file in it, at most. */
const mostFiles = 200;
export const largestZip = 4_194_304;
const largestFile = 4 * longestText;

/** All drafts as one zip, each a file named after it. The date of a file is left at the format's first day, so that the same drafts give the same bytes. */
export function zipOf(drafts: readonly FileText[]): Uint8Array<ArrayBuffer> {
  const files: Record<string, Uint8Array> = {};
  for (const { name, text } of drafts) files[fileName(name, { taken: Object.keys(files) })] = strToU8(text);
  return zipSync(files, { mtime: new Date(1980, 0, 1) }) as Uint8Array<ArrayBuffer>;
}

/** What a zip holds, or why all of it is refused; `left` names what is no method. */
export type ReadZip =
  | { ok: true; files: readonly FileText[]; left: readonly string[] }
  | { ok: false; message: string };

/** Signatures of the parts, as little-endian numbers (PKWARE APPNOTE.TXT 6.3, sections 4.3.7, 4.3.12, 4.3.16). */
const local = 0x04034b50;
const central = 0x02014b50;
const ending = 0x06054b50;
/** Bytes of the parts without what varies. */
const [localSize, centralSize, endingSize] = [30, 46, 22];

interface Entry {
  name: string;
  method: number;
  encrypted: boolean;
  crc: number;
  packed: number;
  size: number;
  at: number;
}

/** The directory at the end of a zip; undefined where it is not whole. */
function entriesOf(bytes: Uint8Array<ArrayBuffer>, view: DataView): Entry[] | undefined {
  let end = bytes.length - endingSize;
  // A remark of at most 65,535 bytes may stand behind it.
  while (end >= 0 && end >= bytes.length - endingSize - 65_535 && view.getUint32(end, true) !== ending) end -= 1;
  if (end < 0 || view.getUint32(end, true) !== ending) return undefined;
  const count = view.getUint16(end + 10, true);
  const entries: Entry[] = [];
  let at = view.getUint32(end + 16, true);
  for (let number = 0; number < count && number <= mostFiles; number += 1) {
    if (at + centralSize > end || view.getUint32(at, true) !== central) return undefined;
    const nameLength = view.getUint16(at + 28, true);
    if (at + centralSize + nameLength > end) return undefined;
    const name = bytes.subarray(at + centralSize, at + centralSize + nameLength);
    entries.push({
      name: new TextDecoder().decode(name),
      encrypted: (view.getUint16(at + 8, true) & 1) === 1,
      method: view.getUint16(at + 10, true),
      crc: view.getUint32(at + 16, true),
      packed: view.getUint32(at + 20, true),
      size: view.getUint32(at + 24, true),
      at: view.getUint32(at + 42, true),
    });
    at += centralSize + nameLength + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
  // Where files are counted that are not there, or are there and not counted, something is lost.
  return at === end || entries.length > mostFiles ? entries : undefined;
}

const crcTable = Uint32Array.from({ length: 256 }, (_, byte) => {
  let value = byte;
  for (let bit = 0; bit < 8; bit += 1) value = value & 1 ? 0xedb88320 ^ (value >>> 1) : value >>> 1;
  return value;
});

/** The check sum that a zip holds of each file (CRC-32 of ISO/IEC 8802-3). */
function crc32(bytes: Uint8Array): number {
  let crc = 0xffffffff;
  for (const byte of bytes) crc = (crcTable[(crc ^ byte) & 255] as number) ^ (crc >>> 8);
  return (crc ^ 0xffffffff) >>> 0;
}

/** The bytes of a file in a zip, or what is wrong with it in words that follow its name. */
async function contentOf(
  bytes: Uint8Array<ArrayBuffer>,
  view: DataView,
  entry: Entry,
): Promise<{ ok: true; bytes: Uint8Array } | { ok: false; why: string }> {
  const damaged = { ok: false, why: 'is damaged' } as const;
  if (entry.encrypted) return { ok: false, why: 'is locked with a password' };
  if (entry.size > largestFile)
    return { ok: false, why: `is larger than a method can be (${longestText.toLocaleString('en-US')} characters)` };
  if (entry.at + localSize > bytes.length || view.getUint32(entry.at, true) !== local) return damaged;
  const from = entry.at + localSize + view.getUint16(entry.at + 26, true) + view.getUint16(entry.at + 28, true);
  if (from + entry.packed > bytes.length) return damaged;
  const packed = bytes.subarray(from, from + entry.packed);
  if (entry.method !== 0 && entry.method !== 8) return { ok: false, why: 'is packed in a way that is not read here' };
  const content = entry.method === 0 ? { ok: true as const, bytes: packed } : await inflate(packed, entry.size);
  if (!content.ok)
    return content.why === 'not here' ? { ok: false, why: 'cannot be unpacked by this browser' } : damaged;
  if (content.bytes.length !== entry.size || crc32(content.bytes) !== entry.crc) return damaged;
  return content;
}

const isMethodFile = (name: string) => /\.ya?ml$/i.test(name) && !/(^|[\\/])(\._|__MACOSX[\\/])/.test(name);

/**
 * The methods in a zip. It is taken whole or refused whole; what is no YAML file is left out and named. Folders in it are read as names only.
 *
 * @param file its name, for what is said of it
 */
export async function readZip(bytes: Uint8Array<ArrayBuffer>, file: string): Promise<ReadZip> {
  const refuse = (why: string): ReadZip => ({
    ok: false,
    message: `${file} cannot be read. ${why} Nothing was taken from it.`,
  });
  if (bytes.length > largestZip) return refuse('It is larger than 4 MB, the most that is read here.');
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const entries = entriesOf(bytes, view);
  if (!entries) return refuse('It is not a whole zip: its end may be missing. Copy or download it again.');
  if (entries.length > mostFiles) return refuse(`It holds more than ${mostFiles} files. Pack the methods alone.`);
  const methods = entries.filter(({ name }) => isMethodFile(name));
  if (methods.length === 0) return refuse('No file in it ends in .yaml, as a method does.');
  const files: FileText[] = [];
  for (const entry of methods) {
    const shown = nameOfFile(entry.name);
    const content = await contentOf(bytes, view, entry);
    if (!content.ok) return refuse(`Its file “${shown}” ${content.why}.`);
    const text = utf8(content.bytes);
    if (text === undefined)
      return refuse(`Its file “${shown}” is not text in UTF-8. Save it as UTF-8 and pack it again.`);
    if (text.length > longestText) return refuse(`Its file “${shown}” is longer than a method can be.`);
    files.push({ name: shown, text: tidyText(text) });
  }
  const left = entries
    .filter(({ name }) => !isMethodFile(name) && !/[\\/]$/.test(name))
    .map(({ name }) => nameOfFile(name));
  return { ok: true, files, left };
}
