import { act, cleanup, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { changeKept } from '../../src/calculators/view/kept-sheets.ts';
import { keepUnits } from '../../src/calculators/view/units.tsx';
import { readShop } from '../../src/method/shop/index.ts';
import { defaultUnits } from '../../src/model/quantity/index.ts';
import {
  button,
  choose,
  comments,
  data,
  entry,
  fresh,
  part,
  patient,
  show,
  small,
  text,
  write,
} from './shop-form-tools.tsx';

beforeEach(fresh);
afterEach(cleanup);

describe('each part of the form changes the text, whose comments stay', () => {
  test('the shop', async () => {
    await show();
    const about = part('about');
    write(within(about).getByLabelText('Name (needed)'), 'Lakeside workshop');
    expect(text()).toBe(small.replace('name: Lakeside #', 'name: Lakeside workshop #'));
    write(within(about).getByLabelText('About it'), 'A shop: by the lake.');
    expect(data().about).toBe('A shop: by the lake.');
    const zone = within(about).getByRole('combobox', { name: 'Time zone (needed)' });
    await userEvent.clear(zone);
    await userEvent.type(zone, 'helsinki');
    await userEvent.keyboard('{ArrowDown}{Enter}');
    expect(data().zone).toBe('Europe/Helsinki');
    const currency = within(about).getByRole('combobox', { name: 'Currency (needed)' });
    await userEvent.clear(currency);
    await userEvent.type(currency, 'norwegian krone');
    await userEvent.keyboard('{ArrowDown}{Enter}');
    expect(data().currency).toBe('NOK');
    expect(comments(text())).toEqual(comments(small));
  });

  test('its air: a bare number gets the unit of the reader, and a place is found by its name', async () => {
    await show();
    const air = part('air');
    write(within(air).getByLabelText(/^Temperature by night/), '14');
    expect(text()).toContain('air: { day: 20 °C, night: 14 °C } # in winter');
    act(() => keepUnits({ ...defaultUnits, system: 'inch' }));
    write(within(air).getByLabelText(/^Temperature by night/), '57');
    expect(data().air.night).toBe('57 °F');
    expect(within(air).getByText(/Such as 57 °F\./)).toBeTruthy();
    const place = await within(air).findByRole('combobox', { name: /^Nearest place/ }, patient);
    await userEvent.type(place, 'duluth');
    await userEvent.keyboard('{ArrowDown}{Enter}');
    expect(data().air.place).toBe('duluth-mn');
    write(within(air).getByLabelText(/^Temperature by night/), '');
    expect(data().air).toEqual({ day: '20 °C', place: 'duluth-mn' });
  });

  test('a place that the tables do not have is told, with a way out', async () => {
    await show(small.replace('air: { day: 20 °C }', 'air: { place: dulut-mn }'));
    const air = part('air');
    await within(air).findByText(/is not a place in the climate tables.*Did you mean duluth-mn/, {}, patient);
  });

  test('machines: a kind asks for its own limits; one is added, moved, taken out and had back with its comments', async () => {
    await show();
    const machines = part('machines');
    choose(within(machines).getByLabelText('Another machine'), 'router-table');
    await userEvent.click(button(machines, /^Add this machine/));
    expect(data().machines[2]).toEqual({ id: 'router-table', kind: 'router-table' });
    const router = entry('machines/2');
    write(within(router).getByLabelText(/^Fastest speed/), '22000');
    await userEvent.type(within(router).getByLabelText('Add collets'), '1/4 in, 8{Enter}');
    write(within(router).getByLabelText(/^How many like it/), '2');
    write(within(router).getByLabelText(/^Power at work/), '1.5 kW');
    write(within(router).getByLabelText(/^Price of one more/), '210');
    expect(data().machines[2]).toEqual({
      id: 'router-table',
      kind: 'router-table',
      limits: { mostTurns: '22000 /min', collets: ['1/4 in', '8 mm'] },
      count: 2,
      power: '1.5 kW',
      price: 210,
    });
    expect(readShop(text()).problems).toEqual([]);
    await userEvent.click(button(router, /^Move up/));
    expect(data().machines.map(({ id }: { id: string }) => id)).toEqual(['planer', 'router-table', 'saw']);
    expect(text()).toContain('  # Bought second-hand.\n  - { id: saw,');
    const before = text();
    await userEvent.click(button(entry('machines/2'), /^Remove this machine/));
    expect(data().machines).toHaveLength(2);
    await userEvent.click(button(machines, 'Put it back'));
    expect(text()).toBe(before);
  });

  test('an entry is had back to its place though something else was changed meanwhile', async () => {
    await show();
    const machines = part('machines');
    await userEvent.click(button(entry('machines/0'), /^Remove this machine/));
    write(within(part('about')).getByLabelText('Name (needed)'), 'Barn');
    await userEvent.click(button(machines, 'Put it back'));
    expect(data()).toEqual({ ...parse(small), name: 'Barn' });
  });

  test('of another kind, a limit that it does not have stays to be seen and is taken out', async () => {
    await show();
    part('machines');
    const planer = entry('machines/0');
    choose(within(planer).getByLabelText('What machine it is'), 'drill-press');
    expect(text()).toContain('kind: drill-press # with a new belt');
    await within(planer).findByText(/No limit of a drill press/);
    await userEvent.click(button(planer, /^Remove width/));
    expect(data().machines[0]).not.toHaveProperty('limits');
    expect(readShop(text()).problems).toEqual([]);
  });

  test('a short name is proposed, unlike every other of the record', async () => {
    await show();
    const tools = part('tools');
    const clamps = tools.querySelector<HTMLElement>('[data-part="clamps"]') as HTMLElement;
    const name = within(clamps).getByLabelText(/^Another kind of clamp/);
    await userEvent.type(name, 'Planer{Enter}');
    await userEvent.type(name, 'Long clamp{Enter}');
    expect(data().clamps).toEqual([
      { id: 'planer-2', name: 'Planer', count: 1 },
      { id: 'long-clamp', name: 'Long clamp', count: 1 },
    ]);
    const clamp = entry('clamps/1');
    write(within(clamp).getByLabelText(/^Short name/), 'bar-clamp');
    expect(data().clamps[1].id).toBe('bar-clamp');
    expect(clamp.isConnected && (clamp as HTMLDetailsElement).open).toBe(true);
    write(within(clamp).getByLabelText(/^Short name/), 'saw');
    await within(clamp).findByText(/is the id of something else already/, {}, patient);
  });

  test('a scale and a bit ask for what they cannot be without', async () => {
    await show();
    const tools = part('tools');
    await userEvent.type(within(tools).getByLabelText('Another scale, by its name'), 'Pigment scale{Enter}');
    const scale = entry('scales/1');
    await within(scale).findByText(/Nothing was entered where a weight is needed/, {}, patient);
    write(within(scale).getByLabelText('Smallest division (needed)'), '0.1');
    write(within(scale).getByLabelText(/^Most that it weighs/), '500 g');
    expect(data().scales[1]).toEqual({
      id: 'pigment-scale',
      name: 'Pigment scale',
      division: '0.1 g',
      capacity: '500 g',
    });
    await userEvent.type(within(tools).getByLabelText('Another router bit, by its name'), 'Straight bit{Enter}');
    const bit = entry('bits/0');
    write(within(bit).getByLabelText('Cutting diameter (needed)'), '1/4 in');
    choose(within(bit).getByLabelText('Where its bearing sits'), 'none');
    await userEvent.type(within(tools).getByLabelText('Another mould, by its name'), 'Tray dam{Enter}');
    expect(data().moulds).toEqual([{ id: 'tray-dam', name: 'Tray dam' }]);
    expect(readShop(text()).problems).toEqual([]);
    expect(comments(text())).toEqual(comments(small));
  });

  test('grits: several at once, and a number without a grading is told where it stands', async () => {
    await show();
    const tools = part('tools');
    await userEvent.type(within(tools).getByLabelText('Add grits'), 'P180, P220, 320{Enter}');
    expect(text()).toContain('grits: [P80, P120, P180, P220, "320"] # in the drawer');
    await within(tools).findByText(/does not say its grading/, {}, patient);
    write(within(tools).getByLabelText('Grit 5'), 'P320');
    await userEvent.click(button(tools, 'Remove P80'));
    expect(data().grits).toEqual(['P120', 'P180', 'P220', 'P320']);
  });

  test('a resin has the fields of a data sheet, or comes from a kept one', async () => {
    act(() => {
      changeKept(() => [{ name: 'Casting, sheet of March', potLife: '6 h' }]);
    });
    await show();
    const resins = part('resins');
    await userEvent.type(within(resins).getByLabelText(/^Another resin/), 'Coating resin{Enter}');
    const coating = entry('resins/0');
    write(within(coating).getByLabelText(/^Mix ratio by volume/), '1:1');
    write(within(coating).getByLabelText(/^Greatest depth of one pour/), '3');
    await waitFor(() =>
      expect(data().resins[0].sheet).toEqual({ name: 'Coating resin', mixByVolume: '1:1', greatestDepth: '3 mm' }),
    );
    choose(within(resins).getByLabelText(/^Or one of my kept/), 'Casting, sheet of March');
    await userEvent.click(button(resins, /^Take this data sheet/));
    expect(data().resins[1]).toEqual({
      id: 'casting-sheet-of-march',
      sheet: { name: 'Casting, sheet of March', potLife: '6 h' },
    });
    expect(readShop(text()).problems).toEqual([]);
  });

  test('hours: several in a day, one day as another, midnight, a holiday and a session', async () => {
    await show();
    const hours = part('hours');
    const day = (name: string) => within(hours).getByRole('group', { name: new RegExp(`^${name}`) });
    await userEvent.click(button(day('Thursday'), /^As on Tuesday/));
    expect(data().calendar.week).toEqual({
      tue: ['09:00-12:00', '13:00-17:00'],
      thu: ['09:00-12:00', '13:00-17:00'],
    });
    const [, second] = within(day('Thursday')).getAllByLabelText(/^Until/);
    write(second as HTMLElement, '00:00');
    expect(data().calendar.week.thu[1]).toBe('13:00-24:00');
    await userEvent.click(button(day('Monday'), /^Add hours/));
    expect(Object.keys(data().calendar.week)).toEqual(['mon', 'tue', 'thu']);
    for (const remove of within(day('Monday')).getAllByRole('button', { name: /^Remove/ }))
      await userEvent.click(remove);
    expect(Object.keys(data().calendar.week)).toEqual(['tue', 'thu']);
    choose(within(hours).getByLabelText('Another holiday, its day'), '2027-12-24');
    await userEvent.click(button(hours, /^Add this holiday/));
    choose(within(hours).getByLabelText('Another session, its day'), '2027-01-12');
    await userEvent.click(button(hours, /^Add this session/));
    expect(data().calendar).toMatchObject({ holidays: ['2027-12-24'], sessions: ['2027-01-12 09:00-17:00'] });
    expect(readShop(text()).problems).toEqual([]);
    expect(comments(text())).toEqual(comments(small));
  });

  test('people, materials with packs, overhead, energy, fees, and one of margin and mark-up', async () => {
    await show();
    const people = part('people');
    await userEvent.type(within(people).getByLabelText(/^Another sort of helper/), 'Maker{Enter}');
    write(within(entry('people/0')).getByLabelText(/^For an hour of their work/), '26.50');
    part('materials');
    const oil = entry('materials/0');
    await userEvent.click(button(oil, 'Add a pack'));
    const size = within(oil).getAllByLabelText('What is in it (needed)')[1] as HTMLElement;
    write(size, '1 gal');
    write(within(oil).getAllByLabelText('Price of the pack (needed)')[1] as HTMLElement, '31.00');
    write(within(oil).getByLabelText(/^On the shelf now/), '20 g');
    await within(oil).findByText(/cannot be compared with/, {}, patient);
    write(within(oil).getByLabelText(/^Density/), '0.86');
    await userEvent.click(within(oil).getByLabelText('It is worn out or thrown away'));
    expect(data().materials[0]).toEqual({
      id: 'oil',
      name: 'Mineral oil',
      packs: [
        { size: '500 ml', price: 8.9 },
        { size: '1 gal', price: 31 },
      ],
      onHand: '20 g',
      density: '0.86 g/ml',
      consumable: true,
    });
    const prices = part('prices');
    write(within(prices).getByLabelText(/^For a month/), '640');
    await within(prices).findByText(/Give one of the two/, {}, patient);
    write(within(prices).getByLabelText(/^Hours worked in a month/), '80');
    write(within(prices).getByLabelText(/^Price of a kilowatt-hour/), '0.15');
    await userEvent.type(within(prices).getByLabelText('Another fee, by its name'), 'Stall{Enter}');
    write(within(entry('fees/0')).getByLabelText(/^Share of the price/), '10');
    write(within(prices).getByLabelText(/^Mark-up wanted/), '60');
    await within(prices).findByText(/Keep one of them/, {}, patient);
    write(within(prices).getByLabelText(/^Margin wanted/), '');
    expect(data()).toMatchObject({
      people: [{ id: 'maker', name: 'Maker', rate: 26.5 }],
      overhead: { perMonth: 640, hoursPerMonth: '80 h' },
      energy: { price: 0.15 },
      fees: [{ id: 'stall', name: 'Stall', percent: '10 %' }],
      markup: '60 %',
    });
    expect(readShop(text()).problems).toEqual([]);
    expect(comments(text())).toEqual(comments(small));
    write(within(prices).getByLabelText(/^For a month/), '');
    write(within(prices).getByLabelText(/^Hours worked in a month/), '');
    expect(data()).not.toHaveProperty('overhead');
  });
});
