import { readFileSync } from 'node:fs';
import { act, cleanup, fireEvent, render, screen, waitFor } from '@testing-library/react';
import { useEffect, useState } from 'react';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { changeShop } from '../../src/calculators/view/kept-shop.ts';
import { keepUnits } from '../../src/calculators/view/units.tsx';
import { answerNumbers, MethodMemory } from '../../src/method/page/answer.ts';
import type { MethodPage, MethodQuestion } from '../../src/method/page/types.ts';
import { defaultUnits } from '../../src/model/quantity/index.ts';
import type { MethodState } from '../../src/site/method/use-method.ts';
import { readMethodTexts } from '../../src/store/index.ts';

const memory = new MethodMemory();
vi.mock('../../src/site/method/use-method.ts', () => ({
  // As the hook does it, without a worker: the page before stays while something is wrong.
  useMethod: (question: MethodQuestion | undefined, first: MethodPage): MethodState => {
    const [state, setState] = useState<MethodState>({ page: first, problems: [], pending: 'nothing', failed: false });
    const key = JSON.stringify(question);
    useEffect(() => {
      if (key === undefined) return setState({ page: first, problems: [], pending: 'nothing', failed: false });
      let gone = false;
      void answerNumbers(JSON.parse(key) as MethodQuestion, memory).then((answer) => {
        if (gone) return;
        setState((before) => ({
          page: answer.ok ? answer.page : before.page,
          problems: answer.ok ? [] : answer.problems,
          ...(!answer.ok && answer.beyond ? { beyond: answer.beyond } : {}),
          pending: 'nothing',
          failed: false,
        }));
      });
      return () => {
        gone = true;
      };
    }, [key, first]);
    return state;
  },
}));
const { MethodLive } = await import('../../src/site/method/MethodLive.tsx');

const id = 'repair-and-reoil';
const text = readMethodTexts().find((each) => each.id === id)?.text ?? '';
const file = `methods/${id}.yaml`;
const answered = await answerNumbers({ text, file }, memory);
if (!answered.ok) throw new Error(JSON.stringify(answered.problems));
const sent = answered.page;
const record = readFileSync('methods/shop.yaml', 'utf8');

beforeEach(() => {
  window.history.replaceState(null, '', `/methods/${id}`);
  vi.stubGlobal('fetch', async () => new Response(text));
});
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
  window.localStorage.clear();
  keepUnits(defaultUnits);
});

const shown = () => document.body.textContent ?? '';
const night = () => document.querySelector<HTMLInputElement>('[data-field="nightTemperature"] input');

/** The page of somebody whose record says so of the night, in their units. */
async function open(kept: string, system: 'metric' | 'inch') {
  keepUnits({ ...defaultUnits, system });
  changeShop(() => ({ text: record.replace(/^( {2}night: ).*$/m, `$1${kept}`), aside: false }));
  await act(async () => {
    render(<MethodLive id={id} page={sent} calendars={[]} />);
  });
  await waitFor(() => expect(shown()).toContain('With the values of Lakeside community workshop.'), {
    timeout: 20_000,
  });
}

test('a night of the shop that the method allows stands in its field', async () => {
  await open('16 °C', 'metric');
  await waitFor(() => expect(night()?.value).toBe('16 °C'));
  expect(document.getElementById('times')).not.toBeNull();
});

test('a shop that is too cold at night is said at the head and at the field, and no time stands on the page', async () => {
  await open('14 °C', 'inch');
  const why =
    '57.2 °F is colder than the method allows, 59 °F to 68 °F, and its times do not hold there. Keep it at 59 °F or more';
  const head = document.querySelector('[data-part="brief"]');
  expect(head?.textContent).toContain('Stop: not in Lakeside community workshop as its record stands.');
  expect(head?.textContent).toContain(why);
  expect(document.querySelector('[data-field="nightTemperature"]')?.textContent).toContain(why);
  expect(night()?.value).toBe('57.2 °F');
  for (const part of ['steps', 'times', 'buy', 'found']) expect(document.getElementById(part)).toBeNull();
  expect(shown()).not.toContain('Until done');
  expect(shown()).not.toContain('Every rule is kept');
  // What can hurt somebody stands all the same.
  expect(head?.textContent).toContain('Can hurt:');
});

