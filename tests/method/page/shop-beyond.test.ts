import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { answerMethod, answerNumbers, MethodMemory } from '../../../src/method/page/answer.ts';
import type { MethodQuestion } from '../../../src/method/page/types.ts';
import { inReaderUnits } from '../../../src/model/quantity/index.ts';
import { methodEntry } from '../../../src/site/plugin/method-pages.ts';
import { methodFiles } from '../../methods/files.ts';

const record = readFileSync(new URL('../../../methods/shop.yaml', import.meta.url), 'utf8');
/** The shop of the demonstration with another night. */
const withNight = (night: string) => record.replace(/^( {2}night: ).*$/m, `$1${night}`);
const withResin = methodFiles.filter(({ text }) => /^ {2}nightTemperature:/m.test(text));
const memory = new MethodMemory();
const of = ({ name, text }: { name: string; text: string }): MethodQuestion => ({ text, file: `methods/${name}` });

/** What each night of a case is, and what its cure clock was asked with. */
async function nightsOf(question: MethodQuestion) {
  const answered = await answerNumbers(question, memory);
  if (!answered.ok) throw new Error(JSON.stringify(answered.problems));
  const clocks = answered.page.steps
    .flatMap(({ calculations }) => calculations)
    .filter(({ use }) => use === 'cure-clock');
  const parameter = answered.page.parameters.find(({ name }) => name === 'nightTemperature');
  return { parameter, clocks: [...new Set(clocks.map(({ inputs }) => inputs['nightTemperature']))] };
}

test('there are methods with a night to ask of', () => {
  expect(withResin.length).toBeGreaterThanOrEqual(5);
});

describe.each(withResin)('the night of the shop in $name', (file) => {
  test('is taken over, and every cure rests on it', async () => {
    for (const night of ['16 °C', '60 °F']) {
      const { parameter, clocks } = await nightsOf({ ...of(file), shop: withNight(night) });
      expect(parameter?.from).toBe('shop');
      const held = Number.parseFloat(String(parameter?.texts['nightTemperature']));
      expect(held).toBeCloseTo(night === '16 °C' ? 16 : (60 - 32) / 1.8, 6);
      expect(clocks).toEqual([parameter?.texts['nightTemperature']]);
    }
  });

  test('is refused where it is colder than the method allows, in the units of the reader, with what to do', async () => {
    const answered = await answerMethod({ ...of(file), shop: withNight('14 °C') }, memory);
    if (answered.ok) throw new Error('It was answered.');
    expect(answered.beyond).toEqual({
      shop: 'Lakeside community workshop',
      held: { nightTemperature: '14 °C' },
    });
    const [problem, ...others] = answered.problems;
    expect(others).toEqual([]);
    expect(problem?.field).toBe('parameters.nightTemperature.default');
    expect(inReaderUnits(problem?.message ?? '', { system: 'inch', inches: 'sixteenths' })).toBe(
      'Shop temperature by night, from the shop record: 57.2 °F is colder than the method allows, 59 °F to 68 °F, and its times do not hold there. ' +
        'Keep it at 59 °F or more for as long as you follow the method, and give here what you keep it at. Where you cannot, do not begin.',
    );
  });

  test('gives way to what the reader keeps it at', async () => {
    const { parameter, clocks } = await nightsOf({
      ...of(file),
      shop: withNight('14 °C'),
      set: { nightTemperature: '15 °C' },
    });
    expect(parameter?.from).toBe('reader');
    expect(clocks).toEqual(['15 °C']);
  });

  test('does not keep a site from being built: its page is then the method’s own case', async () => {
    const id = file.name.replace(/\.yaml$/, '');
    const { page } = await methodEntry(
      { id, file: `methods/${file.name}`, text: file.text },
      withNight('14 °C'),
      memory,
    );
    expect(page.shop).toBeUndefined();
  });
});
