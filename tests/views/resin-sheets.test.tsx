import { act, cleanup, fireEvent, render, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { useState } from 'react';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { resinSheetForm } from '../../src/calculators/kit/resin-sheet.ts';
import { sheetText, writeSheetFile } from '../../src/calculators/kit/resin-sheet-file.ts';
import { ResinControl } from '../../src/calculators/view/ResinControl.tsx';

// The page's surroundings are the framework's; what is tried here is the page itself.
vi.mock('../../src/site/page/Page.tsx', () => ({
  Page: ({ children }: { children: React.ReactNode }) => <main>{children}</main>,
}));
const { default: ResinSheets } = await import('../../src/site/resin/ResinSheets.tsx');

const key = 'kerf-resin-sheets';
const example = { ...resinSheetForm.example.metric, name: 'Bench resin' };
const stored = () => JSON.parse(localStorage.getItem(key) ?? '{"sheets":[]}').sheets as Record<string, string>[];
const part = (name: string) => document.querySelector(`[data-part="${name}"]`) as HTMLElement;
const field = (name: string) => document.querySelector(`[data-field="${name}"] input`) as HTMLInputElement;
const type = (name: string, value: string) => fireEvent.change(field(name), { target: { value } });
const press = (name: string | RegExp, inside = document.body) =>
  userEvent.click(within(inside).getByRole('button', { name }));

function pick(name: string, text: string): void {
  const file = new File([text], name, { type: 'application/json' });
  fireEvent.change(part('sheet-file'), { target: { files: [file] } });
}

beforeEach(() => localStorage.clear());
afterEach(() => {
  cleanup();
  vi.restoreAllMocks();
});

describe('the page of sheets', () => {
  test('keeps a sheet that was entered, shows it, and forgets the form', async () => {
    render(<ResinSheets />);
    type('name', 'Bench resin');
    type('mixByVolume', '2:1');
    type('potLife', '6 h');
    await press('Keep this sheet');
    expect(stored()).toEqual([{ name: 'Bench resin', mixByVolume: '2:1', potLife: '6 h' }]);
    expect(part('kept-sheets').textContent).toContain('2:1 by volume, pot life 6 h');
    expect(field('name').value).toBe('');
  });

  test('a sheet that clashes or leaves something out is kept, and told so there and then', async () => {
    render(<ResinSheets />);
    const clashing = {
      name: 'Bench resin',
      mixByVolume: '2:1',
      mixByWeight: '100:60',
      densityA: '1.16 g/ml',
      densityB: '1.00 g/ml',
      potLife: '45 min',
      potLifeMass: '454 g',
      cure: '7 d',
      foodService: '3 d',
    };
    for (const [name, value] of Object.entries(clashing)) type(name, value);
    const said = () => part('sheet-review').textContent ?? '';
    for (const before of [true, false]) {
      if (!before) {
        await press('Keep this sheet');
        expect(stored()).toEqual([clashing]);
      }
      expect(said()).toMatch(/ratios of Bench resin differ by 28\.2 %/);
      expect(said()).toMatch(/day for food, 3 d, comes before its own full cure, 7 d/);
      expect(said()).toMatch(/No greatest depth: no pour can be judged/);
      expect(said()).toMatch(/No recoat window/);
      expect(said()).not.toMatch(/No pot life|No mix ratio|No full cure/);
    }
  });

  test('a kept sheet that contradicts itself bears its danger whenever the list is seen, and offers no dose', () => {
    const torn = { ...example, name: 'Torn resin', mixByVolume: '2:1', mixByWeight: '1:1' };
    localStorage.setItem(key, writeSheetFile([torn, example]));
    render(<ResinSheets />);
    const [first, second] = [...part('kept-sheets').querySelectorAll('li')];
    expect(first?.textContent).toMatch(/Contradicts itself: its ratios by volume and by weight differ by/);
    expect(first?.textContent).toContain('See why nothing is dosed by it');
    expect(first?.textContent).not.toContain('Dose with it');
    expect(second?.textContent).not.toContain('Contradicts itself');
    expect(second?.textContent).toContain('Dose with it');
  });

  test('a bare mass is not read in the reader’s unit: it is refused, with both ways out', async () => {
    localStorage.setItem('kerf-units', 'inch');
    render(<ResinSheets />);
    type('name', 'Bench resin');
    type('potLife', '30 min');
    type('potLifeMass', '100');
    await press('Keep this sheet');
    expect(screen.getByText(/“100” has no unit, and may be g or oz\. Write 100 g, or 100 oz/)).toBeTruthy();
    expect(stored()).toEqual([]);
    expect(field('potLifeMass').placeholder).toContain(' g');
  });

  test('says what is to mend and keeps nothing meanwhile', async () => {
    render(<ResinSheets />);
    expect(screen.queryByText(/Nothing was given/)).toBeNull();
    type('potLife', 'soon');
    await press('Keep this sheet');
    expect(screen.getByText(/^Not kept yet; to mend: name of the sheet, pot life\.$/)).toBeTruthy();
    expect(screen.getByText(/“soon” is not a time/)).toBeTruthy();
    expect(localStorage.getItem(key)).toBeNull();
  });

  test('what is typed outlives the page', () => {
    render(<ResinSheets />);
    type('name', 'Half a sheet');
    type('densityA', 'about 1.1');
    cleanup();
    render(<ResinSheets />);
    expect(field('name').value).toBe('Half a sheet');
    expect(field('densityA').value).toBe('about 1.1');
  });

  test('an emptied form is put back', async () => {
    render(<ResinSheets />);
    type('name', 'Half a sheet');
    await press('Empty the form');
    expect(field('name').value).toBe('');
    await press('Put back what was in it');
    expect(field('name').value).toBe('Half a sheet');
  });

  test('a half-typed sheet that gives way to a change is put back', async () => {
    localStorage.setItem(key, writeSheetFile([example]));
    render(<ResinSheets />);
    type('name', 'Half a sheet');
    await press('Change Bench resin');
    expect(field('name').value).toBe('Bench resin');
    await press('Put back what was in it');
    expect(field('name').value).toBe('Half a sheet');
    expect(screen.queryByRole('button', { name: 'Put back what was in it' })).toBeNull();
  });

  test('leads to the first entry to mend, and from a kept sheet to its use', async () => {
    render(<ResinSheets />);
    type('name', 'Bench resin');
    type('potLife', '45');
    await press('Keep this sheet');
    expect(document.activeElement).toBe(field('potLife'));
    type('potLife', '45 min');
    await press('Keep this sheet');
    const use = within(part('enter-sheet')).getByRole<HTMLAnchorElement>('link', { name: 'Dose with it' });
    expect(new URL(use.href).searchParams.get('resin')).toBe(sheetText({ name: 'Bench resin', potLife: '45 min' }));
  });

  test('asks before a sheet of the same name is replaced', async () => {
    localStorage.setItem(key, writeSheetFile([example]));
    render(<ResinSheets />);
    type('name', 'bench resin');
    type('potLife', '5 h');
    await press('Keep this sheet');
    expect(stored()).toEqual([example]);
    await press('Keep both');
    expect(stored().map(({ name }) => name)).toEqual(['Bench resin', 'bench resin (2)']);
  });

  test('a change keeps one sheet, also under another name', async () => {
    localStorage.setItem(key, writeSheetFile([example]));
    render(<ResinSheets />);
    await press('Change Bench resin');
    type('name', 'Bench resin, April');
    type('potLife', '5 h');
    await press('Keep this sheet');
    expect(stored()).toEqual([{ ...example, name: 'Bench resin, April', potLife: '5 h' }]);
  });

  test('a removed sheet can be put back', async () => {
    localStorage.setItem(key, writeSheetFile([example]));
    render(<ResinSheets />);
    await press('Remove Bench resin');
    expect(stored()).toEqual([]);
    await press('Put it back');
    expect(stored()).toEqual([example]);
  });

  test('another tab’s change shows', () => {
    render(<ResinSheets />);
    act(() => {
      localStorage.setItem(key, writeSheetFile([example]));
      window.dispatchEvent(new Event('storage'));
    });
    expect(part('kept-sheets').textContent).toContain('Bench resin');
  });

  test('warns where the two ratios disagree, with both numbers', () => {
    render(<ResinSheets />);
    for (const [name, value] of Object.entries(example)) if (field(name)?.type === 'text') type(name, value);
    expect(screen.queryByText(/two ratios of .* differ/)).toBeNull();
    type('mixByWeight', '100:50');
    expect(screen.getByText(/two ratios of .* differ by 13\.8 %/)).toBeTruthy();
  });
});

describe('stored text that is damaged', () => {
  test('is shown as such, is put by before anything is written, and costs no other sheet', async () => {
    const text = writeSheetFile([example]).replace(']', ', null]');
    localStorage.setItem(key, text);
    render(<ResinSheets />);
    expect(part('kept-sheets').textContent).toContain('Bench resin');
    expect(part('kept-sheets').textContent).toContain('1 of 2 entries are no sheet');
    type('name', 'Second');
    await press('Keep this sheet');
    expect(stored().map(({ name }) => name)).toEqual(['Bench resin', 'Second']);
    expect(localStorage.getItem('kerf-resin-sheets-damaged')).toBe(text);
  });

  test('that is no JSON at all is put by whole', async () => {
    localStorage.setItem(key, '{"format":');
    render(<ResinSheets />);
    expect(part('kept-sheets').textContent).toContain('cannot be read whole');
    type('name', 'First');
    await press('Keep this sheet');
    expect(localStorage.getItem('kerf-resin-sheets-damaged')).toBe('{"format":');
    expect(part('kept-sheets').textContent).toContain('is put by');
    await press('Throw it away');
    expect(localStorage.getItem('kerf-resin-sheets-damaged')).toBeNull();
    expect(stored()).toEqual([{ name: 'First' }]);
  });
});

describe('a file', () => {
  test('that is damaged is refused whole and changes nothing', async () => {
    localStorage.setItem(key, writeSheetFile([example]));
    render(<ResinSheets />);
    const before = localStorage.getItem(key);
    pick('shelf.json', writeSheetFile([{ name: 'Good' }, { name: 'Bad', potLife: 'soon' }]));
    await screen.findByText(/shelf\.json, sheet 2, “Bad”, pot life: “soon” is not a time.*what is kept is unchanged/);
    expect(localStorage.getItem(key)).toBe(before);
  });

  test('of many sheets is taken, and asks for each name that is taken', async () => {
    localStorage.setItem(key, writeSheetFile([example]));
    render(<ResinSheets />);
    pick('shelf.json', writeSheetFile([{ name: 'Other' }, { ...example, potLife: '5 h' }]));
    await screen.findByText(/Taken from shelf\.json: “Other”\. Kept already, with other entries: “Bench resin”\./);
    expect(stored()).toEqual([example, { name: 'Other' }]);
    await press('Leave the file’s out Bench resin');
    expect(stored()).toEqual([example, { name: 'Other' }]);
    pick('shelf.json', writeSheetFile([{ ...example, potLife: '5 h' }]));
    await press(/^Replace the kept one/, await waitFor(() => part('sheet-files')));
    expect(stored()).toEqual([{ ...example, potLife: '5 h' }, { name: 'Other' }]);
  });
});

describe('a browser that stores nothing', () => {
  test('keeps the sheet for the page and says so', async () => {
    const forbidden = vi.spyOn(window, 'localStorage', 'get').mockImplementation(() => {
      throw new DOMException('forbidden', 'SecurityError');
    });
    render(<ResinSheets />);
    type('name', 'First');
    await press('Keep this sheet');
    expect(screen.getByText(/“First” lasts only as long as this page/)).toBeTruthy();
    expect(part('kept-sheets').textContent).toContain('First');
    forbidden.mockRestore();
    type('name', 'Second');
    await press('Keep this sheet');
    expect(stored().map(({ name }) => name)).toEqual(['First', 'Second']);
  });
});

function Chooser({ start }: { start: string }) {
  const [value, setValue] = useState(start);
  return (
    <>
      <ResinControl
        id="resin"
        value={value}
        meta={{ kind: 'resin', label: 'Resin', examples: [] }}
        units={{ system: 'metric', inches: 'decimal' }}
        invalid={false}
        describedBy={undefined}
        onChange={setValue}
      />
      <output>{value}</output>
    </>
  );
}

describe('the choice in a calculator', () => {
  const select = () => part('resin') as HTMLSelectElement;
  const value = () => document.querySelector('output')?.textContent;

  test('offers the kinds and the kept sheets', async () => {
    localStorage.setItem(key, writeSheetFile([example]));
    render(<Chooser start="medium-2-1" />);
    expect(select().selectedOptions[0]?.textContent).toBe('Medium epoxy, 2:1 by volume');
    await userEvent.selectOptions(select(), 'Bench resin');
    expect(value()).toBe(sheetText(example));
  });

  test('offers to keep a sheet that only the address carries', async () => {
    render(<Chooser start={sheetText(example)} />);
    expect(select().selectedOptions[0]?.textContent).toContain('Bench resin (in the address)');
    await press('Keep this sheet');
    expect(stored()).toEqual([example]);
    expect(select().selectedOptions[0]?.textContent).toBe('Bench resin');
  });

  test('does not lose a sheet that only the address carries when another is picked', async () => {
    render(<Chooser start={sheetText(example)} />);
    await userEvent.selectOptions(select(), 'medium-2-1');
    expect(value()).toBe('medium-2-1');
    await userEvent.selectOptions(select(), 'Bench resin (not kept)');
    expect(value()).toBe(sheetText(example));
    await press('Keep this sheet');
    await userEvent.selectOptions(select(), 'medium-2-1');
    expect(screen.queryByText(/not kept/)).toBeNull();
  });

  test('never replaces a namesake unasked', async () => {
    localStorage.setItem(key, writeSheetFile([{ ...example, potLife: '5 h' }]));
    render(<Chooser start={sheetText(example)} />);
    expect(screen.queryByRole('button', { name: 'Keep this sheet' })).toBeNull();
    await press('Keep both');
    expect(stored().map(({ name }) => name)).toEqual(['Bench resin', 'Bench resin (2)']);
    expect(value()).toContain('Bench resin (2)');
  });

  test('shows a text that names no resin, and lets another be picked', async () => {
    render(<Chooser start="{broken" />);
    expect(select().selectedOptions[0]?.textContent).toBe('Not to be read: pick another');
    await userEvent.selectOptions(select(), 'slow-casting-2-1');
    expect(value()).toBe('slow-casting-2-1');
  });
});
