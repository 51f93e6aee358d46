import { type BatchRecord, batchesFile, largestBatches, readBatches } from '../../method/batch/record.ts';
import { addBatches } from './kept-batches.ts';
import { keptWords } from './kept-words.ts';

/** Name by which a zip of ours is known: its first two letters. */
const isZip = (bytes: Uint8Array) => bytes[0] === 0x50 && bytes[1] === 0x4b;

/** The text of the batches in a file: itself, or what a package of ours holds under that name. */
async function textOf(file: File): Promise<{ text: string } | { problem: string }> {
  if (file.size > 2 * largestBatches)
    return {
      problem: `${file.name} has ${Math.round(file.size / 1e6)} MB; 20 MB are read at most. Nothing was taken from it.`,
    };
  const bytes = new Uint8Array(await file.arrayBuffer());
  if (!isZip(bytes)) return { text: new TextDecoder().decode(bytes) };
  const found = await fileInZip(bytes, batchesFile, 2 * largestBatches);
  if (found === 'damaged')
    return {
      problem: `${file.name} is a zip that cannot be opened. Save it again where it is kept. Nothing was taken from it.`,
    };
  return found
    ? { text: new TextDecoder().decode(found) }
    : {
        problem: `${file.name} holds no ${batchesFile} of at most 20 MB. Save the log again where it is kept. Nothing was taken from it.`,
      };
}

/** Bytes of a zip that are unpacked at once: a small zip can hold very much, and is left as soon as it does. */
const bite = 4096;

/**
 * One file of a zip, unpacked bite by bite.
 *
 * @param most bytes that may come out, whatever the zip says of itself
 * @returns undefined where it is not there or is larger
 */
export async function fileInZip(
  bytes: Uint8Array,
  name: string,
  most: number,
): Promise<Uint8Array | undefined | 'damaged'> {
  const { Unzip, UnzipInflate } = await import('fflate');
  const parts: Uint8Array[] = [];
  let [length, isWhole, isDamaged] = [0, false, false];
  const unzip = new Unzip((file) => {
    if (file.name !== name) return;
    file.ondata = (error, part, isLast) => {
      isDamaged ||= error !== null;
      length += part?.length ?? 0;
      if (!isDamaged && length <= most) parts.push(part);
      isWhole ||= isLast;
    };
    file.start();
  });
  unzip.register(UnzipInflate);
  try {
    for (let at = 0; at < bytes.length && length <= most && !isDamaged && !isWhole; at += bite)
      unzip.push(bytes.subarray(at, at + bite), at + bite >= bytes.length);
  } catch {
    return 'damaged';
  }
  if (isDamaged) return 'damaged';
  if (!isWhole || length > most) return undefined;
  const whole = new Uint8Array(length);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

/** Take the batches of a file in, beside those that are kept; what came of it, a sentence each. */
export async function takeFile(file: File): Promise<string[]> {
  const found = await textOf(file);
  if ('problem' in found) return [found.problem];
  const read = readBatches(found.text, file.name);
  if (!read.ok) return read.problems;
  const { kept, merged } = await addBatches(read.batches);
  const { newBatches, newEntries, conflicts } = merged;
  const count = (number: number, one: string, more: string) =>
    `${number === 0 ? 'no' : number} new ${number === 1 ? one : more}`;
  return [
    `Taken from ${file.name}: ${count(newBatches, 'batch', 'batches')}, ${count(newEntries, 'entry', 'entries')} in batches that were here.`,
    ...conflicts,
    ...[keptWords(kept)].filter(Boolean),
  ];
}

/** The log of batches as a zip: a data package with the batches whole. */
export async function logFiles(batches: readonly BatchRecord[]): Promise<Uint8Array<ArrayBuffer>> {
  const [{ strToU8, zipSync }, { logPackage }, { batchState }] = await Promise.all([
    import('fflate'),
    import('../../method/batch/log.ts'),
    import('../../method/batch/state.ts'),
  ]);
  const now = new Date().toISOString();
  const all = [];
  for (const record of batches) {
    const answer = await batchState(record, now, { withoutTimetable: true });
    all.push({ record, batch: answer.ok ? answer.worked : undefined });
  }
  const files = Object.entries(logPackage(all)).map(([name, text]) => [name, strToU8(text)] as const);
  return zipSync(Object.fromEntries(files)) as Uint8Array<ArrayBuffer>;
}
