import fc from 'fast-check';
import { beforeAll, expect, test } from 'vitest';
import { documentsAt, tablesAt } from '../../../src/method/case/seal-coat.ts';
import { workClass } from '../../../src/method/class/class.ts';
import { type ClassPacket, classPacket } from '../../../src/method/class/packet.ts';
import { classText, readClass } from '../../../src/method/class/record.ts';
import type { ClassPage } from '../../../src/method/class/types.ts';
import { weeklySessions } from '../../../src/method/class/weekly.ts';
import { answerNumbers, MethodMemory } from '../../../src/method/page/answer.ts';
import { exactTime } from '../../../src/method/page/time-words.ts';
import { amount } from '../../../src/model/quantity/index.ts';
import { classOf, methodText, sixEvenings, springPlaces } from './files.ts';

const memo = new Map<string, unknown>();
const made = '2027-02-01';
const address = 'https://kerf.example/methods/class-of-twelve';

let all: ClassPacket;
let alone: ClassPacket;
let page: ClassPage;

beforeAll(async () => {
  const question = classOf('class-of-twelve', {
    places: springPlaces(),
    shop: true,
    sessions: `2027-01-12 09:00-16:00\n${sixEvenings}`,
  });
  const { answer, state } = await workClass(question, undefined, memo);
  if (!answer.ok || !state) throw new Error('The class is not worked out.');
  page = answer.page;
  all = await classPacket(state, page, { made, address });
  alone = await classPacket(state, page, { made, address, place: '7' });
}, 60_000);

const of = (packet: ClassPacket, sheet: string) => packet.documents.filter((document) => document.sheet === sheet);

test('a class prints one sheet for its teacher, one a mix, one a student, each template once, and cards for each place', () => {
  expect(of(all, 'teacher')).toHaveLength(1);
  expect(of(all, 'mixing-sheet')).toHaveLength(page.mixes.length);
  const students = of(all, 'student');
  expect(students.map(({ blocks }) => blocks[0])).toEqual(
    springPlaces().map(({ id, name }) => ({ kind: 'text', lead: 'Made for', text: `Place ${id}, ${name}` })),
  );
  // 420 × 220, 400 × 200, 16 1/2 × 8 1/2 in, 460 × 220 and 400 × 220; and place 5, whose shorter channel asks for another window.
  expect(of(all, 'template')).toHaveLength(6);
  expect(of(all, 'label').map(({ cards }) => cards?.length)).toEqual([12]);
  expect(of(all, 'card').map(({ cards }) => cards?.length)).toEqual([12]);
  expect(new Set(all.documents.map(({ id }) => id)).size).toBe(all.documents.length);
  expect(all.without).toEqual([]);
});

test('what is mixed to seal is headed so, and what is poured as a fill', () => {
  const headings = (calculation: string) =>
    page.mixes
      .filter((mix) => mix.calculation === calculation)
      .flatMap(({ documents }) => documents.flatMap(({ blocks }) => blocks))
      .flatMap((block) => (block.kind === 'table' ? [block.table.title] : []));
  expect(new Set(headings('seal-dose'))).toEqual(new Set(['Seal coat']));
  expect(new Set(headings('dose'))).toEqual(new Set(['Fill: colour all of A before any cup', 'Fill']));
  const step = { act: { id: 'seal' } } as Parameters<typeof tablesAt>[0];
  const rows = page.mixes.filter(({ calculation }) => calculation === 'seal-dose').flatMap(({ tables }) => tables);
  expect(JSON.stringify(rows)).not.toContain('"Fill"');
  expect([tablesAt(step, undefined), documentsAt(step, undefined)]).toEqual([[], []]);
});

test('a student’s sheet has its own numbers, its own turns, and says what is mixed with others', () => {
  const sheet = JSON.stringify(of(all, 'student')[6]);
  expect(sheet.includes('419.1 mm')).toBe(true);
  expect(sheet.includes('"1 × ')).toBe(true);
  expect(sheet.includes('amber')).toBe(true);
  expect(/mixed at once for places( \d+,?){7} and \d+/.test(sheet)).toBe(true);
  expect(sheet.includes('Tue 2027-02-09')).toBe(true);
  expect(sheet.includes('Do not begin by this sheet')).toBe(false);
  expect(JSON.stringify(of(all, 'student')[0])).not.toContain('419.1 mm');
});

