import jsQR from 'jsqr';
import { beforeAll, describe, expect, test } from 'vitest';
import { documentText } from '../../../src/calculators/kit/document-text.ts';
import { packetHtml } from '../../../src/command/sheet-html.ts';
import { caseQuery, methodAddress, packetOf, sheetsAddress } from '../../../src/method/documents/index.ts';
import { countWords, headOf, momentText, numbersText, shortName } from '../../../src/method/documents/words.ts';
import type { MethodPage, ShownBlock, ShownMoment, ShownPart } from '../../../src/method/page/types.ts';
import type { AddressCode, PaperBlock } from '../../../src/model/evidence/index.ts';
import { defaultUnits, inReaderUnits } from '../../../src/model/quantity/index.ts';
import { pageOf } from './pages.ts';

const address = 'https://boards.example/methods/first-tray?pieces=6&start=2027-01-12&outline.length=16+in';
const options = { paper: 'a4', made: '2027-01-10', address } as const;
const inches = { ...defaultUnits, system: 'inch' } as const;

const shown = (text: string) => inReaderUnits(text, defaultUnits).replace(/\s+/g, ' ').trim();
const textOf = (page: MethodPage, sheet: string, units = defaultUnits) => {
  const document = packetOf(page, options).documents.find((each) => each.sheet === sheet);
  if (!document) throw new Error(`no ${sheet}`);
  return documentText(document, units).replace(/\s+/g, ' ');
};

function valuesIn(blocks: readonly ShownBlock[]): string[] {
  const inParts = (parts: readonly ShownPart[]): string[] =>
    parts.flatMap((part) => (part.kind === 'value' ? [part.text] : 'parts' in part ? inParts(part.parts) : []));
  return blocks.flatMap((block) => (block.kind === 'paragraph' ? inParts(block.parts) : block.items.flatMap(valuesIn)));
}

const pages: Record<string, MethodPage> = {};
const page = (id: string) => pages[id] as MethodPage;
const ids = ['first-tray', 'panel-moss-channel'];
beforeAll(async () => {
  for (const id of ids) pages[id] = await pageOf(id, { pieces: 6 });
}, 60_000);

