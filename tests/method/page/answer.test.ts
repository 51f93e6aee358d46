import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { startingInputs, withUnits } from '../../../src/calculators/kit/address.ts';
import { answer as ask } from '../../../src/calculators/kit/answer.ts';
import { loadCalculator } from '../../../src/calculators/registry.ts';
import { answerMethod, answerNumbers, answersTo, MethodMemory } from '../../../src/method/page/answer.ts';
import type { MethodPage, MethodQuestion, ShownBlock, ShownPart } from '../../../src/method/page/types.ts';
import { addressNames, reservedNames } from '../../../src/method/record/index.ts';
import { maskText } from '../../../src/method/text-marks.ts';
import type { ReaderUnits } from '../../../src/model/quantity/index.ts';
import { methodFiles } from '../../methods/files.ts';

const shop = readFileSync(new URL('../../../methods/shop.yaml', import.meta.url), 'utf8');
const memory = new MethodMemory();

async function pageFor(question: MethodQuestion): Promise<MethodPage> {
  const answered = await answerMethod(question, memory);
  if (!answered.ok) throw new Error(JSON.stringify(answered.problems));
  return answered.page;
}

async function problemsOf(question: MethodQuestion) {
  const answered = await answerMethod(question, memory);
  if (answered.ok) throw new Error('It was answered.');
  return answered.problems;
}

/** JSON has one zero: a drawing may hold a point at the other, which is the same place. */
const oneZero = (value: unknown): unknown => {
  if (Array.isArray(value)) return value.map(oneZero);
  if (typeof value !== 'object' || value === null) return value === 0 ? 0 : value;
  return Object.fromEntries(Object.entries(value).map(([key, item]) => [key, oneZero(item)]));
};

const of = (name: string): MethodQuestion => {
  const file = methodFiles.find((each) => each.name === `${name}.yaml`);
  if (!file) throw new Error(name);
  return { text: file.text, file: `methods/${file.name}` };
};

/** Every value that stands in a text. */
function valuesIn(blocks: readonly ShownBlock[] = []): Extract<ShownPart, { kind: 'value' }>[] {
  const inParts = (parts: readonly ShownPart[]): Extract<ShownPart, { kind: 'value' }>[] =>
    parts.flatMap((part) => (part.kind === 'value' ? [part] : 'parts' in part ? inParts(part.parts) : []));
  return blocks.flatMap((block) =>
    block.kind === 'paragraph' ? inParts(block.parts) : block.items.flatMap((item) => valuesIn(item)),
  );
}

