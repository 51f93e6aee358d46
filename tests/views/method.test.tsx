import { cleanup, fireEvent, render, screen, waitFor, within } from '@testing-library/react';
import jsonld from 'jsonld';
import { afterEach, describe, expect, onTestFinished, test, vi } from 'vitest';
import { fieldsOf } from '../../src/calculators/kit/answer.ts';
import { fieldMeta } from '../../src/calculators/kit/fields.ts';
import { answerMethod, MethodMemory } from '../../src/method/page/answer.ts';
import type { MethodPage } from '../../src/method/page/types.ts';
import { amount, defaultUnits, holdsAmount, inReaderUnits } from '../../src/model/quantity/index.ts';
import { caseForm } from '../../src/site/method/case-form.ts';
import { howToData, howToText, isoDuration } from '../../src/site/method/how-to-data.ts';
import { MethodView } from '../../src/site/method/MethodView.tsx';
import { calendarFault, countFaults, fieldOfProblem, questionOf } from '../../src/site/method/question.ts';
import { calculatorAddress } from '../../src/site/method/ShownText.tsx';
import { caseAddress, ownTexts, readCaseAddress } from '../../src/site/method/use-case.ts';
import { readMethodTexts } from '../../src/store/index.ts';

afterEach(cleanup);

const memory = new MethodMemory();
const methods = readMethodTexts();
const textOf = (id: string) => methods.find((method) => method.id === id)?.text ?? '';

async function pageOf(text: string, more = {}): Promise<MethodPage> {
  const answered = await answerMethod({ text, file: 'methods/one.yaml', ...more }, memory);
  if (!answered.ok) throw new Error(answered.problems.map(({ message }) => message).join('\n'));
  return JSON.parse(JSON.stringify(answered.page)) as MethodPage;
}
const tray = pageOf(textOf('first-tray'));

describe('the page of a method', () => {
  test('shows every step with its title, its time and its cautions, and no mark of a quantity', async () => {
    const page = await tray;
    render(<MethodView page={page} />);
    const steps = [...document.querySelectorAll('li[id^="step-"]')];
    expect(steps.map(({ id }) => id)).toEqual(page.steps.map(({ id }) => `step-${id}`));
    for (const [at, { title }] of page.steps.entries()) expect(steps[at]?.textContent).toContain(title);
    expect(holdsAmount(document.body.textContent ?? '')).toBe(false);
    expect(document.body.textContent).not.toContain('{/');
    const ids = [...document.querySelectorAll('[id]')].map(({ id }) => id);
    expect(ids.filter((id, at) => ids.indexOf(id) !== at)).toEqual([]);
    const links = [...document.querySelectorAll('a[href^="#"]')].map((link) => link.getAttribute('href')?.slice(1));
    expect(links.filter((link) => !ids.includes(link ?? ''))).toEqual([]);
  });

  test('folds on a phone how to tell and what to have at hand, and never what to do or a caution', async () => {
    const page = await tray;
    render(<MethodView page={page} />);
    const shown = page.steps.find(({ tell, cautions }) => tell && cautions.some(({ saidIn }) => saidIn === undefined));
    const step = document.getElementById(`step-${shown?.id}`) as HTMLElement;
    const more = within(step).getByRole('button', { name: /^More: how to tell, at hand/ });
    const folded = document.getElementById(more.getAttribute('aria-controls') ?? '') as HTMLElement;
    expect(folded.textContent).toContain('It is right when');
    expect(folded.textContent).toContain('At hand:');
    expect(folded.querySelector('li[data-level]')).toBeNull();
    expect(step.querySelector('li[data-level]')).not.toBeNull();
    fireEvent.click(more);
    expect(more.getAttribute('aria-expanded')).toBe('true');
  });

  test('the sessions of a plan with dates are taken as a calendar file; days that are only counted are not', async () => {
    const files: string[] = [];
    vi.spyOn(URL, 'createObjectURL').mockReturnValue('blob:calendar');
    vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(function (this: HTMLAnchorElement) {
      files.push(this.download);
    });
    onTestFinished(() => void vi.restoreAllMocks());
    const button = () => screen.queryByRole('button', { name: 'Take the sessions as a calendar file' });
    render(<MethodView page={await tray} />);
    expect(button()).toBeNull();
    cleanup();
    render(<MethodView page={await pageOf(textOf('first-tray'), { start: '2027-01-12' })} />);
    fireEvent.click(button() as HTMLElement);
    await waitFor(() => expect(files).toEqual(['one.ics']));
  });

  test('says in brief why there is no timetable', async () => {
    const { timetable: _none, ...page } = await tray;
    const why = `It cannot all be kept: “Pour” must come within ${amount(3, 'h')} of “Seal”.`;
    render(<MethodView page={{ ...page, impossible: { why, changes: [] } }} />);
    const brief = document.querySelector<HTMLElement>('[data-part="brief"]');
    const facts = within(brief as HTMLElement).getAllByText('Until done');
    expect(facts.map((fact) => fact.parentElement?.textContent).join()).toContain(inReaderUnits(why, defaultUnits));
  });

  test('says what was assumed, and counts days where no day was named', async () => {
    render(<MethodView page={await tray} />);
    const times = document.getElementById('times')?.parentElement?.textContent ?? '';
    expect(times).toMatch(/Assumed: hours of Monday to Friday, 9:00 to 17:00; 3 people/);
    expect(times).toMatch(/Day 1 \(Mon\)/);
    expect(times).not.toMatch(/2001|Jan/);
  });

  test('opens what a figure rests on where the figure stands', async () => {
    render(<MethodView page={await tray} />);
    const step = document.getElementById('step-stack') as HTMLElement;
    const figure = step.querySelector('button[aria-controls]') as HTMLButtonElement;
    const behind = document.getElementById(figure.getAttribute('aria-controls') ?? '') as HTMLElement;
    expect(behind.dataset['open']).toBeUndefined();
    fireEvent.click(figure);
    expect(behind.dataset['open']).toBe('true');
    expect(behind.querySelector('a')?.getAttribute('href')).toMatch(
      /^\/calculators\/acclimatise\?.*moistureNow=9\+%25/,
    );
  });

  test('says a step that makes the plan long by a sign and in words, not by colour alone', async () => {
    render(<MethodView page={await tray} />);
    expect(screen.getAllByText(/makes the plan as long as it is:/).length).toBeGreaterThan(0);
    expect(document.querySelector('svg[role="img"][aria-label^="Timetable of"]')).not.toBeNull();
  });

  test.each(methods.map(({ id }) => id))('of %s leads to calculators that take its case', async (id) => {
    const page = await pageOf(textOf(id));
    for (const calculation of page.steps.flatMap(({ calculations }) => calculations)) {
      const { searchParams } = new URL(calculatorAddress(calculation), 'https://kerf.example');
      expect(Object.fromEntries(searchParams)).toEqual(calculation.inputs);
    }
  });
});

