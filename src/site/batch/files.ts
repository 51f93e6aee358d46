import { type BatchRecord, largestBatches, readBatches } from '../../method/batch/record.ts';
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
  const { unzipSync, strFromU8 } = await import('fflate');
  const { batchesFile } = await import('../../method/batch/log.ts');
  try {
    const found = unzipSync(bytes, {
      filter: ({ name, originalSize }) => name === batchesFile && originalSize <= 2 * largestBatches,
    })[batchesFile];
    return found
      ? { text: strFromU8(found) }
      : {
          problem: `${file.name} holds no ${batchesFile} of at most 20 MB. Save the log again where it is kept. Nothing was taken from it.`,
        };
  } catch {
    return {
      problem: `${file.name} is a zip that cannot be opened. Save it again where it is kept. Nothing was taken from it.`,
    };
  }
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
