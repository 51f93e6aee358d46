import type { MethodRecord } from '../record/index.ts';
import { readText } from '../text.ts';
import { maskText } from '../text-marks.ts';
import type { Fault } from './named.ts';
import { textsOf } from './references.ts';
import type { Path } from './types.ts';

/** What the texts of a method hold that a text cannot. A title is a line without marks: only its references are looked at. */
export function textFaults(record: MethodRecord): Fault[] {
  const texts: (readonly [path: Path, text: string])[] = [
    [['about'], record.about ?? ''],
    ...Object.entries(record.steps).flatMap(([id, step]) =>
      textsOf(step).map(([field, text]) => [['steps', id, field] as Path, text] as const),
    ),
  ];
  return texts.flatMap(([path, text]) => {
    const { faults } = path.at(-1) === 'title' ? maskText(text) : readText(text);
    return faults.map(({ from, to, message }): Fault => ({ path, message, within: [from, to] }));
  });
}