describe('text that somebody planted', () => {
  const script = '</script><script>alert(1)</script><img src=x onerror=alert(2)>';
  /** The texts of the format that take any characters; those of steps refuse marks of web pages. */
  const planted = async () => {
    const page = await tray;
    const spoil = (value: unknown): unknown => {
      if (typeof value === 'string') return `${value} ${script}`;
      if (Array.isArray(value)) return value.map(spoil);
      return value;
    };
    const step = page.steps[0] as MethodPage['steps'][number];
    const texts = [{ kind: 'paragraph' as const, parts: [{ kind: 'text' as const, text: script }] }];
    return {
      ...page,
      title: script,
      for: script,
      makes: { ...page.makes, what: script },
      sources: [{ text: script }],
      materials: page.materials.map((each) => ({ ...each, what: script })),
      tools: page.tools.map((each) => ({ ...each, what: script })),
      findings: [{ rule: 'x', level: 'stop', message: script, wayOut: script, line: 1, column: 1 } as const],
      about: texts,
      steps: [
        {
          ...step,
          title: script,
          does: texts,
          tell: texts,
          wrong: texts,
          why: texts,
          waits: spoil(['Wait.']) as string[],
          missed: [script],
        },
      ],
    } satisfies MethodPage;
  };

  test('is text on the page', async () => {
    render(<MethodView page={await planted()} />);
    expect(document.querySelectorAll('script, img, [onerror]')).toHaveLength(0);
    expect(document.body.textContent).toContain('<img src=x onerror=alert(2)>');
  });

  test('cannot end the script element that holds the data', async () => {
    const text = howToText(await planted(), 'https://kerf.example/methods/one');
    expect(text).not.toContain('<');
    expect(JSON.parse(text).name).toBe(script);
  });
});

