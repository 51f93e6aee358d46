import { cleanup, render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, expect, test, vi } from 'vitest';
import { workClass } from '../../src/method/class/class.ts';
import { missedSession } from '../../src/method/class/missed.ts';
import type { ClassPlace } from '../../src/method/class/record.ts';
import { ClassResults } from '../../src/site/class/ClassResults.tsx';
import { PlacesTable } from '../../src/site/class/PlacesTable.tsx';
import { SessionFields } from '../../src/site/class/SessionFields.tsx';
import { alike, classOf, methodRecordOf, sixEvenings } from '../method/class/files.ts';

afterEach(cleanup);

const same = (text: string) => text;
const places: ClassPlace[] = [
  { id: '1', name: 'A. B.', set: {} },
  { id: '2', name: 'C. D.', set: { wood: 'black cherry', width: 'wide' } },
];

test('a table of places has a column for what differs, keeps what is typed and shows what is wrong beside it', async () => {
  const changed = vi.fn();
  const pages = [
    {
      id: '2',
      differs: [],
      problems: [{ field: 'width', message: '“wide” is no length.' }],
      uses: [],
      stops: 0,
      warnings: 0,
    },
  ];
  render(
    <PlacesTable record={methodRecordOf('first-tray')} places={places} pages={pages} say={same} onChange={changed} />,
  );
  const wide = screen.getByRole('textbox', { name: 'Width of the tray at place 2' });
  expect((wide as HTMLInputElement).value).toBe('wide');
  expect(wide.getAttribute('aria-invalid')).toBe('true');
  screen.getByText('“wide” is no length.');
  await userEvent.type(screen.getByRole('textbox', { name: 'Wood at place 1' }), 'x');
  expect(changed).toHaveBeenLastCalledWith([{ id: '1', name: 'A. B.', set: { wood: 'x' } }, places[1]]);
  await userEvent.click(screen.getByRole('button', { name: 'Add a place' }));
  expect(changed).toHaveBeenLastCalledWith([...places, { id: '3', set: {} }]);
  await userEvent.click(screen.getByRole('button', { name: 'Take out place 1' }));
  expect(changed).toHaveBeenLastCalledWith([places[1]]);
});

test('a parameter called Place or Name has a column that is told apart from that of the places', () => {
  const record = methodRecordOf('first-tray');
  const { place } = record.parameters;
  if (!place) throw new Error('the method asks for no place');
  const named = { ...record, parameters: { ...record.parameters, place: { ...place, label: 'Place' } } };
  const own = [{ id: '1', set: { place: 'duluth-mn' } }];
  render(<PlacesTable record={named} places={own} pages={[]} say={same} onChange={vi.fn()} />);
  expect(screen.getAllByRole('columnheader').map(({ textContent }) => textContent)).toEqual([
    'Place',
    'Name',
    'Place (of the method)',
    'Take out',
  ]);
});

test('what is wrong with a session stands at the field as it is typed, that of a weekly rule too', () => {
  const common = { set: {}, sessions: '2027-02-09 18:30-21:00\n2027-02-30 18:30-21:00' };
  const weekly = { first: '2027-13-01', times: '', weeks: '' };
  render(<SessionFields common={common} weekly={weekly} here="UTC" say={same} onChange={vi.fn()} onWeekly={vi.fn()} />);
  const field = screen.getByLabelText(/^Sessions, one a line/);
  expect(field.getAttribute('aria-invalid')).toBe('true');
  const said = document.getElementById(field.getAttribute('aria-describedby') ?? '');
  expect(said?.textContent).toContain('Line 2: ');
  screen.getByText(/^“2027-13-01” is not a day of the calendar/);
  // What is still empty is no fault.
  expect(screen.queryByText(/does not say from when to when/)).toBeNull();
});

test('the results show the order with its places, the turns at a machine, and a missed session as it is worked out', async () => {
  const sessions = Array.from({ length: 28 }, (_, at) => `2027-02-${String(at + 1).padStart(2, '0')} 09:00-17:00`).join(
    '\n',
  );
  const sound = [places[0], { id: '2', set: { wood: 'black cherry' } }] as ClassPlace[];
  const { answer, state } = await workClass(classOf('first-tray', { places: sound, sessions }));
  if (!answer.ok || !state) throw new Error('The class is not worked out.');
  const [session] = answer.page.sessions.filter(({ work }) => work.some(({ machines }) => machines.length > 0));
  const missed = await missedSession(state, '2', session?.number ?? 0);
  const asked = vi.fn();
  render(<ClassResults page={answer.page} missed={missed} onMissed={asked} />);
  const order = document.querySelector('[data-part="class-order"]') as HTMLElement;
  const cherry = within(order)
    .getByText(/black cherry/)
    .closest('tr') as HTMLElement;
  expect(cherry.lastElementChild?.textContent).toBe('2');
  expect(document.querySelectorAll('[data-part="class-session"]')).toHaveLength(answer.page.sessions.length);
  await userEvent.selectOptions(screen.getByLabelText('Place'), '2');
  await userEvent.selectOptions(screen.getByLabelText('Session'), String(session?.number));
  await userEvent.click(screen.getByRole('button', { name: 'What now?' }));
  expect(asked).toHaveBeenCalledWith('2', session?.number);
  const part = document.querySelector('[data-part="class-missed"]') as HTMLElement;
  expect(within(part).getAllByRole('listitem')).toHaveLength(missed?.steps.length ?? -1);
  expect(missed?.steps.length).toBeGreaterThan(0);
});

test('that catching up makes dust beside the wet resin of the class stands as a danger before the steps', async () => {
  const { answer, state } = await workClass(classOf('class-of-twelve', { places: alike(6), sessions: sixEvenings }));
  if (!answer.ok || !state) throw new Error('The class is not worked out.');
  const missed = await missedSession(state, '2', 4);
  render(<ClassResults page={answer.page} missed={missed} onMissed={vi.fn()} />);
  const dust = document.querySelector('[data-part="class-dust"]') as HTMLElement;
  expect(dust.textContent).toMatch(/^Danger\. .*Rout the channel.*wet resin.*No dust beside wet resin/);
  expect(dust.compareDocumentPosition(screen.getByText(/^Lay the template on and mark: later/))).toBe(
    Node.DOCUMENT_POSITION_FOLLOWING,
  );
  expect(document.querySelector('[data-part="class-teacher-twice"]')?.textContent).toMatch(/^Mind\. The teacher/);
});

test('on paper a class has its name, method and places, and nothing that is to be pressed', async () => {
  const { answer } = await workClass(
    classOf('class-of-twelve', {
      places: [{ id: '1', name: 'A. B.', set: {} }, ...alike(6).slice(1)],
      sessions: sixEvenings,
    }),
  );
  if (!answer.ok) throw new Error('The class is not worked out.');
  render(<ClassResults page={answer.page} missed={undefined} onMissed={vi.fn()} />);
  const head = document.querySelector('[data-part="class-head"]') as HTMLElement;
  expect(head.className).toBe('print-only');
  for (const words of [answer.page.name, answer.page.method.title, 'Place 1, A. B.', 'Place 6'])
    expect(within(head).getByText(words)).toBeTruthy();
  for (const pressed of [...document.querySelectorAll('button, select')])
    expect(pressed.closest('.no-print')).not.toBeNull();
  expect(screen.getByText('Somebody missed a session').className).toBe('no-print');
});
