import { cleanup, render, screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { renderToString } from 'react-dom/server';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { finishes } from '../../src/model/finish/index.ts';
import { viewOf } from './view-of.tsx';

const FinishCoats = await viewOf('finish-coats');

const figure = (name: string) => document.querySelector(`[data-figure="${name}"]`)?.textContent ?? '';
const list = () => screen.getByRole<HTMLSelectElement>('combobox', { name: 'Finish' });

beforeEach(() => window.history.replaceState(null, '', '/page'));
afterEach(cleanup);

test('the server writes the worked case, cautions with it', () => {
  const html = renderToString(<FinishCoats />);
  expect(html).toContain('To have at hand, all coats');
  expect(html).toContain('can catch fire by themselves');
});

describe('a choice of many is a list that folds', () => {
  test('with every finish, and the one of the address picked', () => {
    window.history.replaceState(null, '', '/page?finish=Varnish');
    render(<FinishCoats />);
    expect([...list().options].map(({ value }) => value)).toEqual(finishes.map(({ id }) => id));
    expect(list().value).toBe('varnish');
    expect(figure('use')).toContain('30 d');
  });
  test('picking another changes the answer', async () => {
    render(<FinishCoats />);
    await userEvent.selectOptions(list(), 'Mineral oil');
    expect(figure('use')).toContain('It never cures');
    await waitFor(() => expect(window.location.search).toContain('finish=mineral-oil'));
  });
  test('what is none of them is kept, with the error beside it', () => {
    window.history.replaceState(null, '', '/page?finish=snake-oil');
    render(<FinishCoats />);
    expect(list().value).toBe('snake-oil');
    expect(list().getAttribute('aria-invalid')).toBe('true');
    expect(screen.getByText(/“snake-oil” is not one of/)).toBeTruthy();
  });
});

test('few choices stay open', () => {
  render(<FinishCoats />);
  expect(screen.getByRole('radiogroup', { name: /^Coated/ })).toBeTruthy();
});
