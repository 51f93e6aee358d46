import { readdirSync, readFileSync } from 'node:fs';
import { type MethodReading, readMethod } from '../../src/method/read.ts';

const room = new URL('../../methods/', import.meta.url);

/** A method of the house as it stands in its file. */
export interface MethodFile {
  name: string;
  text: string;
  read: MethodReading;
}

/** Every method of the house; the shop record lies in the same room and is none. */
export const methodFiles: readonly MethodFile[] = readdirSync(room)
  .filter((name) => name.endsWith('.yaml') && name !== 'shop.yaml')
  .map((name) => {
    const text = readFileSync(new URL(name, room), 'utf8');
    return { name, text, read: readMethod(text, `methods/${name}`) };
  });
