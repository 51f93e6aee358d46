import { workMethod } from '../../src/method/case/work.ts';
import { readMethod } from '../../src/method/read.ts';
import { starterMethod } from '../../src/method/record/starter.ts';
import { judge } from '../../src/method/rules/judge.ts';
import { longestText, readText } from '../../src/method/text.ts';
import { readWritten } from '../../src/method/text-quantity.ts';
import { parseQuantity } from '../../src/model/quantity/index.ts';
import { readAnyQuantity } from '../../src/model/quantity/read-any.ts';

/*
 * Run as a process of its own, whose processor time is nobody else's: a line of JSON for each case, with the milliseconds that it took.
 */

/** What a field may be full of. */
const braces = [
  '{20 cm} ',
  '{1/8 in}',
  '{/makes/pieces} ',
  '{20 cm',
  '{1/',
  '{',
  '}',
  '{}',
  '{{',
  '{3 to 5 mm} ',
  '{20 blobs} ',
  '{1,250 mm} ',
  '{9 7/8 in} (251 mm). ',
  'by {10 °C} ',
  '\\{20 cm\\} ',
  '**{20 cm}** ',
  '`{20 cm}` ',
  '[{3 mm}](/{3 mm}) ',
  '20 mm (3/4 in) ',
  '1 ',
  '1/1',
  '1.1.1 mm. ',
];

const hundredThousand = 100_000;
const filled = (mark: string, length: number) => mark.repeat(Math.ceil(length / mark.length)).slice(0, length);

/** Quantities that nobody writes, of 100,000 characters. */
const quantities: Readonly<Record<string, string>> = {
  figures: filled('1', hundredThousand),
  'figures and a unit': `${filled('1', hundredThousand - 3)} mm`,
  'figures and a stranger': `${filled('1', hundredThousand - 1)}x`,
  points: `1${filled('.', hundredThousand)}`,
  'points and figures': `${filled('1.', hundredThousand)} mm`,
  'commas and figures': `${filled('1,', hundredThousand)} mm`,
  fractions: filled('1/', hundredThousand),
  'mixed numbers': `${filled('1 1/2 ', hundredThousand)}in`,
  blanks: `1${filled(' ', hundredThousand)}mm`,
  'blanks alone': filled(' ', hundredThousand),
  units: `1 ${filled('mm', hundredThousand)}`,
  'quantities in a row': filled('1 mm ', hundredThousand),
  'feet and inches': filled(`1' 1" `, hundredThousand),
  signs: `${filled('-', hundredThousand)}1 mm`,
  exponents: `1${filled('e1', hundredThousand)} mm`,
  degrees: `20 ${filled('°', hundredThousand)}C`,
  'vulgar fractions': `${filled('½', hundredThousand)} in`,
  letters: filled('mile', hundredThousand),
};

const tell = (name: string, from: NodeJS.CpuUsage, told: string) => {
  const { user, system } = process.cpuUsage(from);
  process.stdout.write(`${JSON.stringify({ name, ms: Math.round((user + system) / 1000), told })}\n`);
};

/** A method whose file is as full of one thing as a file may be: steps, each with a text as long as a text may be. */
function methodFullOf(mark: string): string {
  const text = filled(mark, longestText).trimEnd();
  const steps = Array.from(
    { length: 28 },
    (_, at) => `  full-${at}:\n    title: Full\n    act: inspect\n    does: |-\n      ${text}\n`,
  );
  return `${starterMethod}${steps.join('')}`;
}

// The first reading loads and warms what every other takes.
await workMethod(readMethod(starterMethod, 'first.yaml'));

for (const mark of braces) {
  let from = process.cpuUsage();
  const { faults } = readText(filled(mark, longestText));
  tell(`a text full of “${mark}”`, from, `${faults.length}`);
  from = process.cpuUsage();
  const read = readMethod(methodFullOf(mark), 'full.yaml');
  const working = await workMethod(read);
  const found = working.ok ? judge(working.worked) : [];
  tell(`a method full of “${mark}”`, from, working.ok ? `found ${found.length}` : `refused ${working.problems.length}`);
}

for (const [name, text] of Object.entries(quantities)) {
  for (const [reader, read] of [
    ['any', () => readAnyQuantity(text)],
    ['written', () => readWritten(text)],
    ['length', () => parseQuantity(text, { dimension: 'length', bareUnit: 'mm' })],
  ] as const) {
    const from = process.cpuUsage();
    const reading = read();
    tell(`${name}, read as ${reader}`, from, reading.ok ? 'read' : `${reading.problem}. ${reading.wayOut}`);
  }
  for (const where of ['default: 400 mm', 'surface: planed', 'amount: 2']) {
    const from = process.cpuUsage();
    const [field] = where.split(':');
    const spoilt = starterMethod.replace(where, `${field}: ${JSON.stringify(text)}`);
    const working = await workMethod(readMethod(spoilt, 'long.yaml'));
    const found = working.ok
      ? judge(working.worked).map(({ message }) => message)
      : working.problems.map(({ message }) => message);
    tell(`${name}, as ${field}`, from, found.find((message) => message.length > 2000)?.slice(0, 60) ?? 'short');
  }
}