test('no student’s sheet says what to buy or mix for one: the teacher does that, and the share of the piece stays', () => {
  for (const { blocks } of of(all, 'student')) {
    const steps = blocks.flatMap((block) =>
      block.kind === 'columns' ? block.blocks.flatMap((each) => (each.kind === 'step' ? [each] : [])) : [],
    );
    const text = JSON.stringify(blocks);
    expect(text).not.toMatch(/Mix ⟦|Buy \d|Buy ⟦| of paste|⟧ of A and/);
    const own = (title: RegExp) => JSON.stringify(steps.find((step) => title.test(step.title)));
    expect(own(/^Fetch the wood/)).toContain('The teacher does this before the class begins');
    expect(own(/^The teacher weighs and mixes/)).toContain('The teacher does this, for all at once');
    expect(own(/^The teacher weighs and mixes/)).toMatch(/Into your piece go ⟦[23]\d\.\d+ g/);
    // What is done to the channel is read by whoever watches; how much is mixed for it is not.
    expect(own(/^The teacher seals/)).toContain('ends of grain twice');
    const used = JSON.stringify(blocks.find((block) => block.kind === 'text' && block.lead === 'Used up'));
    expect(used).not.toMatch(/Casting resin|[Hh]ardener|[Pp]aste|[Mm]aple/);
  }
});

test('a student reads the time in which the cups of the class must be empty, not that of a cup for one piece', () => {
  const mix = page.mixes.find(({ places, figures }) => places.includes('7') && figures['fillVolume']);
  const time = mix?.figures['emptyWithin']?.value;
  expect(time).toBeGreaterThan(0);
  const sheet = JSON.stringify(of(all, 'student')[6]);
  expect(sheet).toContain(`${amount(time as number, 's', 2)} after the first drop`);
  expect(/Begin within ([^.]*?) after “The teacher weighs and mixes”/.exec(sheet)?.[1]).toBe(
    exactTime((time as number) / 60),
  );
});