describe('a method as data', () => {
  // schema.org's own context maps its words to its address; this does as much for those that a HowTo uses.
  const context = { '@context': { '@vocab': 'https://schema.org/', url: { '@type': '@id' } } };
  const documentLoader = (url: string) =>
    Promise.resolve({ contextUrl: undefined, documentUrl: url, document: context });

  test.each(methods.map(({ id }) => id))('is a HowTo that expands: %s', async (id) => {
    const page = await pageOf(textOf(id));
    const address = `https://kerf.example/methods/${id}`;
    const [howTo] = (await jsonld.expand(JSON.parse(howToText(page, address)), {
      documentLoader,
      safe: true,
    } as object)) as Record<string, unknown[]>[];
    expect(howTo?.['@type']).toEqual(['https://schema.org/HowTo']);
    expect(howTo?.['https://schema.org/step']).toHaveLength(page.steps.length);
    expect(howTo?.['https://schema.org/tool']).toHaveLength(page.tools.length);
    expect(howTo?.['https://schema.org/supply']).toHaveLength(page.materials.length);
    const { totalTime, performTime, step } = howToData(page, address) as unknown as {
      totalTime: string;
      performTime: string;
      step: { text: string; url: string }[];
    };
    for (const time of [totalTime, performTime]) expect(time).toMatch(/^P(\d+D)?(T(\d+H)?(\d+M)?)?$/);
    for (const { text, url } of step) {
      expect(holdsAmount(text)).toBe(false);
      expect(text.length).toBeGreaterThan(10);
      expect(url).toContain(`${address}#step-`);
    }
  });

  test.each([
    [0, 'PT0M'],
    [45, 'PT45M'],
    [90, 'PT1H30M'],
    [1440, 'P1D'],
    [3 * 1440 + 61, 'P3DT1H1M'],
  ])('%i min is %s', (minutes, written) => {
    expect(isoDuration(minutes)).toBe(written);
  });
});

describe('the case of a method in an address', () => {
  const inch = { ...defaultUnits, system: 'inch' as const };

  test('holds only what the reader changed, each bare number with the unit that it was typed in', async () => {
    const form = caseForm(await tray);
    const metric = { ...form.example.metric, length: '420', pieces: '6' };
    expect(caseAddress(form, ownTexts(form, metric, defaultUnits), '?other=1')).toBe('?other=1&pieces=6&length=420+mm');
    const inches = { ...form.example.inch, length: '16' };
    expect(caseAddress(form, ownTexts(form, inches, inch))).toBe('?length=16+in');
    expect(caseAddress(form, ownTexts(form, form.example.inch, inch))).toBe('');
    expect(readCaseAddress(form, '?length=16+in&nothing=1')).toEqual({ length: '16 in' });
  });

  test('names resins and finishes as their records do, and offers a shape by its name', async () => {
    const inputsOf = async (id: string) => Object.entries(fieldsOf(caseForm(await pageOf(textOf(id)))));
    const options = (fields: [string, unknown][], name: string) =>
      fieldMeta(fields.find(([each]) => each === name)?.[1] as never)?.options?.map(({ label }) => label);
    expect(options(await inputsOf('class-of-twelve'), 'resin')).toContain('Slow casting epoxy, 2:1 by volume');
    const paddle = await inputsOf('making-a-template');
    const shape = paddle.find(([name]) => name.endsWith('.shape'))?.[0] ?? '';
    expect(options(paddle, shape)?.join('; ')).toMatch(/Paddle/);
  });

  test('sets the measures of an outline one by one', async () => {
    const page = await pageOf(textOf('making-a-template'));
    const form = caseForm(page);
    const outline = page.parameters.find(({ record }) => record.kind === 'outline');
    const [name = ''] = Object.keys(outline?.texts ?? {}).filter((each) => each.endsWith('ength'));
    const question = questionOf({ text: textOf('making-a-template'), file: 'x' }, { [name]: '410 mm' });
    expect(question.set).toEqual({ [name]: '410 mm' });
    const answered = await answerMethod(question, memory);
    expect(answered.ok ? [] : answered.problems).toEqual([]);
    expect(Object.keys(form.example.metric)).toContain(name);
  });

  test('asks nothing of an empty field, and tells a count that is none at its field', () => {
    const base = { text: '', file: 'x' };
    expect(questionOf(base, { start: '', people: '2', pieces: '4', wood: 'white-ash' })).toEqual({
      ...base,
      pieces: 4,
      people: 2,
      set: { wood: 'white-ash' },
    });
    const hours = { zone: 'UTC', sessions: ['2027-02-09 18:30-21:00'] };
    const calendars = [{ id: 'one-evening', title: 'One Evening', hours }];
    expect(questionOf(base, { calendar: 'one-evening' }, { calendars })).toEqual({
      ...base,
      hours,
      start: '2027-02-09',
    });
    expect(calendarFault({ calendar: 'none' }, calendars)).toEqual([
      { field: 'calendar', message: 'There is no calendar “none” here. Those that are: one-evening.' },
    ]);
    expect(countFaults({ pieces: 'six' })).toEqual([{ field: 'pieces', message: expect.stringContaining('“six”') }]);
  });

  test.each([
    [{ set: { length: '2 m' } }, 'length'],
    [{ set: { wood: 'nowhere' } }, 'wood'],
    [{ pieces: 40 }, 'pieces'],
    [{ start: '2027-02-30' }, 'start'],
    [{ people: 0 }, 'people'],
  ] as const)('tells %j at the field %s', async (more, field) => {
    const answered = await answerMethod({ text: textOf('first-tray'), file: 'x', ...more }, memory);
    const page = await tray;
    expect(answered.ok ? [] : answered.problems.map((problem) => fieldOfProblem(problem, page))).toEqual([field]);
  });
});
