import { describe, expect, test } from 'vitest';
import { changed, inside, problemsOf, smallMethod } from './base.ts';

type Data = Parameters<Parameters<typeof changed>[0]>[0];

/** The sizes of the piece of the first step, which has none. */
function piece(data: Data): Data {
  const sizes: Data = {};
  inside(data, 'steps', 'read').piece = sizes;
  return sizes;
}

/** The small method with a calculation more. */
const asking = (use: string, inputs: Record<string, unknown>) =>
  changed((data) => {
    inside(data, 'steps', 'give').calculations = { more: { use, with: inputs } };
  });

describe('a number without a unit, where several may be meant', () => {
  test.each([
    [
      'a temperature of the cure clock',
      'cure-clock',
      'dayTemperature',
      40,
      '“40” has no unit, and may be °C or °F. Write 40 °C, or 104 °F,',
    ],
    [
      'the same as a text',
      'cure-clock',
      'dayTemperature',
      '40',
      '“40” has no unit, and may be °C or °F. Write 40 °C, or 104 °F,',
    ],
    [
      'the air of a heated house',
      'seasonal-movement',
      'heatTo',
      20,
      '“20” has no unit, and may be °C or °F. Write 20 °C, or 68 °F,',
    ],
    [
      'how far resin stands out',
      'pour-heat',
      'proud',
      1,
      '“1” has no unit, and may be mm or in. Write 1 mm, or 0.03937 in,',
    ],
    [
      'heights as a list of lists',
      'flatten-plan',
      'grid',
      [
        [3, 1],
        [2, 0],
      ],
      'numbers without a unit. Write mm: 3, 1; 2, 0',
    ],
    [
      'a board of a list',
      'board-yield',
      'boards',
      [{ name: 'A', length: 2400, width: '240 mm' }],
      'numbers without a unit. Write A, 2400 mm, 240 mm',
    ],
    [
      'an entry of a data sheet',
      'cure-clock',
      'resin',
      { name: 'Mine', greatestDepth: 20 },
      'Greatest depth of one pour of the data sheet: “20” has no unit',
    ],
  ])('%s is refused where it stands, with a way out', async (_, use, input, value, said) => {
    const text = asking(use, { [input]: value });
    const [problem = ''] = (await problemsOf(text)).filter((each) => each.includes('more'));
    const at = text.split('\n').findLastIndex((line) => line.trim().startsWith(`${input}:`)) + 1;
    expect(problem).toMatch(
      new RegExp(`^(${at}|${at + 1}):\\d+ steps\\.give\\.calculations\\.more\\.with\\.${input}: `),
    );
    expect(problem).toContain(said);
  });

  test.each([
    [
      'the limit of a tool',
      'tools.planer.limits.width',
      (data: Data) => ({ at: inside(data, 'tools', 'planer', 'limits'), key: 'width' }),
      330,
      'Thickness planer, width: “330” has no unit, and may be mm or in. Write 330 mm',
    ],
    [
      'the size of a piece',
      'steps.read.piece.length',
      (data: Data) => ({ at: piece(data), key: 'length' }),
      300,
      'The length of the piece: “300” has no unit',
    ],
    [
      'a measure of an outline',
      'parameters.outline.default.length',
      (data: Data) => ({ at: inside(data, 'parameters', 'outline', 'default'), key: 'length' }),
      400,
      'Outline, length: “400” has no unit',
    ],
    [
      'the least of a parameter',
      'parameters.day.least',
      (data: Data) => ({ at: inside(data, 'parameters', 'day'), key: 'least' }),
      10,
      'Shop by day: “10” has no unit, and may be °C or °F. Write 10 °C, or 50 °F, if',
    ],
    [
      'a default beside a range',
      'parameters.day.default',
      (data: Data) => ({ at: inside(data, 'parameters', 'day'), key: 'default' }),
      20,
      'Shop by day: “20” has no unit, and may be °C or °F. Write 20 °C, or 68 °F, if',
    ],
  ])('so is %s', async (_, field, place, value, said) => {
    const text = changed((data) => {
      const { at, key } = place(data);
      at[key] = value;
    });
    const problems = await problemsOf(text);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toContain(` ${field}: ${said}`);
  });

  test('the way out begins with the unit in which the range is written', async () => {
    const text = changed((data) =>
      Object.assign(inside(data, 'parameters', 'day'), { default: 70, least: '50 °F', most: '86 °F' }),
    );
    expect((await problemsOf(text)).join()).toContain('Write 70 °F, or 21.11 °C, if that is meant.');
  });

  test('a parameter that is bare throughout is told of once, however many ask it for a temperature', async () => {
    const text = changed((data) => {
      Object.assign(inside(data, 'parameters', 'day'), { default: 20, least: 10, most: 30 });
      const from = () => ({ from: '/parameters/day' });
      inside(data, 'steps', 'give').calculations = {
        one: {
          use: 'cure-clock',
          with: { resin: 'slow-casting-2-1', dayTemperature: from(), shopTemperature: from() },
        },
      };
    });
    const problems = await problemsOf(text);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toContain('parameters.day.default: Shop by day: “20” has no unit');
  });

  test('a list that a parameter holds is judged by the field that refers to it', async () => {
    const text = changed((data) => {
      inside(data, 'parameters').heights = { kind: 'readings', label: 'Heights', default: '3, 1; 2, 0' };
      inside(data, 'steps', 'give').calculations = {
        flat: { use: 'flatten-plan', with: { grid: { from: '/parameters/heights' } } },
      };
    });
    expect((await problemsOf(text)).join()).toContain(
      'parameters.heights.default: Heights: “3, 1; 2, 0” has numbers without a unit',
    );
    expect((await problemsOf(text.replace('3, 1; 2, 0', 'mm: 3, 1; 2, 0'))).join()).not.toContain('without a unit');
  });

  test('what is set on the command line is judged as what stands in the file', async () => {
    expect((await problemsOf(smallMethod, { set: { 'outline.length': '420' } })).join()).toContain(
      'length: “420” has no unit',
    );
  });

  test('a count, a ratio, a percentage, a speed of turning and nothing at all need none', async () => {
    const text = changed((data) => {
      inside(data, 'steps', 'read', 'calculations', 'change', 'with').moistureTo = 6;
      inside(data, 'steps', 'oil', 'calculations', 'coats', 'with').boards = 2;
      inside(data, 'steps', 'oil', 'calculations', 'coats', 'with').cornerRadius = 0;
      inside(data, 'tools', 'planer', 'limits').mostTurns = 6000;
    });
    expect(await problemsOf(text)).toEqual([]);
  });

  test('0 is a temperature of two scales', async () => {
    expect((await problemsOf(asking('cure-clock', { dayTemperature: 0 }))).join()).toContain('“0” has no unit');
  });
});

describe('what only follows from a parameter at fault', () => {
  test('is not told while its cause stands', async () => {
    const text = changed((data) => {
      inside(data, 'parameters', 'day').default = '20 mm';
      inside(data, 'steps', 'give').calculations = {
        one: { use: 'cure-clock', with: { resin: 'slow-casting-2-1', dayTemperature: { from: '/parameters/day' } } },
      };
    });
    const problems = await problemsOf(text);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toContain('parameters.day.default: Shop by day: 20 mm and the range');
  });

  test('what is wrong besides is told', async () => {
    const text = changed((data) => {
      inside(data, 'parameters', 'day').default = 20;
      inside(data, 'steps', 'read', 'calculations', 'change', 'with').width = { from: '/parameters/from' };
    });
    expect(await problemsOf(text)).toHaveLength(2);
  });
});
