import { readFileSync } from 'node:fs';
import { act, cleanup, fireEvent, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import {
  button,
  choose,
  comments,
  data,
  entry,
  fresh,
  opened,
  part,
  patient,
  put,
  show,
  small,
  text,
  write,
} from './shop-form-tools.tsx';

beforeEach(fresh);
afterEach(cleanup);

describe('what is typed', () => {
  test('and cannot be read stays, with its problem beside it', async () => {
    await show();
    const air = part('air');
    const night = within(air).getByLabelText<HTMLInputElement>(/^Temperature by night/);
    write(night, 'cold');
    await within(air).findByText(/“cold”/, {}, patient);
    expect(night.value).toBe('cold');
    expect(night.getAttribute('aria-invalid')).toBe('true');
    expect(document.querySelector('[data-part="shop-state"]')?.textContent).toContain('One thing to mend.');
  });

  test('goes into the record when the page is left in the middle of it', async () => {
    await show();
    const air = part('air');
    fireEvent.change(within(air).getByLabelText(/^Temperature by night/), { target: { value: '11' } });
    act(() => {
      window.dispatchEvent(new Event('pagehide'));
    });
    expect(data().air.night).toBe('11 °C');
  });

  test('is not lost when another window changes the record, whose change appears', async () => {
    await show();
    part('machines');
    const saw = entry('machines/1');
    const name = within(saw).getByLabelText<HTMLInputElement>(/^What people call it/);
    fireEvent.change(name, { target: { value: 'Band saw by the window' } });
    // The other window takes out the entry above and renames the shop.
    put(small.replace('name: Lakeside', 'name: Barn').replace(/ {2}# The old one[\s\S]*?(?= {2}# Bought)/, ''));
    expect(within(part('about')).getByLabelText<HTMLInputElement>('Name (needed)').value).toBe('Barn');
    expect(name.isConnected && name.value).toBe('Band saw by the window');
    fireEvent.blur(name);
    expect(data().machines).toEqual([{ id: 'saw', kind: 'band-saw', name: 'Band saw by the window' }]);
  });

  test('in an entry that another window takes out is told, and goes into no other entry', async () => {
    await show();
    part('machines');
    const planer = entry('machines/0');
    fireEvent.change(within(planer).getByLabelText(/^What people call it/), { target: { value: 'The green one' } });
    const without = small.replace(/ {2}# The old one[\s\S]*?(?= {2}# Bought)/, '');
    put(without);
    expect(text()).toBe(without);
    expect(await screen.findByText(/You had written “The green one”/)).toBeTruthy();
  });
});

test('a text that cannot be read is not shown as if it could: the place of it is a press away', async () => {
  await show(`${small}scales: [\n`);
  expect(screen.queryByLabelText('Name (needed)')).toBeNull();
  const go = await screen.findByRole('button', { name: /^Go to line \d+ of the text/ }, patient);
  const line = Number(/\d+/.exec(go.textContent ?? '')?.[0]);
  await userEvent.click(go);
  const box = screen.getByLabelText<HTMLTextAreaElement>('The record');
  await waitFor(() => expect(document.activeElement).toBe(box));
  expect(box.value.slice(0, box.selectionStart).split('\n')).toHaveLength(line);
});

test('the summary says what is known and what is missed, and goes to where it is filled in', async () => {
  await show();
  const summary = await waitFor(() => {
    const found = document.querySelector<HTMLElement>('[data-part="shop-summary"]');
    expect(found).not.toBeNull();
    return found as HTMLElement;
  }, patient);
  expect(summary.textContent).toContain('2 machines');
  expect(summary.textContent).toContain(
    'No temperature by night: cures are worked out as if nights were as warm as days.',
  );
  await userEvent.click(button(summary, /^Fill in.*no temperature by night/));
  const air = document.getElementById('shop-part-air') as HTMLDetailsElement;
  await waitFor(() => expect(air.open).toBe(true));
  expect(document.activeElement).toBe(air.querySelector('summary'));
});

test('every control of the sample has a name', async () => {
  await show(readFileSync('methods/shop.yaml', 'utf8'));
  for (const details of document.querySelectorAll<HTMLDetailsElement>('details[id^="shop-part-"]')) opened(details);
  for (const list of ['machines', 'bits', 'resins', 'materials']) entry(`${list}/0`);
  const controls = document.querySelectorAll('input:not([type="file"]), select, textarea, button');
  expect(controls.length).toBeGreaterThan(100);
  for (const control of controls) {
    const labels = [...((control as HTMLInputElement).labels ?? [])].map((label) => label.textContent).join(' ');
    expect((labels || control.textContent)?.trim(), control.outerHTML).not.toBe('');
  }
});

test('any edits in a row give the record that was wanted, and lose no comment', async () => {
  const seed = Number(process.env['KERF_SEED'] ?? 1);
  const kinds = ['planer', 'jointer', 'band-saw'];
  const edit = fc.oneof(
    fc.record({ do: fc.constant('night' as const), to: fc.integer({ min: 1, max: 30 }) }),
    fc.record({ do: fc.constant('machine' as const), to: fc.nat({ max: 2 }) }),
    fc.record({ do: fc.constant('call' as const), to: fc.nat(), words: fc.stringMatching(/^[\p{L}\d#:"'{,]{1,12}$/u) }),
    fc.record({ do: fc.constant('move' as const), to: fc.nat() }),
    fc.record({ do: fc.constant('grit' as const), to: fc.constantFrom(60, 100, 150, 240) }),
  );
  type Machine = { id: string; kind: string; name?: string };
  await fc.assert(
    fc.asyncProperty(fc.array(edit, { minLength: 3, maxLength: 8 }), async (edits) => {
      cleanup();
      await show();
      const wanted = data();
      const air = part('air');
      const machines = part('machines');
      const tools = part('tools');
      for (const each of edits) {
        const held: Machine[] = wanted.machines;
        const at = each.to % held.length;
        if (each.do === 'night') {
          write(within(air).getByLabelText(/^Temperature by night/), String(each.to));
          wanted.air.night = `${each.to} °C`;
        } else if (each.do === 'machine') {
          const kind = kinds[each.to] as string;
          choose(within(machines).getByLabelText('Another machine'), kind);
          fireEvent.click(button(machines, /^Add this machine/));
          const taken = held.map(({ id }) => id);
          const number = [1, 2, 3, 4, 5, 6, 7, 8, 9].find(
            (one) => !taken.includes(one === 1 ? kind : `${kind}-${one}`),
          );
          held.push({ id: number === 1 ? kind : `${kind}-${number}`, kind });
        } else if (each.do === 'call') {
          write(within(entry(`machines/${at}`)).getByLabelText(/^What people call it/), each.words);
          (held[at] as Machine).name = each.words;
        } else if (each.do === 'move') {
          if (at === 0) continue;
          fireEvent.click(button(entry(`machines/${at}`), /^Move up/));
          held.splice(at - 1, 0, ...held.splice(at, 1));
        } else {
          write(within(tools).getByLabelText('Add grits'), `P${each.to}`);
          fireEvent.click(button(tools, 'Add to Grits in the drawer'));
          wanted.grits.push(`P${each.to}`);
        }
      }
      expect(data()).toEqual(wanted);
      expect(
        comments(text())
          .filter((words) => words.startsWith('# '))
          .sort(),
      ).toEqual(expect.arrayContaining(comments(small).sort()));
    }),
    { numRuns: 6, seed },
  );
}, 60_000);
