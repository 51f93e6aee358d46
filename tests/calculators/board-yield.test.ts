import { describe, expect, test } from 'vitest';
import { boardYieldCalculator } from '../../src/calculators/board-yield/calculator.ts';
import { answer } from '../../src/calculators/kit/answer.ts';
import { documentText } from '../../src/calculators/kit/document-text.ts';
import type { Result } from '../../src/model/evidence/index.ts';
import { defaultUnits, inReaderUnits } from '../../src/model/quantity/index.ts';

const run = (raw: Record<string, unknown>) =>
  answer(boardYieldCalculator, { kerf: '3 mm', endTrim: '0 mm', snipe: '0 mm', ...raw });
const calc = (raw: Record<string, unknown>): Result => {
  const outcome = run(raw);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
  return outcome.value.result;
};
const rows = (result: Result) => result.tables?.[0]?.rows ?? [];

test('a knot parts a board: two blanks before it, one after', () => {
  const result = calc({ boards: 'ash, 1500 mm, 250 mm, knot 920 to 1000 mm', blanks: 'tray, 450 mm, 240 mm, 4' });
  expect(rows(result)).toEqual([
    ['ash', 1, 'tray', 0, 450, 0, 240],
    ['ash', 2, 'tray', 453, 903, 0, 240],
    ['ash', 3, 'tray', 1000, 1450, 0, 240],
  ]);
  expect(result.figures.blanksMissing).toMatchObject({ value: 1, note: '1 × tray.' });
  expect(result.verdict).toEqual({
    level: 'stop',
    text: '3 of 4 blanks come from the board; 1 × tray will not fit in this order of cuts: another board is needed.',
  });
});

test('two blanks side by side come from one wide board', () => {
  const result = calc({ boards: 'A, 1000 mm, 300 mm', blanks: 'x, 400 mm, 140 mm, 4' });
  expect(result.verdict).toEqual({ level: 'good', text: 'All 4 blanks come from the board.' });
  expect(rows(result).slice(0, 4)).toEqual([
    ['A', 1, 'x', 0, 400, 0, 140],
    ['A', 1, 'x', 0, 400, 143, 283],
    ['A', 2, 'x', 403, 803, 0, 140],
    ['A', 2, 'x', 403, 803, 143, 283],
  ]);
});

test('counts are counted things, and what is used up is the boards cut into, by name', () => {
  const result = calc({
    boards: 'A, 1000 mm, 300 mm; 900 mm, 300 mm; C, 1000 mm, 100 mm',
    blanks: 'x, 400 mm, 140 mm, 8',
  });
  expect(result.figures.blanksCut).toMatchObject({ value: 8, unit: '{count}' });
  expect(result.uses?.map(({ what, amount, unit }) => [inReaderUnits(what, defaultUnits), amount, unit])).toEqual([
    ['Board A, 1000 mm × 300 mm', 1, '{count}'],
    ['Board 2, 900 mm × 300 mm', 1, '{count}'],
  ]);
});

