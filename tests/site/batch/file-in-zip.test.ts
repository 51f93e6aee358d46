import { zipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { fileInZip } from '../../../src/site/batch/files.ts';

const bytes = (text: string) => new TextEncoder().encode(text);

describe('one file of a zip', () => {
  test('comes out whole, packed or not', async () => {
    const text = 'a log of batches '.repeat(2000);
    for (const level of [0, 9] as const) {
      const zip = zipSync({ 'other.txt': bytes('x'), 'batches.json': bytes(text) }, { level });
      expect(new TextDecoder().decode((await fileInZip(zip, 'batches.json', 1e6)) as Uint8Array)).toBe(text);
    }
  });

  test('is left as soon as more comes out than is read, whatever the zip says of its size', async () => {
    const zip = zipSync({ 'batches.json': new Uint8Array(30_000_000) });
    expect(zip.length).toBeLessThan(40_000);
    // Both headers say that a hundred bytes are in it.
    const view = new DataView(zip.buffer, zip.byteOffset);
    view.setUint32(22, 100, true);
    for (let at = 0; at + 46 < zip.length; at += 1)
      if (view.getUint32(at, true) === 0x02014b50) view.setUint32(at + 24, 100, true);
    expect(await fileInZip(zip, 'batches.json', 1_000_000)).toBeUndefined();
  });

  test('that is not there, or is damaged, is no file', async () => {
    const zip = zipSync({ 'batches.json': bytes('{}'.repeat(500)) }, { level: 9 });
    expect(await fileInZip(zip, 'other.json', 1000)).toBeUndefined();
    expect(await fileInZip(zip.slice(0, 45), 'batches.json', 10_000)).not.toBeInstanceOf(Uint8Array);
    zip.fill(255, 42, 50);
    expect(await fileInZip(zip, 'batches.json', 10_000)).not.toBeInstanceOf(Uint8Array);
  });
});
