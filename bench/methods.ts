import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { isMap, parseDocument } from 'yaml';
import { workMethod } from '../src/method/case/work.ts';
import { timetableOf } from '../src/method/plan/timetable.ts';
import { readMethod } from '../src/method/read.ts';
import { judge } from '../src/method/rules/judge.ts';

const seconds = (from: number) => (performance.now() - from) / 1000;

interface MethodText {
  name: string;
  text: string;
}

/** The same method with what each step does and nothing about why, how to tell and what goes wrong: 15 kB where it had 19. */
function cutShort({ name, text }: MethodText): MethodText {
  const document = parseDocument(text);
  document.delete('about');
  const steps = document.get('steps');
  if (!isMap(steps)) throw new Error(`${name} has no steps to cut short. Name a method that has.`);
  for (const { value } of steps.items)
    if (isMap(value)) for (const field of ['why', 'tell', 'wrong']) value.delete(field);
  return { name, text: document.toString() };
}

interface Checked {
  seconds: number;
  /** Of the processor, whatever else it had to do: with the time for clearing memory and translating code in threads beside. */
  processor: number;
  /** Of the seconds, what the reading took: the guard, YAML, the schema, the texts. */
  reading: number;
  findings: number;
  characters: number;
}

/** Two hundred readings, workings and judgements of some methods, over and over. */
async function check200(texts: readonly MethodText[], memo: Map<string, unknown>): Promise<Checked> {
  const checked: Checked = { seconds: 0, processor: 0, reading: 0, findings: 0, characters: 0 };
  const begun = performance.now();
  const before = process.cpuUsage();
  for (let at = 0; at < 200; at += 1) {
    const { name, text } = texts[at % texts.length] as MethodText;
    const reading = performance.now();
    const read = readMethod(text, name);
    checked.reading += seconds(reading);
    const working = await workMethod(read, { memo });
    if (!working.ok) throw new Error(`${name}: ${working.problems[0]?.message}`);
    checked.findings += judge(working.worked).length;
    checked.characters += text.length;
  }
  const { user, system } = process.cpuUsage(before);
  return { ...checked, seconds: seconds(begun), processor: (user + system) / 1e6 };
}

/** The n-th of many like a method: other words in every step, and every default of three digits a little smaller, so that no answer fits another. */
function unlike({ name, text }: MethodText, at: number): MethodText {
  const other = text
    .replace(/^( +does: \|\n +)/gm, `$1Batch ${at}. `)
    .replace(/default: (\d{3}) mm/g, (_, length: string) => `default: ${Number(length) - (at % 29) / 10} mm`);
  return { name: `${at}-${name}`, text: other };
}

/**
 * The whole command over two hundred files, from the start of the program to its last line, no two of them alike; as a ratio to what the YAML
 * library alone takes for them in one thread.
 */
function benchCommand(root: string, texts: readonly MethodText[]): void {
  const folder = mkdtempSync(join(tmpdir(), 'bench-'));
  try {
    const all = Array.from({ length: 200 }, (_, at) => unlike(texts[at % texts.length] as MethodText, at));
    const files = all.map(({ name }) => join(folder, name));
    all.forEach(({ text }, at) => {
      writeFileSync(files[at] as string, text);
    });
    const kerf = (...args: string[]) => {
      const begun = performance.now();
      const { stdout } = spawnSync(process.execPath, [join(root, 'scripts', 'kerf.mjs'), ...args], {
        encoding: 'utf8',
      });
      return { taken: seconds(begun), last: stdout.trim().split('\n').at(-1) };
    };
    // The first run makes the bundle.
    kerf('--help');
    const one = kerf('check', files[0] as string);
    const many = kerf('check', ...files);
    const alone = performance.now();
    for (const { text } of all) parseDocument(text, { uniqueKeys: false, prettyErrors: false }).toJS();
    const library = seconds(alone);
    console.log(
      `kerf check: one file ${one.taken.toFixed(2)} s; 200 of ${kilo(all.reduce((sum, { text }) => sum + text.length, 0))}, no two alike, ${many.taken.toFixed(2)} s (${(many.taken / library).toFixed(2)} × the YAML library alone in one thread, ${library.toFixed(2)} s): ${many.last}`,
    );
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

const kilo = (characters: number) => `${(characters / 200_000).toFixed(0)} kB`;

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
  const warm = await check200(texts, memo);
  const json = JSON.stringify(texts.map(({ text }) => text).join('')).repeat(1);
  const plain = performance.now();
  for (let sum = 0; sum < warm.characters; sum += json.length) JSON.parse(json);
  const floor = seconds(plain);
  console.log(
    `methods: ${texts.length} worked out first ${cold.toFixed(2)} s; 200 of ${kilo(warm.characters)} checked ${warm.seconds.toFixed(2)} s (${warm.processor.toFixed(2)} s of processor), of which reading ${warm.reading.toFixed(2)} s (${(warm.seconds / floor).toFixed(0)} × the same as JSON text), ${warm.findings} findings`,
  );
  const short = texts.filter(({ name }) => name === 'making-a-template.yaml').map(cutShort);
  for (const { name, text } of short) await workMethod(readMethod(text, name), { memo });
  const quick = await check200(short, memo);
  console.log(
    `methods: 200 of ${kilo(quick.characters)} checked ${quick.seconds.toFixed(2)} s (${quick.processor.toFixed(2)} s of processor), of which reading ${quick.reading.toFixed(2)} s`,
  );
  benchCommand(root, texts);
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
