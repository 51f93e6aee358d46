import { encode } from 'uqr';
import type { AddressCode } from '../../model/evidence/index.ts';

/** White modules around a code that a reader needs (ISO/IEC 18004 asks for four). */
const quiet = 4;

/** The longest address that makes a code which a telephone still reads from paper at the size that the sheets print it. */
export const longestAddress = 600;

/** An address without what everybody's telephone adds, to be typed by hand. */
export const typedAddress = (address: string): string => address.replace(/^https?:\/\//, '').replace(/\/(?=$|\?)/, '');

/** An address as a code: its dark modules row by row, as runs. */
export function codeOf(address: string, text: string): AddressCode {
  const { data, size } = encode(address, { ecc: 'M', border: quiet });
  const path = data
    .flatMap((row, y) => {
      const runs: string[] = [];
      for (let x = 0; x < size; x++) {
        if (!row[x]) continue;
        const from = x;
        while (row[x + 1]) x++;
        runs.push(`M${from} ${y}h${x - from + 1}v1h${from - x - 1}z`);
      }
      return runs;
    })
    .join('');
  return { kind: 'code', text, address: typedAddress(address), size, path };
}
