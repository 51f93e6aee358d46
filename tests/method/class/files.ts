import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { ClassRecord } from '../../../src/method/class/record.ts';
import { readPlaces } from '../../../src/method/class/sheet.ts';
import type { ClassQuestion } from '../../../src/method/class/types.ts';
import { readMethod } from '../../../src/method/read.ts';

const room = join(import.meta.dirname, '../../../methods');
export const fileText = (name: string) => readFileSync(join(room, name), 'utf8');

export const methodText = (id: string) => fileText(`${id}.yaml`);

export function methodRecordOf(id: string, text = methodText(id)) {
  const { record, problems } = readMethod(text, `${id}.yaml`);
  if (!record) throw new Error(problems.map(({ message }) => message).join('\n'));
  return record;
}

/** The three days of the teacher and the six evenings of the course. */
export const sixEvenings = [
  '2027-01-23 09:00-16:00',
  '2027-01-30 09:00-16:00',
  '2027-02-06 13:00-14:05',
  ...['02-09', '02-16', '02-23', '03-02', '03-09', '03-16'].map((day) => `2027-${day} 18:30-21:00`),
].join('\n');

interface Differs {
  places: ClassRecord['places'];
  set?: Record<string, string>;
  sessions?: string;
  shop?: boolean;
  text?: string;
}

/** A question about a class of a method of the house. */
export function classOf(id: string, { places, set = {}, sessions = '', shop = false, text }: Differs): ClassQuestion {
  return {
    record: {
      class: 1,
      name: 'Spring evening class',
      method: { id },
      common: {
        set,
        zone: 'America/Chicago',
        sessions,
        ...(shop ? { shop: { file: 'shop.yaml', text: fileText('shop.yaml') } } : {}),
      },
      people: { teachers: 1, helpers: 1 },
      places,
    },
    text: text ?? methodText(id),
    file: `${id}.yaml`,
    zone: 'America/Chicago',
  };
}

/** The class of the demonstration, as its list of places has it. */
export const springPlaces = () =>
  readPlaces(fileText('classes/spring-evening.csv'), methodRecordOf('class-of-twelve')).places;

/** So many places that are all alike. */
export const alike = (count: number, set: Record<string, string> = {}): ClassRecord['places'] =>
  Array.from({ length: count }, (_, at) => ({ id: String(at + 1), set }));