describe('the list to take to the saw', () => {
  const raw = { boards: 'A, 1000 mm, 300 mm', blanks: 'x, 400 mm, 140 mm, 4', planed: 'blanks' };

  test('says the order of cuts and where to measure from, bears every caution, and has a box for each piece', () => {
    const result = calc(raw);
    const [list] = result.documents ?? [];
    expect(list).toMatchObject({ id: 'cut-list', form: 'sheet' });
    const texts = list?.blocks.flatMap((block) =>
      block.kind === 'text' ? [inReaderUnits(block.text, defaultUnits)] : [],
    );
    expect(texts).toEqual([
      'All 4 blanks come from the board.',
      'Crosscut first, then rip. Along is measured from the left end of a board, across from its lower edge; each saw cut takes 3 mm.',
    ]);
    const warnings = list?.blocks.flatMap((block) => (block.kind === 'warning' ? [block.text] : []));
    expect(warnings).toEqual(result.cautions.map(({ text }) => text));
    expect(warnings?.[0]).toMatch(/^Plane the boards before you cut them up/);
    const table = list?.blocks.find((block) => block.kind === 'table');
    expect(table).toMatchObject({ ticks: ['piece'], table: { rows: rows(result) } });
  });

  test('has every place to the tenth of a millimetre and no closer', () => {
    const result = calc({ ...raw, blanks: 'x, 407.95 mm, 141.37 mm, 4' });
    const places = rows(result).flatMap((row) => row.filter((cell) => typeof cell === 'number' && cell > 4));
    expect(places.length).toBeGreaterThan(8);
    for (const place of places) expect(Number(Number(place).toFixed(1))).toBe(place);
    expect(documentText(result.documents?.[0] as never, defaultUnits)).not.toMatch(/\d\.\d\d/);
  });

  test('says the scale of its drawing where it is printed, and claims none on the screen', () => {
    const result = calc(raw);
    const [list] = result.documents ?? [];
    const drawn = list?.blocks.find((block) => block.kind === 'drawing');
    // 1000 mm of board and the room for its name within 178 mm of paper.
    expect(drawn).toMatchObject({ scale: 8 });
    expect(documentText(list as never, defaultUnits)).toContain('Boards with their cuts: Drawn at 1 : 8.');
    expect(result.drawings?.[0]?.description).not.toContain('to scale');
  });

  test('says that it draws the first boards where there are many', () => {
    const many = Array.from({ length: 14 }, (_, at) => `b${at}, 500 mm, 150 mm`).join('; ');
    const list = calc({ boards: many, blanks: 'x, 400 mm, 140 mm, 14', planed: 'blanks' }).documents?.[0];
    expect(documentText(list as never, defaultUnits)).toContain('The first 12 boards are drawn.');
  });

  test('is not there where nothing is cut', () => {
    expect(calc({ ...raw, boards: 'A, 100 mm, 100 mm' }).documents).toBeUndefined();
  });
});

test('a list of objects gives the answer of its text', () => {
  const text = calc({ boards: 'A, 1000 mm, 300 mm, knot 200 to 250 mm', blanks: 'x, 400 mm, 140 mm, 4' });
  const objects = calc({
    boards: [{ name: 'A', length: 1000, width: '300 mm', defects: ['knot 200 to 250 mm'] }],
    blanks: [{ name: 'x', length: 400, width: 140, count: 4 }],
  });
  expect(objects).toEqual(text);
});

test('a rack that does better the other way round says so', () => {
  const raw = { boards: 'A, 1000 mm, 203 mm', blanks: 'long, 497 mm, 100 mm, 2; short, 331 mm, 100 mm, 3' };
  const crosscut = calc(raw);
  expect(crosscut.verdict?.level).toBe('stop');
  expect(crosscut.cautions.find(({ id }) => id === 'other-cut-first')?.text).toMatch(
    /^Ripped first, this rack gives \d blanks? more\.$/,
  );
  expect(calc({ ...raw, first: 'rip' }).verdict?.level).toBe('good');
});

test('a blank larger than every board is named with its size', () => {
  const { verdict } = calc({ boards: 'A, 1000 mm, 200 mm', blanks: 'wide, 400 mm, 240 mm, 1' });
  expect(verdict?.level).toBe('stop');
  expect(inReaderUnits(verdict?.text ?? '', defaultUnits)).toBe(
    'The blank does not fit on this rack. No board is as large as wide, 400 mm × 240 mm.',
  );
});

test('a place off the board is refused, along and across', () => {
  for (const [boards, words] of [
    ['A, 1000 mm, 300 mm, knot 1200 to 1500 mm', 'Board 1: knot reaches to 1500 mm, and the board is 1000 mm long'],
    [
      'A, 1000 mm, 300 mm, knot 200 to 250 mm across 280 to 320 mm',
      'Board 1: knot reaches to 320 mm, and the board is 300 mm wide',
    ],
  ]) {
    const outcome = run({ boards, blanks: 'x, 400 mm, 140 mm, 4' });
    expect(outcome.ok ? '' : inReaderUnits(outcome.errors[0]?.message ?? '', defaultUnits)).toContain(words);
  }
});