describe.each(ids)('the student’s sheet of %s', (id) => {
  test('has every danger and every warning in full, and names at each step those that it carries', () => {
    const text = textOf(page(id), 'student');
    const cautions = page(id).steps.flatMap((step) => step.cautions.filter(({ level }) => level !== 'note'));
    expect(cautions.length).toBeGreaterThan(20);
    for (const caution of cautions) expect(text).toContain(shown(caution.text));
    const blocks = stepsOf(page(id));
    for (const [at, step] of page(id).steps.entries()) {
      const dangers = step.cautions.filter(({ level }) => level === 'danger');
      const own = JSON.stringify(blocks[at]);
      for (const { text: danger } of dangers) expect(own).toContain(JSON.stringify(headOf(danger)).slice(1, -1));
    }
  });

  test('has each danger once at its head, by number and with its steps', () => {
    const { blocks } = packetOf(page(id), options).documents[0] as { blocks: readonly PaperBlock[] };
    const columns = blocks.filter((block) => block.kind === 'columns');
    const lines = (columns[0] as Extract<PaperBlock, { kind: 'columns' }>).blocks as readonly {
      lead: string;
      text: string;
    }[];
    const dangers = new Set(
      page(id).steps.flatMap(({ cautions }) =>
        cautions.filter(({ level }) => level === 'danger').map(({ text }) => text),
      ),
    );
    expect(lines.map(({ lead }) => lead)).toEqual([...dangers].map((_, at) => `${at + 1}`));
    expect(new Set(lines.map(({ text }) => text)).size).toBe(lines.length);
    expect(blocks.indexOf(columns[0] as PaperBlock)).toBeLessThan(blocks.indexOf(columns[1] as PaperBlock));
  });

  test('holds every step in order with its numbers, its waits, how to tell and what goes wrong', () => {
    const text = textOf(page(id), 'student');
    let from = 0;
    for (const step of page(id).steps) {
      const at = text.indexOf(`[ ] ${step.number}. ${step.title}`, from);
      expect(at, step.title).toBeGreaterThan(from);
      from = at;
      const { does, tell = [], wrong = [], missed, measures } = step;
      for (const value of valuesIn([...does, ...tell, ...wrong])) expect(text.slice(at)).toContain(shown(value));
      for (const words of missed) expect(text.slice(at)).toContain(shown(words));
      for (const { label, expected } of measures)
        expect(text.slice(at)).toContain(shown(`${label}: measured ________________ expected ${expected}`));
    }
  });

  test('gives every wait and every window with its clock, and room to write down what they count from', () => {
    const text = textOf(page(id), 'student');
    const { bounds = [], moments = {} } = page(id).timetable ?? {};
    expect(bounds.length).toBeGreaterThan(3);
    for (const { earliest, latest } of bounds) {
      const clock = (minute = -1) => momentText(moments[minute] as ShownMoment, false);
      if (earliest !== undefined) expect(text).toContain(`not before ${clock(earliest)}`);
      if (latest !== undefined) expect(text).toContain(`not after ${clock(latest)}`);
    }
    expect(text.match(/(Done|Begun): day, hour: ___/g)?.length).toBeGreaterThan(2);
    expect(text).not.toMatch(/\d\.\d+ d after/);
  });

  test('counts what is fetched, and neither fresh air nor what everybody wears', () => {
    const text = textOf(page(id), 'student');
    expect(text).toMatch(/4 × Dust extractor/);
    expect(text).not.toMatch(/\d × (Fresh air|Two open windows|Running water|Fire extinguisher|[^;]*for everybody)/);
  });

  test('says what is worn and what is dangerous before what is done', () => {
    for (const block of stepsOf(page(id))) {
      if (block.kind !== 'step') throw new Error('no step');
      const leads = block.blocks.map((each) => (each.kind === 'text' ? (each.lead ?? '') : ''));
      const does = block.blocks.findIndex((each) => each.kind === 'text' && !each.lead && !each.strong);
      for (const [at, lead] of leads.entries())
        if (/^(Wear|At hand|Dangers?|Mind)$/.test(lead)) expect(at).toBeLessThan(does);
    }
  });

  test('says for which case it is, of which day, and where the case stands', () => {
    const text = textOf(page(id), 'student');
    for (const { words } of page(id).parameters) expect(text).toContain(shown(words));
    expect(text).toContain('Made for: ____');
    expect(text).toContain('Printed 2027-01-10.');
    expect(text).toContain('boards.example/methods/first-tray?pieces=6');
  });

  test('leaves no mark of a quantity unread, nor a reference unfilled', () => {
    for (const document of packetOf(page(id), options).documents)
      for (const units of [defaultUnits, inches])
        expect(documentText(document, units)).not.toMatch(/[⟦⟧]|\{\/|undefined|NaN|\[object/);
  });
});

function stepsOf(of: MethodPage): PaperBlock[] {
  const { blocks } = packetOf(of, options).documents[0] as { blocks: readonly PaperBlock[] };
  return blocks.flatMap((block) =>
    block.kind === 'columns' ? block.blocks.filter(({ kind }) => kind === 'step') : [],
  );
}

test('a rule that stops the method stands at the head of the student’s sheet', () => {
  const stopping = {
    ...page('first-tray'),
    findings: [
      {
        rule: 'pour-too-deep',
        level: 'stop',
        message: 'It is too deep.',
        wayOut: 'Pour two layers.',
        line: 1,
        column: 1,
      },
    ],
  } satisfies MethodPage;
  const text = textOf(stopping, 'student');
  expect(text).toContain('Do not begin by this sheet. It is too deep. Pour two layers.');
  expect(text.indexOf('Do not begin')).toBeLessThan(text.indexOf('This case'));
  const excepted = {
    ...stopping,
    findings: stopping.findings.map((each) => ({ ...each, excepted: 'A trial piece.' })),
  };
  expect(textOf(excepted, 'student')).not.toContain('Do not begin');
  expect(textOf(excepted, 'teacher')).toContain('Allowed here: A trial piece.');
});

describe('the teacher’s sheet', () => {
  test.each(ids)('of %s has every session with its work, every line of the bill, every finding', (id) => {
    const text = textOf(page(id), 'teacher');
    const { timetable, bill, findings, steps } = page(id);
    expect(timetable?.sessions.length).toBeGreaterThan(2);
    for (const [at, { start, work }] of (timetable?.sessions ?? []).entries()) {
      const moment = timetable?.moments[start];
      expect(text).toContain(`Session ${at + 1}: ${moment ? momentText(moment, false) : ''}`);
      for (const { step } of work) {
        const { number, title } = steps.find((each) => each.id === step) ?? {};
        expect(text).toContain(`${number}. ${title}`);
      }
    }
    for (const { what } of bill?.lines ?? []) expect(text).toContain(shown(what));
    for (const { message } of findings) expect(text).toContain(shown(message));
  });

  test('names who is at each stretch of work, and each tool of a session once', async () => {
    const three = await pageOf('first-tray', { pieces: 6, people: 3 });
    const text = textOf(three, 'teacher');
    expect(text).toMatch(/Maker/);
    expect(text).toMatch(/Helper 1/);
    expect(text).toMatch(/Free: Helper/);
    // Once a session, however many are free and however often.
    expect(text.match(/Free: /g)?.length).toBeLessThanOrEqual(three.timetable?.sessions.length ?? 0);
    expect(text.match(/Hearing protection for everybody/g)).toHaveLength(1);
    expect(text).toContain('Protection: as always.');
    expect(text).toMatch(/Machines: [^.]*Thickness planer/);
    const alone = textOf(await pageOf('first-tray', { people: 1 }), 'teacher');
    expect(alone).not.toMatch(/Who:|\bWho\b \|/);
  }, 30_000);

  test('names the steps at machines and with resin, and sends to local rules', () => {
    const text = textOf(page('panel-moss-channel'), 'teacher');
    expect(text).toMatch(/Machine: steps? [\d, to]+\./);
    expect(text).toMatch(/Resin: steps? [\d, to]+\./);
    expect(text).toContain('Your local rules');
    expect(textOf(page('first-tray'), 'teacher')).not.toMatch(/Resin: step/);
  });
});

test('what the calculations give to print comes once, with its steps', () => {
  const { documents, sheets } = packetOf(page('panel-moss-channel'), options);
  const made = page('panel-moss-channel').steps.flatMap(({ calculations }) =>
    calculations.flatMap((each) => each.documents),
  );
  const distinct = new Set(made.map((document) => JSON.stringify([document.id, document.blocks])));
  expect(documents.length).toBe(2 + distinct.size);
  expect(new Set(documents.map(({ id }) => id)).size).toBe(documents.length);
  expect(sheets.map(({ sheet }) => sheet)).toEqual(['student', 'teacher', 'mixing-sheet', 'template', 'label', 'card']);
  for (const document of documents.slice(2)) expect(document.steps.length).toBeGreaterThan(0);
  expect(
    packetOf(page('panel-moss-channel'), { ...options, only: ['label'] }).documents.map(({ sheet }) => sheet),
  ).toEqual(['label']);
});

test('the code on the paper is read back as the address', () => {
  const block = packetOf(page('first-tray'), options)
    .documents[0]?.blocks.flatMap((each) => (each.kind === 'columns' ? each.blocks : [each]))
    .find((each): each is AddressCode => each.kind === 'code');
  if (!block) throw new Error('no code');
  const zoom = 4;
  const side = block.size * zoom;
  const pixels = new Uint8ClampedArray(4 * side * side).fill(255);
  for (const [, x, y, width] of block.path.matchAll(/M(\d+) (\d+)h(\d+)v1h-\d+z/g)) {
    for (let row = Number(y) * zoom; row < (Number(y) + 1) * zoom; row++)
      for (let column = Number(x) * zoom; column < (Number(x) + Number(width)) * zoom; column++)
        pixels.fill(0, 4 * (row * side + column), 4 * (row * side + column) + 3);
  }
  expect(jsQR(pixels, side, side)?.data).toBe(address);
});

test('a first tray reads on paper as it did', async () => {
  const [student] = packetOf(await pageOf('first-tray'), { paper: 'a4', made: '2027-01-10' }).documents;
  if (!student) throw new Error('no sheet');
  await expect(`${documentText(student, defaultUnits)}\n`).toMatchFileSnapshot('first-tray-student.txt');
}, 30_000);

test('an address holds what was asked and nothing else', () => {
  const asked = { pieces: 6, start: '2027-01-12', set: { wood: 'white-ash', 'outline.length': '16 in' } };
  expect(methodAddress('first-tray', asked)).toBe(
    '/methods/first-tray?pieces=6&start=2027-01-12&wood=white-ash&outline.length=16+in',
  );
  expect(methodAddress('first-tray', {})).toBe('/methods/first-tray');
  expect(sheetsAddress('first-tray', { pieces: 2 }, ['student'])).toBe(
    '/sheets?method=first-tray&pieces=2&which=student',
  );
  expect(`${caseQuery({})}`).toBe('');
});

test.each([
  [
    'Rags, pads and paper with drying oil go into water, in a can.',
    'Rags, pads and paper with drying oil go into water',
  ],
  ['Never feed with the rotation at a table.', 'Never feed with the rotation at a table'],
  ['Unplug to change a bit; feed against the turn.', 'Unplug to change a bit'],
])('the head of “%s”', (text, head) => expect(headOf(text)).toBe(head));

test.each([
  [[1, 2, 3, 5], '1 to 3, 5'],
  [[5, 4, 4], '4, 5'],
  [[7], '7'],
])('numbers of steps %j', (numbers, text) => expect(numbersText(numbers)).toBe(text));

test('a thing is named in short without what is said of it', () => {
  expect(shortName('Metal can with a tight lid, a third full of water')).toBe('Metal can with a tight lid');
  expect(shortName('Plunge routers with a 16 mm (5/8 in, two flutes) bit and a guide bush, set up')).toBe(
    'Plunge routers with a 16 mm bit and a guide bush',
  );
});

test.each([
  [{ what: 'Spring clamps', kind: 'clamp', count: 30 }, '30 × '],
  [{ what: 'Band saw', kind: 'band-saw', count: 1 }, ''],
  [{ what: 'Fresh air', kind: 'ventilation', count: 12 }, ''],
  [{ what: 'Running water', kind: 'eye-wash', count: 4 }, ''],
  [{ what: 'Eye protection for everybody in the room', kind: 'eye-protection', count: 16 }, ''],
  [{ what: 'Fitted particle masks', kind: 'respirator', count: 16 }, '16 × '],
])('the count of %j', (tool, words) => expect(countWords(tool)).toBe(words));

test('labels and cards are as many as pieces at least, on whole sheets', async () => {
  const twelve = await pageOf('class-of-twelve', { pieces: 12, start: '2027-01-04' });
  const { documents } = packetOf(twelve, options);
  const labels = documents.find(({ form }) => form === 'labels');
  const card = documents.find(({ form }) => form === 'card');
  expect([labels?.needed, card?.needed]).toEqual([12, 12]);
  const html = packetHtml(packetOf(twelve, { ...options, paper: 'letter' }), defaultUnits);
  expect(html.match(/class="label"/g)).toHaveLength(20);
  // Two folded cards on a sheet, and none with an inside, which would be printed on its back: six sheets.
  expect(html.match(/class="cards"/g)).toHaveLength(6);
});
