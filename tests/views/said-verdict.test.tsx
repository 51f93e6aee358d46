import { act, cleanup, render, screen } from '@testing-library/react';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { SaidVerdict } from '../../src/calculators/view/SaidVerdict.tsx';

beforeEach(() => vi.useFakeTimers());
afterEach(() => {
  cleanup();
  vi.useRealTimers();
});

const said = () => screen.getByRole('status').textContent;
const after = (ms: number) => act(() => vi.advanceTimersByTime(ms));

test('a verdict is said once the fields rest, the last one alone, and again only where it is another', () => {
  const { rerender } = render(<SaidVerdict words={undefined} />);
  after(5000);
  expect(said()).toBe('');
  for (const words of ['Good. Moves 1 mm.', 'Good. Moves 10 mm.', 'Take care. Moves 100 mm.']) {
    rerender(<SaidVerdict words={words} />);
    after(300);
    expect(said()).toBe('');
  }
  after(1000);
  expect(said()).toBe('Take care. Moves 100 mm.');
  // An input that cannot be read for a while, then the same answer: nothing is new.
  const node = screen.getByRole('status').firstChild;
  rerender(<SaidVerdict words={undefined} />);
  after(2000);
  rerender(<SaidVerdict words="Take care. Moves 100 mm." />);
  after(2000);
  expect(screen.getByRole('status').firstChild).toBe(node);
});
