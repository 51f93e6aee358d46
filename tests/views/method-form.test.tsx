import { readFileSync } from 'node:fs';
import { cleanup, fireEvent, render, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { useEffect, useState } from 'react';
import { afterEach, describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { applySplices, type EditProblem, type Splice, usualNames } from '../../src/method/edit/index.ts';
import { readMethod } from '../../src/method/read.ts';
import { MethodForm } from '../../src/site/bench/form/MethodForm.tsx';

const tray = readFileSync('methods/first-tray.yaml', 'utf8');
/** A small method, with comments and two ways of writing. */
const small = `# Our first method.
method: 1
title: A board # its name
for: Beginners
language: en
makes: { what: Board, pieces: { default: 1, least: 1, most: 4 } }
sources: [{ text: Our own. }]
parameters:
  length: { kind: quantity, label: Length, default: 400 mm, least: 300 mm, most: 600 mm }
materials:
  oil: { what: Mineral oil, kind: finish, needs: [{ amount: 2, per: piece }] }
tools:
  sander: { what: Random orbit sander, kind: random-orbit-sander } # the good one
  mask: { what: Particle mask, kind: respirator }
steps:
  # Before anything else.
  gather:
    title: Gather it all
    act: gather
    does: Lay it out.
  sand:
    title: Sand it
    act: sand
    does: |
      Sand it well.
      It is {/parameters/length} long.
    tools: [sander]
    after: [gather]
    calculations:
      grits:
        use: grit-sequence
        with: { surface: planed, finish: oil-or-wax }
`;

/** Calculators and lists are fetched first. */
const patient = { timeout: 10_000 };

let text = '';
let edits: (readonly Splice[])[] = [];
let replace: (text: string) => void = () => undefined;

function Bench({
  from,
  problems,
  readOnly = false,
}: {
  from: string;
  problems: readonly EditProblem[];
  readOnly?: boolean;
}) {
  const [now, setNow] = useState(from);
  useEffect(() => {
    text = now;
    replace = setNow;
  }, [now]);
  return (
    <MethodForm
      text={now}
      problems={problems}
      readOnly={readOnly}
      names={usualNames}
      onEdit={(splices) => {
        edits.push(splices);
        setNow((before) => applySplices(before, splices));
      }}
    />
  );
}

function show(from = small, problems: readonly EditProblem[] = []) {
  edits = [];
  render(<Bench from={from} problems={problems} />);
}

const summary = (words: string | RegExp) => screen.getByText(words, { selector: 'summary span' });
/** Open an entry, as a press on it does. */
function open(words: RegExp): HTMLElement {
  const details = summary(words).closest('details') as HTMLDetailsElement;
  details.open = true;
  fireEvent(details, new Event('toggle'));
  return details;
}
async function write(field: HTMLElement, words: string) {
  fireEvent.change(field, { target: { value: words } });
  fireEvent.blur(field);
  await waitFor(() => expect(edits.length).toBeGreaterThan(0));
}
const problem = (path: EditProblem['path'], message: string, level: EditProblem['level'] = 'error'): EditProblem => ({
  ...{ from: 0, to: 1, line: 1, column: 1, fixes: [] },
  ...{ path, message, level },
});

afterEach(cleanup);

describe('the form of a method', () => {
  test('shows what stands in the text, and changes only that', async () => {
    show();
    const title = screen.getByLabelText('Title');
    expect((title as HTMLInputElement).value).toBe('A board');
    await write(title, 'A wide board');
    expect(text).toBe(small.replace('title: A board #', 'title: A wide board #'));
  });

  test('what is typed goes in when typing pauses, once, without quotes for a space at its end', async () => {
    show();
    await userEvent.type(screen.getByLabelText('Title'), ' of ash ');
    await waitFor(() => expect(text).toContain('title: A board of ash # its name'), { timeout: 3000 });
    expect(edits).toHaveLength(1);
  });

  test('what is undone in the text stands in the form', async () => {
    show();
    await write(screen.getByLabelText('Title'), 'Another');
    replace(small);
    await waitFor(() => expect((screen.getByLabelText('Title') as HTMLInputElement).value).toBe('A board'));
  });

  test('a number stays a number, and a field that may be left out goes out of the text when it is emptied', async () => {
    show();
    await write(screen.getByLabelText('Pieces, usually'), '2');
    expect(text).toContain('pieces: { default: 2,');
    const step = open(/2\. Sand it/);
    await write(within(step).getByLabelText(/Time at it, for each piece/), '15 min');
    expect(parse(text).steps.sand.hands).toEqual({ each: '15 min' });
    await write(within(step).getByLabelText(/Time at it, for each piece/), '');
    await waitFor(() => expect(parse(text).steps.sand).not.toHaveProperty('hands'));
    expect(parse(text)).toEqual({
      ...parse(small),
      makes: { what: 'Board', pieces: { default: 2, least: 1, most: 4 } },
    });
  });

  test('a text of several lines keeps its way of writing', async () => {
    show();
    const step = open(/2\. Sand it/);
    await write(within(step).getByLabelText('What to do'), 'Sand it well.\nTwice.');
    expect(text).toContain('    does: |\n      Sand it well.\n      Twice.\n    tools: [sander]');
    await write(within(step).getByLabelText(/Why it is done so/), 'It is rough: feel it.');
    expect(parse(text).steps.sand.why).toBe('It is rough: feel it.');
  });

  test('a step is added, moved and removed, and its comments go with it', async () => {
    show();
    const words = screen.getByLabelText('A new step, in words');
    await userEvent.type(words, 'First coat of oil{Enter}');
    expect(Object.keys(parse(text).steps)).toEqual(['gather', 'sand', 'first-coat-of-oil']);
    const added = open(/3\. First coat of oil/);
    await userEvent.click(within(added).getByRole('button', { name: /^Move up/ }));
    expect(Object.keys(parse(text).steps)).toEqual(['gather', 'first-coat-of-oil', 'sand']);
    await userEvent.click(within(added).getByRole('button', { name: /^Remove this step/ }));
    expect(text).toBe(small);
  });

  test('another name is written wherever the old one stands, and what is open stays open', async () => {
    show();
    const entry = open(/1\. Length/);
    await write(within(entry).getByLabelText('Short name'), 'size');
    expect(text).toContain('It is {/parameters/size} long.');
    expect(text).toContain('  size: { kind');
    expect(entry.isConnected && (entry as HTMLDetailsElement).open).toBe(true);
    edits = [];
    fireEvent.change(within(entry).getByLabelText('Short name'), { target: { value: 'Not a name' } });
    fireEvent.blur(within(entry).getByLabelText('Short name'));
    expect(within(entry).getByText(/cannot be a name/)).toBeTruthy();
    expect(edits).toEqual([]);
  });

  test('tools are ticked, by their own words', async () => {
    show();
    const step = open(/2\. Sand it/);
    await userEvent.click(within(step).getByLabelText('Particle mask'));
    expect(text).toContain('tools: [sander, mask]');
    await userEvent.click(within(step).getByLabelText('Random orbit sander'));
    await userEvent.click(within(step).getByLabelText('Particle mask'));
    expect(parse(text).steps.sand).not.toHaveProperty('tools');
    expect(text).toContain('# the good one');
  });

  test('a wait gets a time, and the time may be taken from a figure', async () => {
    show(tray);
    const step = open(/5\. Mark the blanks/);
    const least = within(step).getByLabelText(/At least so long/) as HTMLSelectElement;
    await waitFor(() => expect(within(least).getAllByRole('option').length).toBeGreaterThan(3), patient);
    expect(least.value).toBe('/calculations/settling/figures/withinOne');
    expect([...least.options].map(({ value }) => value)).not.toContain('/parameters/length');
    fireEvent.change(least, { target: { value: '/calculations/settling/events/half-way' } });
    await waitFor(() => expect(text).toContain('least: { from: /calculations/settling/events/half-way }'));
    expect(readMethod(text, 'tray').problems).toEqual([]);
    await userEvent.click(within(step).getAllByRole('button', { name: /taken from … for At least/ })[0] as HTMLElement);
    await write(within(step).getByLabelText(/At least so long/), '2 d');
    await waitFor(() => expect(parse(text).steps['mark-blanks'].after[0].least).toBe('2 d'));
  });

  test('a calculation shows what it is told, and can be told more', async () => {
    show();
    const step = open(/2\. Sand it/);
    await within(step).findByRole('heading', { name: /Grits in order/ }, patient);
    const surface = (await within(step).findByLabelText(/^Surface/, {}, patient)) as HTMLSelectElement;
    expect(surface.value).toBe('planed');
    const more = within(step).getByLabelText('Tell it more') as HTMLSelectElement;
    await waitFor(() => expect(more.options.length).toBeGreaterThan(2), patient);
    const [, input] = [...more.options].map(({ value }) => value);
    fireEvent.change(more, { target: { value: input } });
    await waitFor(() => expect(Object.keys(parse(text).steps.sand.calculations.grits.with)).toContain(input));
  });

  test('an amount may be taken from a figure, and goes back to a number', async () => {
    show(tray);
    const oil = open(/Oil as chosen/);
    const amount = within(oil).getByLabelText('Amount 1') as HTMLSelectElement;
    expect(amount.value).toBe('/calculations/coats/uses/finish');
    await userEvent.click(within(oil).getByRole('button', { name: /taken from … for Amount 1/ }));
    expect(parse(text).materials.oil.needs).toEqual([{ amount: 1, per: 'batch' }]);
    await write(within(oil).getByLabelText('Amount 1'), '250 ml');
    await waitFor(() => expect(parse(text).materials.oil.needs).toEqual([{ amount: '250 ml', per: 'batch' }]));
  });

  test('a parameter of another kind gets what that kind needs, and woods to choose from', async () => {
    show();
    const entry = open(/1\. Length/);
    fireEvent.change(within(entry).getByLabelText('What it holds'), { target: { value: 'wood' } });
    await waitFor(() => expect(parse(text).parameters.length).toEqual({ kind: 'wood', label: 'Length', default: '' }));
    const wood = within(entry).getByLabelText('Usually') as HTMLSelectElement;
    await waitFor(() => expect(wood.options.length).toBeGreaterThan(100), patient);
    fireEvent.change(wood, { target: { value: 'white-ash' } });
    await waitFor(() => expect(parse(text).parameters.length.default).toBe('white-ash'));
  });
});

test('a list that cannot be fetched leaves what is written in its field', async () => {
  const names = { ...usualNames, wood: () => Promise.reject(new Error('no network')) };
  render(<MethodForm text={tray} problems={[]} names={names} onEdit={() => undefined} />);
  const wood = within(open(/1\. Wood/)).getByLabelText('Usually') as HTMLSelectElement;
  await new Promise((done) => setTimeout(done, 20));
  expect(wood.value).toBe('sugar-maple');
});

describe('what is wrong', () => {
  test('stands at its field, and is counted at its entry', () => {
    show(small, [
      problem(['title'], 'The title is odd.'),
      problem(['steps', 'sand', 'act'], 'No such act.'),
      problem(['steps', 'sand'], 'Nobody wears a mask.', 'stop'),
      problem(['sources', 0], 'No source.'),
    ]);
    const title = screen.getByLabelText('Title');
    expect(title.getAttribute('aria-invalid')).toBe('true');
    const described = (title.getAttribute('aria-describedby') ?? '')
      .split(' ')
      .map((id) => document.getElementById(id)?.textContent);
    expect(described.join(' ')).toContain('The title is odd.');
    expect(screen.getByText('2 problems')).toBeTruthy();
    const step = open(/2\. Sand it/);
    expect(within(step).getAllByText(/No such act\./)).toHaveLength(1);
    expect(within(step).getAllByText(/Nobody wears a mask\./)).toHaveLength(1);
    expect(screen.getByText(/No source\./)).toBeTruthy();
  });

  test('a text that cannot be read is not shown as if it could', () => {
    show(`${small}  - [`, [problem([], 'the list is never closed.')]);
    expect(screen.queryByLabelText('Title')).toBeNull();
    expect(screen.getByText(/the list is never closed/)).toBeTruthy();
  });

  test('an edit that cannot be written says so and changes nothing', async () => {
    show(`${small}  - [`);
    fireEvent.change(screen.getByLabelText('Title'), { target: { value: 'Another' } });
    fireEvent.blur(screen.getByLabelText('Title'));
    await screen.findByText(/could not be written/);
    expect(edits).toEqual([]);
  });
});

test('every control has a name, and a page that is only read has none to change it with', () => {
  show();
  for (const details of document.querySelectorAll('details')) {
    details.open = true;
    fireEvent(details, new Event('toggle'));
  }
  const controls = document.querySelectorAll('input, select, textarea, button');
  expect(controls.length).toBeGreaterThan(60);
  for (const control of controls) {
    const labels = (control as HTMLInputElement).labels;
    const name =
      control.getAttribute('aria-label') ??
      ([...(labels ?? [])].map((label) => label.textContent).join(' ') || control.textContent);
    expect(name?.trim(), control.outerHTML).not.toBe('');
  }
  cleanup();
  render(<Bench from={small} problems={[]} readOnly />);
  expect(screen.queryByRole('button')).toBeNull();
  expect((screen.getByLabelText('Title') as HTMLInputElement).readOnly).toBe(true);
});