test('the page stands again for the night that the reader keeps, and without the record', async () => {
  await open('14 °C', 'metric');
  await act(async () => {
    fireEvent.change(night() as HTMLInputElement, { target: { value: '15 °C' } });
  });
  await waitFor(() => expect(document.getElementById('times')).not.toBeNull(), { timeout: 20_000 });
  expect(shown()).not.toContain('Stop: not in');
  for (const colder of ['13 °C', '14 °C']) {
    await act(async () => {
      fireEvent.change(night() as HTMLInputElement, { target: { value: colder } });
    });
    await waitFor(() => expect(document.getElementById('times')).toBeNull(), { timeout: 20_000 });
  }
  await act(async () => {
    fireEvent.click(screen.getByRole('button', { name: 'Set them aside' }));
  });
  await waitFor(() => expect(document.getElementById('times')).not.toBeNull(), { timeout: 20_000 });
});

test.each(['two', '1,5', '0'])('of “%s” people one thing is said', async (typed) => {
  await open('16 °C', 'metric');
  const people = () => document.querySelector<HTMLInputElement>('[data-field="people"] input') as HTMLInputElement;
  // As it is typed over what stood there: a case of nobody was refused before.
  for (const value of ['0', typed]) {
    await act(async () => {
      fireEvent.change(people(), { target: { value } });
    });
    await waitFor(() => expect(document.querySelector('[data-field="people"]')?.textContent).toContain('Give'), {
      timeout: 20_000,
    });
  }
  const said = document.querySelector('[data-field="people"]')?.textContent ?? '';
  expect(said.match(/Give/g)).toHaveLength(1);
  expect(said).toContain(typed === '0' ? '0 people were asked for.' : `“${typed}” is not a whole number.`);
});

test('a reader with a shop record is told that the first page is not theirs, until theirs has come', async () => {
  changeShop(() => ({ text: record, aside: false }));
  let give: (text: Response) => void = () => undefined;
  vi.stubGlobal(
    'fetch',
    () =>
      new Promise((resolve) => {
        give = resolve;
      }),
  );
  await act(async () => {
    render(<MethodLive id="first-to-come" page={sent} calendars={[]} />);
  });
  const notice = () => document.querySelector('[data-part="not-yours"]');
  expect(notice()?.textContent).toMatch(/still the method’s own case, not that of your shop record/);
  await act(async () => give(new Response(text)));
  await waitFor(() => expect(shown()).toContain('With the values of Lakeside community workshop.'), {
    timeout: 20_000,
  });
  expect(notice()).toBeNull();
});

test('whoever has none of their own is told nothing of the kind', async () => {
  await act(async () => {
    render(<MethodLive id={id} page={sent} calendars={[]} />);
  });
  expect(document.querySelector('[data-part="not-yours"]')).toBeNull();
});

test('a method that is taught says of other days than those of the class that they are, and leads to those', async () => {
  const taught = {
    ...sent,
    brief: { ...sent.brief, lasts: 31 * 1440 },
    taught: { calendar: 'six-tuesdays', people: 14, evenings: 6 },
  };
  const calendars = [
    { id: 'six-tuesdays', title: 'Six Tuesdays', hours: { zone: 'UTC', sessions: ['2027-02-09 18:30-21:00'] } },
  ];
  const note = () => document.querySelector('[data-part="untaught"]');
  const opened = async (query: string) => {
    cleanup();
    window.history.replaceState(null, '', `/methods/${id}${query}`);
    await act(async () => {
      render(<MethodLive id={id} page={taught} calendars={calendars} />);
    });
  };
  await opened('');
  expect(note()?.textContent).toContain('Not the days of a class.');
  expect(note()?.querySelector('a')?.getAttribute('href')).toBe(`/methods/${id}?calendar=six-tuesdays`);
  expect(document.querySelector('[data-part="brief"]')?.textContent).toContain('not those of a class');
  await opened('?calendar=six-tuesdays');
  expect(note()).toBeNull();
  expect(document.querySelector('[data-part="brief"]')?.textContent).not.toContain('not those of a class');
});