describe.each(methodFiles)('the page of $name', ({ name, text }) => {
  const page = pageFor({ text, file: name, shop, start: '2027-01-12' });

  test('has every step, and goes through JSON unchanged', async () => {
    const made = await page;
    expect(made.steps.length).toBeGreaterThan(4);
    expect(made.timetable ?? made.impossible).toBeDefined();
    expect(oneZero(JSON.parse(JSON.stringify(made)))).toStrictEqual(oneZero(made));
  });

  test('has a value with its label where each reference of a text stood', async () => {
    const { steps } = await page;
    const record = methodFiles.find((each) => each.name === name)?.read.record;
    for (const step of steps) {
      const source = record?.steps[step.id];
      for (const field of ['does', 'why', 'tell', 'wrong'] as const) {
        const shown = valuesIn(step[field]);
        const written = maskText(source?.[field] ?? '').pointers.map(({ pointer }) => pointer);
        expect(shown.map(({ pointer }) => pointer)).toEqual(written);
        for (const value of shown) {
          expect(value.missing).toBeUndefined();
          expect(value.label.length).toBeGreaterThan(2);
          expect(value.text).not.toContain('{/');
          if (value.pointer.includes('/figures/')) expect(value.basis).toBeDefined();
        }
      }
    }
  });

  test('says every danger and warning in full once: the same id with another text is another', async () => {
    const { steps, brief } = await page;
    const full = new Set<string>();
    for (const { number, cautions } of steps)
      for (const { saidIn, level, text } of cautions) {
        if (saidIn === undefined) full.add(text);
        else {
          expect(full).toContain(text);
          expect(saidIn).toBeLessThan(number);
        }
        if (level === 'danger') expect(brief.dangers.map(({ caution }) => caution.text)).toContain(text);
      }
  });

  test('hands each calculation to its calculator as texts that give the same answer', async () => {
    const { steps } = await page;
    for (const { use, inputs, verdict, errors } of steps.flatMap(({ calculations }) => calculations)) {
      const again = ask(await loadCalculator(use), inputs);
      expect(again.ok ? again.value.result.verdict : again.errors.map(({ message }) => message)).toEqual(
        verdict ?? errors,
      );
    }
  });

  test.each(['metric', 'inch'] as const)(
    'opens each calculator from its link with that very case, in %s',
    async (system) => {
      const { steps } = await page;
      const units: ReaderUnits = { system, inches: 'thirty-seconds' };
      for (const { use, inputs, verdict, figures } of steps.flatMap(({ calculations }) => calculations)) {
        const calculator = await loadCalculator(use);
        const raw = startingInputs(calculator, {}, units, `?${new URLSearchParams(inputs)}`);
        const opened = ask(calculator, withUnits(calculator, raw, units));
        if (!opened.ok) throw new Error(opened.errors.map(({ message }) => message).join(' '));
        expect(opened.value.result.verdict).toEqual(verdict);
        expect(Object.keys(opened.value.result.figures)).toEqual(Object.keys(figures));
      }
    },
  );

  test('says a caution in full once, and names that step afterwards', async () => {
    const { steps } = await page;
    const first = new Map<string, number>();
    // By the words: in another step one caution may have other numbers.
    for (const { number, cautions } of steps)
      for (const { text, saidIn } of cautions) {
        expect(saidIn, text).toBe(first.get(text));
        if (!first.has(text)) first.set(text, number);
      }
  });

  test('has work and waits within its plan, each minute with its clock', async () => {
    const { timetable, steps } = await page;
    if (!timetable) return;
    const worked = timetable.sessions.flatMap(({ work }) => work);
    const withHands = steps.filter(({ hands }) => hands.setUp + hands.each > 0).map(({ id }) => id);
    expect(new Set(worked.map(({ step }) => step))).toEqual(new Set(withHands));
    for (const { start, end } of [...worked, ...timetable.waits]) {
      expect(timetable.moments[start]?.day).toBeGreaterThanOrEqual(1);
      expect(timetable.moments[end]).toBeDefined();
      expect(start).toBeGreaterThanOrEqual(timetable.start);
    }
    expect(worked.some(({ critical }) => critical)).toBe(true);
  });
});

describe('answers one after another', () => {
  test('for a page that follows somebody the numbers come before they are judged, with the judgement of the case before', async () => {
    const memory = new MethodMemory();
    const pagesOf = async (asked: object, name = 'first-tray') => {
      const pages: MethodPage[] = [];
      for await (const answer of answersTo({ ...of(name), ...asked }, memory, true))
        if (answer.ok) pages.push(answer.page);
      return pages;
    };
    const first = await pagesOf({});
    expect(first.map(({ toCome }) => toCome)).toEqual(['timetable', 'advice', undefined]);
    const [early, judged, ...later] = await pagesOf({ set: { length: '520 mm' }, pieces: 3 });
    expect([early, judged, ...later].map((page) => page?.toCome)).toEqual([
      'judgement',
      'timetable',
      'advice',
      undefined,
    ]);
    expect(early?.findings).toEqual(first[0]?.findings);
    expect(early?.bill).toBe(first[0]?.bill);
    expect(judged?.bill).not.toEqual(first[0]?.bill);
    const bare = (page: MethodPage | undefined) => page?.steps.map((step) => ({ ...step, findings: [] }));
    expect(bare(early)).toEqual(bare(judged));
    // Another method was never judged: nothing of this one stands beside it.
    expect((await pagesOf({}, 'making-a-template'))[0]?.toCome).toBe('timetable');
  });

  test.each([
    ['with a timetable', { people: 1, pieces: 4, start: '2027-01-12' }, 'making-a-template'],
    ['without', { start: '2027-01-12', pieces: 3 }, 'wide-cherry-flood'],
  ])('%s: numbers, then what is planned, then its advice, and each says what follows', async (_, asked, name) => {
    const pages = [];
    for await (const answer of answersTo({ ...of(name), ...asked })) if (answer.ok) pages.push(answer.page);
    expect(pages.map(({ toCome }) => toCome)).toEqual(['timetable', 'advice', undefined]);
    const [numbers, planned, last] = pages as [MethodPage, MethodPage, MethodPage];
    expect(numbers.timetable ?? numbers.impossible).toBeUndefined();
    if (planned.timetable) expect({ ...planned.timetable, advice: last.timetable?.advice }).toEqual(last.timetable);
    else {
      expect(planned.impossible).toEqual({ why: last.impossible?.why, changes: [] });
      expect(last.impossible?.changes.length).toBeGreaterThan(0);
    }
    expect(planned.bill).toEqual(last.bill);
  });
});