describe('ways to write a board', () => {
  const blanks = '100 mm, 100 mm';
  const defectOf = (boards: unknown) => {
    const outcome = run({ boards, blanks });
    if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
    return outcome.value.inputs.boards[0];
  };
  const knot = { from: 700, to: 780, kind: 'knot' };
  test.each([
    ['oak, 2400 mm, 200 mm, knot 700 to 780 mm'],
    ['oak, 2.4 m, 20 cm, knot 700 mm to 780 mm'],
    ['oak, 2400, 200, knot 700-780'],
    ['oak, 2400, 200, knot 700 – 780 mm'],
    ['oak, 2400, 200, knot 700..780'],
    [[{ name: 'oak', length: 2400, width: '200 mm', defects: [{ from: 700, to: '780 mm', kind: 'knot' }] }]],
  ])('%j', (boards) => {
    expect(defectOf(boards)).toEqual({ name: 'oak', length: 2400, width: 200, defects: [knot] });
  });
  test('a place across as well as along, as words and as an object', () => {
    const across = { ...knot, acrossFrom: 20, acrossTo: 60 };
    expect(defectOf('oak, 2400, 200, knot 700 to 780 mm across 20 to 60 mm')?.defects).toEqual([across]);
    expect(defectOf([{ length: 2400, width: 200, defects: [across] }])?.defects).toEqual([across]);
  });
  test('inches with fractions, and a name left out', () => {
    const board = defectOf('8 ft, 10 1/4 in, nail line 27 1/2 in to 30 3/4 in');
    expect(board).toMatchObject({ name: 'board 1', length: 2438.4, width: 260.35 });
    expect(board?.defects[0]).toEqual({ from: 698.5, to: 781.05, kind: 'nail line' });
  });
});

test('an unproved search says so, and the answer never varies', () => {
  const boards = Array.from({ length: 12 }, (_, at) => `b${at}, ${1500 + 37 * at} mm, 250 mm`).join('\n');
  const blanks = Array.from({ length: 20 }, (_, at) => `t${at}, ${301 + 23 * at} mm, 200 mm`).join('\n');
  const result = calc({ boards, blanks });
  expect(result.evidence[0]?.text).toMatch(/ruled out|board by board/);
  expect(calc({ boards, blanks })).toEqual(result);
});

describe('refusals name what was read', () => {
  test.each([
    [{ boards: 'ash, 2400 mm', blanks: '450 mm, 240 mm' }, /^Board 1, width: /],
    [{ boards: 'ash, 2400 mm, 250 mm, knot at 700', blanks: '450 mm, 240 mm' }, /“knot at 700” is not a span/],
    [
      { boards: 'ash, 2400 mm, 250 mm, knot 700 to 780 mm across the board', blanks: '450 mm, 240 mm' },
      /is not a span/,
    ],
    [{ boards: '2400, 250', blanks: 'tray, 450 mm, 240 mm, some' }, /“some” is not a count/],
    [{ boards: '2400, 250', blanks: 'tray, 450 mm, 240 mm, 0' }, /not a count from 1 to 400/],
    [
      { boards: 'walnut; 60 in; 7,5 in', blanks: '450, 240' },
      /“walnut; 60 in; 7,5 in” has semicolons between the parts of a board.*Put commas between them: walnut, 60 in, 7,5 in\.$/,
    ],
    [
      { boards: '2400, 250', blanks: 'tray; 450; 240; 2\npaddle, 600, 200' },
      /: tray, 450, 240, 2; paddle, 600, 200\.$/,
    ],
    [{ boards: ';', blanks: '450, 240' }, /0 boards were read/],
    [{ boards: 'x, 1e9 mm, 250 mm', blanks: '450, 240' }, /what is taken is ⟦1 mm 3⟧ to ⟦20000 mm 3⟧/],
  ])('%j', (raw, message) => {
    const outcome = run(raw);
    expect(outcome.ok ? '' : outcome.errors[0]?.message).toMatch(message);
  });
});
