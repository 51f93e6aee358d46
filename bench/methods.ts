import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { workMethod } from '../src/method/case/work.ts';
import { timetableOf } from '../src/method/plan/timetable.ts';
import { readMethod } from '../src/method/read.ts';
import { judge } from '../src/method/rules/judge.ts';

const seconds = (from: number) => (performance.now() - from) / 1000;

/**
 * Two hundred methods read, worked out and judged, as ratios to reading one text of the same length in all as JSON; and the class of twelve
 * planned. The methods are those of the house over and over, each time for another number of pieces, so that answers which do not depend on
 * it are asked once.
 */
export async function benchMethods(root: string): Promise<void> {
  const folder = join(root, 'methods');
  const texts = readdirSync(folder)
    .filter((name) => name.endsWith('.yaml') && name !== 'shop.yaml')
    .map((name) => ({ name, text: readFileSync(join(folder, name), 'utf8') }));
  const memo = new Map<string, unknown>();
  const first = performance.now();
  for (const { name, text } of texts) await workMethod(readMethod(text, name), { memo });
  const cold = seconds(first);
  const begun = performance.now();
  let findings = 0;
  let characters = 0;
  for (let at = 0; at < 200; at += 1) {
    const { name, text } = texts[at % texts.length] as { name: string; text: string };
    const working = await workMethod(readMethod(text, name), { memo });
    if (working.ok) findings += judge(working.worked).length;
    characters += text.length;
  }
  const warm = seconds(begun);
  const json = JSON.stringify(texts.map(({ text }) => text).join('')).repeat(1);
  const plain = performance.now();
  for (let sum = 0; sum < characters; sum += json.length) JSON.parse(json);
  const floor = seconds(plain);
  console.log(
    `methods: ${texts.length} worked out first ${cold.toFixed(2)} s; 200 checked ${warm.toFixed(2)} s (${(warm / floor).toFixed(0)} × the same as JSON text), ${findings} findings`,
  );
  const class_ = texts.find(({ name }) => name === 'class-of-twelve.yaml');
  if (!class_) return;
  const working = await workMethod(readMethod(class_.text, class_.name), { memo });
  if (!working.ok) return;
  const planning = performance.now();
  const timetable = await timetableOf(working.worked, {
    start: '2027-01-12',
    people: 13,
    hours: { zone: 'America/Chicago', week: { tue: ['18:30-21:00'], sat: ['09:00-13:00'] } },
  });
  const told = timetable.ok
    ? `${timetable.made.sittings.length} sittings, ${timetable.proved ? 'proved shortest' : `at most ${(100 * (1 - timetable.lowerBound / timetable.planned.makespan)).toFixed(1)} % off`}`
    : 'none found';
  console.log(
    `plan of the class of twelve, ${working.worked.steps.length} steps: ${seconds(planning).toFixed(2)} s, ${told}`,
  );
}