describe('a case', () => {
  test('without a day counts the days of the plan and shows no date', async () => {
    const page = await pageFor(of('class-of-twelve'));
    expect(page.timetable).toMatchObject({ relative: true, assumedHours: true, assumedPeople: 3 });
    const { moments, start } = page.timetable ?? {};
    expect(moments?.[start ?? -1]).toMatchObject({ day: 1 });
    const sentences = JSON.stringify([
      page.findings,
      page.timetable?.critical,
      page.timetable?.advice,
      page.impossible,
    ]);
    expect(sentences).not.toMatch(/\d{4}-\d\d-\d\d/);
    expect(sentences).toMatch(/day \d+, (Mon|Tue|Wed|Thu|Fri) \d\d:\d\d/);
  });

  test('takes the days of single evenings from the hours themselves', async () => {
    const hours = {
      zone: 'America/Chicago',
      sessions: Array.from({ length: 20 }, (_, day) => `2027-01-${day + 12} 09:00-17:00`),
    };
    const page = await pageFor({ ...of('first-tray'), hours });
    const { relative, moments = {}, start = -1 } = page.timetable ?? {};
    expect(page.impossible?.why ?? '').toBe('');
    expect(relative).toBe(false);
    expect(moments[start]?.date).toBe('2027-01-12');
  });

  test('that must be ready by a day ends by it', async () => {
    const page = await pageFor({ ...of('first-tray'), shop, end: '2027-04-30' });
    const { moments = {}, end = -1, relative } = page.timetable ?? {};
    expect(relative).toBe(false);
    expect((moments[end]?.date ?? '9') <= '2027-04-30').toBe(true);
  });

  test('measured otherwise is worked out with what was measured', async () => {
    const before = await pageFor(of('first-tray'));
    const after = await pageFor({ ...of('first-tray'), measured: { order: { thickness: '22 mm' } } });
    const inputsOf = (page: MethodPage) =>
      page.steps.flatMap(({ calculations }) => calculations).find(({ name }) => name === 'order')?.inputs;
    expect(inputsOf(before)?.['thickness']).toBe('19 mm');
    expect(inputsOf(after)?.['thickness']).toBe('22 mm');
  });

  test.each([
    [{ measured: { odrer: { thickness: '22 mm' } } }, /“odrer” was measured for.*Did you mean order/],
    [{ measured: { order: { thikness: '22 mm' } } }, /“thikness” was measured for “order”.*thickness/],
    [{ start: '2027-02-30' }, /“2027-02-30” is not a day of the calendar/],
    [{ start: '2027-02-03', end: '2027-02-01' }, /lies before the start/],
    [{ people: 0 }, /0 people were asked for/],
    [{ pieces: 13 }, /13 pieces were asked for.*1 to 12/],
    [{ set: { wood: 'balsa-of-nowhere' } }, /Wood, as set: /],
    [{ set: { length: '2 m' } }, /Length of the tray, as set: 2 m is more than the method allows/],
    [{ set: { shopTemperature: 'abc' } }, /as set: (?!.*length).*“abc” is not a .*temperature/],
    [{ shop: 'shop: 2\n' }, /version 1 of the record/],
    [{ hours: { zone: 'Nowhere/Town', week: { mon: ['09:00-17:00'] } } }, /not the name of a time zone/],
  ] as const)('%j is refused, and says what is wrong', async (odd, told) => {
    const problems = await problemsOf({ ...of('first-tray'), ...(odd as Partial<MethodQuestion>) });
    expect(problems.map(({ message }) => message).join('\n')).toMatch(told);
    for (const { line, column } of problems) expect([line, column].every((at) => at >= 1)).toBe(true);
  });

  test('of a spoilt text is told with the place of what is wrong', async () => {
    const { text, file } = of('first-tray');
    const spoilt = text.replace('{/calculations/order/verdict}', '{/calculations/odrer/verdict}');
    const [problem] = await problemsOf({ text: spoilt, file });
    const line = spoilt.slice(0, spoilt.indexOf('odrer')).split('\n').length;
    expect(problem).toMatchObject({ file, line });
    expect(problem?.message).toMatch(/“odrer” is not a calculation/);
  });

  test.each(reservedNames)('cannot have a parameter called %s, which an address needs for itself', async (name) => {
    const { text, file } = of('first-tray');
    const [problem] = await problemsOf({ text: text.replace('  thickness: { kind', `  ${name}: { kind`), file });
    expect(problem).toMatchObject({ field: expect.stringContaining('parameters') });
    expect(problem?.message).toMatch(/belong to the case itself.*Give the parameter another/);
  });

  test.each(addressNames)(
    'cannot have a parameter called %s, which the address of its sheets would take',
    async (name) => {
      const { text, file } = of('first-tray');
      const [problem] = await problemsOf({ text: text.replace('  thickness: { kind', `  ${name}: { kind`), file });
      expect(problem?.message).toMatch(/belong to addresses.*Give the parameter another/);
    },
  );

  test('has its numbers before its timetable, the same ones', async () => {
    const question = { ...of('first-tray'), shop, start: '2027-01-12' };
    const numbers = await answerNumbers(question, memory);
    const whole = await pageFor(question);
    if (!numbers.ok) throw new Error('No numbers.');
    expect(numbers.page.timetable).toBeUndefined();
    expect(numbers.page.brief.pieceCost).toMatch(/\d/);
    expect(numbers.page.steps.map(({ does, calculations }) => ({ does, calculations }))).toEqual(
      whole.steps.map(({ does, calculations }) => ({ does, calculations })),
    );
  });

  test('names what somebody can read off with a rule, a scale or a thermometer while a step is done', async () => {
    const { steps } = await pageFor(of('first-tray'));
    const labels = Object.fromEntries(steps.map(({ id, measures }) => [id, measures.map(({ label }) => label)]));
    expect(labels['order']).toEqual(expect.arrayContaining([expect.stringMatching(/length/i)]));
    expect(labels['read-moisture']?.length).toBeGreaterThan(0);
    expect(labels['stack']).toEqual([]);
  });

  test('tells what only a year shows, and asks nobody to measure it on the day', async () => {
    const { steps } = await pageFor(of('first-tray'));
    const handOver = steps.find(({ id }) => id === 'hand-over');
    expect(JSON.stringify(handOver?.does)).toContain('/calculations/year/figures/swing');
    expect(handOver?.measures).toEqual([]);
  });
});

test('what can hurt is named of what is there: resin only where some is used', async () => {
  const hazardsOf = async (name: string) => (await pageFor(of(name))).brief.hazards;
  expect(await hazardsOf('first-tray')).not.toContain('uncured resin');
  expect(await hazardsOf('making-a-template')).not.toContain('uncured resin');
  expect(await hazardsOf('salvaged-ash-amber')).toContain('uncured resin');
});