test('a student’s sheet is for one: its address asks for one piece, which the method’s page works out, and what is ready is one student’s', async () => {
  const texts = of(all, 'student').map(({ blocks }) => JSON.stringify(blocks));
  for (const text of texts) {
    const query = text.match(/class-of-twelve\?([^"]+)"/)?.[1] ?? '';
    expect(new URLSearchParams(query).get('pieces')).toBe('1');
  }
  const lead = (packet: ClassPacket, sheet: string, word: string) =>
    of(packet, sheet).map(({ blocks }) => blocks.find((block) => block.kind === 'text' && block.lead === word));
  for (const ready of lead(all, 'student', 'Tools')) expect(JSON.stringify(ready)).not.toMatch(/\d ×/);
  for (const used of lead(all, 'student', 'Used up')) {
    // Two pairs for each, beside the eight that the teacher and who helps wear.
    expect(JSON.stringify(used)).toMatch(/gloves with a long cuff, pairs: ⟦2 \{count\}/);
    expect(JSON.stringify(used)).toContain('Cotton cloths');
  }
  const { page: own } = (await answerNumbers(
    { text: methodText('class-of-twelve'), file: 'x', set: {}, pieces: 1 },
    new MethodMemory(),
  )) as Extract<Awaited<ReturnType<typeof answerNumbers>>, { ok: true }>;
  expect(own.makes.pieces).toBe(1);
  expect(own.findings.filter(({ level }) => level === 'stop')).toEqual([]);
});

test('how many of each tool stand ready for all is on the teacher’s sheet', () => {
  const [sheet] = of(all, 'teacher');
  const ready = sheet?.blocks.find((block) => block.kind === 'text' && block.lead === 'Tools');
  expect(JSON.stringify(ready)).toMatch(/4 × Plunge routers/);
  expect(JSON.stringify(ready)).toMatch(/12 × Apron/);
});

test('the teacher’s sheet has every place, turn, mix and line of the order', () => {
  const sheet = JSON.stringify(of(all, 'teacher'));
  for (const { id, name } of springPlaces()) expect(sheet).toContain(`["${id}","${name}"`);
  for (const { what } of page.order.lines) expect(sheet).toContain(what);
  for (const { from } of page.sessions) expect(sheet).toContain(from);
  for (const mix of page.mixes) expect(sheet).toContain(mix.verdict?.text);
});

test('a mixing sheet calls its pieces by places and names, and never by a number that another place has', () => {
  const moss = of(all, 'mixing-sheet').find(({ title }) => title.includes('moss green'));
  const text = JSON.stringify(moss?.blocks);
  const name = (id: string) => `place ${id} (${springPlaces().find((place) => place.id === id)?.name})`;
  // Places 2 and 8 have the method’s channel; that of 5 is 220 × 16 mm, that of 12 is 240 mm long and so holds more.
  const shares = [`${name('2')} and ${name('8')}`, name('5'), name('12')].map((whose) =>
    Number(text.split(`${whose}: ⟦`)[1]?.match(/^[\d.]+/)?.[0]),
  );
  const [usual = Number.NaN, fifth = Number.NaN, twelfth = Number.NaN] = shares;
  expect(usual).toBeGreaterThan(twelfth);
  expect(twelfth).toBeGreaterThan(fifth);
  expect(text).not.toMatch(/pieces? \d/);
});

test('the cups of a colour fill the places that have it: with five places in two colours no cup of amber names a place of moss green', async () => {
  const places = ['amber', 'moss green', 'amber', 'moss green', 'amber'].map((colour, at) => ({
    id: String(at + 1),
    ...(at === 2 ? { name: 'A. B.' } : {}),
    set: { colour: `${colour}, 100 %, paste 2 %` },
  }));
  const { answer, state } = await workClass(classOf('class-of-twelve', { places, shop: true }), undefined, memo);
  if (!answer.ok || !state) throw new Error('The class is not worked out.');
  const packet = await classPacket(state, answer.page, { made });
  const told = (colour: string) =>
    of(packet, 'mixing-sheet')
      .filter(({ title }) => title.includes(colour))
      .map(({ blocks }) => {
        const tables = blocks.flatMap((block) => (block.kind === 'table' ? [block.table] : []));
        const fills = tables.flatMap(({ columns, rows }) => {
          const at = columns.findIndex(({ id }) => id === 'pieces');
          return at < 0 ? [] : [columns[at]?.label, ...rows.map((row) => row[at])];
        });
        return [...new Set(fills.join(' ').match(/place \d( \(.*?\))?|pieces? \d|^\d|^Fills pieces/g))].sort();
      });
  expect(told('amber')).toEqual([['place 1', 'place 3 (A. B.)', 'place 5']]);
  expect(told('moss green')).toEqual([['place 2', 'place 4']]);
  expect(JSON.stringify(of(packet, 'mixing-sheet'))).not.toMatch(/pieces? \d/);
});

test('one place prints alone, with the mixes that it has a share of', () => {
  expect(of(alone, 'student')).toEqual(of(all, 'student').filter(({ id }) => id === 'student-7'));
  expect(of(alone, 'teacher')).toEqual([]);
  expect(of(alone, 'template')).toHaveLength(1);
  expect(of(alone, 'mixing-sheet')).toHaveLength(2);
  expect(of(alone, 'card').map(({ cards }) => cards?.length)).toEqual([1]);
});

test('a place that cannot be worked out has no sheet, and the packet says so', async () => {
  const places = [
    { id: '1', set: {} },
    { id: '2', set: { width: 'wide' } },
  ];
  const { answer, state } = await workClass(classOf('first-tray', { places }), undefined, memo);
  if (!answer.ok || !state) throw new Error('The class is not worked out.');
  const packet = await classPacket(state, answer.page, { made });
  expect(packet.without).toEqual(['2']);
  expect(of(packet, 'student')).toHaveLength(1);
});

test('each place of any few has the figures that the method gives for it alone', async () => {
  const memory = new MethodMemory();
  const place = fc.record(
    {
      wood: fc.constantFrom('sugar-maple', 'black cherry', 'american-beech'),
      length: fc.integer({ min: 360, max: 420 }).map((length) => `${length} mm`),
      width: fc.constantFrom('200 mm', '8 in', '230 mm'),
    },
    { requiredKeys: [] },
  );
  await fc.assert(
    fc.asyncProperty(fc.array(place, { minLength: 2, maxLength: 3 }), async (sets) => {
      const places = sets.map((set, at) => ({ id: String(at + 1), set: { ...set } as Record<string, string> }));
      const { state } = await workClass(classOf('first-tray', { places }), undefined, memo);
      for (const { set, worked } of state?.one.places ?? []) {
        const single = await answerNumbers({ text: methodText('first-tray'), file: 'x', set, pieces: 1 }, memory);
        if (!single.ok) throw new Error('It is not worked out.');
        const figures = Object.fromEntries(
          single.page.steps.flatMap(({ calculations }) => calculations.map((each) => [each.name, each.figures])),
        );
        expect(Object.keys(figures).length).toBeGreaterThan(3);
        for (const [name, own] of Object.entries(figures))
          expect([name, worked.calculations[name]?.result?.figures ?? {}]).toEqual([name, own]);
      }
      expect(state?.one.places).toHaveLength(places.length);
    }),
    { numRuns: 3 },
  );
});

test('a class goes through its file unchanged, and a spoilt file is refused with a place', () => {
  const { record } = classOf('class-of-twelve', { places: springPlaces(), shop: true, sessions: sixEvenings });
  const text = classText(record);
  expect(readClass(text, 'class.json')).toEqual({ ok: true, record });
  expect(readClass(`\uFEFF${text}`, 'class.json')).toEqual({ ok: true, record });
  for (const spoilt of ['', '[]', text.slice(0, 200), text.replace('"class": 1', '"class": 2'), '{"class": 1}']) {
    const read = readClass(spoilt, 'class.json');
    expect(read.ok).toBe(false);
    if (!read.ok) expect(read.problems[0]).toMatchObject({ file: 'class.json', line: expect.any(Number) });
  }
});

test('the greatest method and the greatest shop record still make a file that can be read again', () => {
  const { record } = classOf('class-of-twelve', { places: springPlaces() });
  const long = `${'x'.repeat(63)}\n`.repeat(2048);
  const greatest = {
    ...record,
    method: { file: 'long.yaml', text: long },
    common: { ...record.common, shop: { file: 'shop.yaml', text: long } },
  };
  expect(readClass(classText(greatest), 'class.json')).toEqual({ ok: true, record: greatest });
});

test('a weekly rule writes a line for each week, over the end of a month and of a year', () => {
  expect(weeklySessions({ first: '2026-12-22', times: '18:30 to 21:00', weeks: '3' })).toEqual({
    ok: true,
    lines: ['2026-12-22 18:30-21:00', '2026-12-29 18:30-21:00', '2027-01-05 18:30-21:00'],
  });
});

test.each([
  ['first', { first: '2027-02-30', times: '18:30-21:00', weeks: '6' }],
  ['times', { first: '2027-02-09', times: '21:00-18:30', weeks: '6' }],
  ['times', { first: '2027-02-09', times: 'evening', weeks: '6' }],
  ['weeks', { first: '2027-02-09', times: '18:30-21:00', weeks: '0' }],
  ['weeks', { first: '2027-02-09', times: '18:30-21:00', weeks: '6.5' }],
])('a weekly rule with a wrong %s says what is allowed', (field, rule) => {
  expect(weeklySessions(rule)).toMatchObject({
    ok: false,
    faults: [{ field, message: expect.stringContaining('such as') }],
  });
});
