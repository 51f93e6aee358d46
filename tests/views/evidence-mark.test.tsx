import { cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, test } from 'vitest';
import { CautionList } from '../../src/calculators/view/CautionList.tsx';
import { EvidenceMark, SentenceMark } from '../../src/calculators/view/EvidenceMark.tsx';
import { ResultView } from '../../src/calculators/view/ResultView.tsx';
import { basisWords, type Figure, type Result } from '../../src/model/evidence/index.ts';
import { defaultUnits } from '../../src/model/quantity/index.ts';

afterEach(cleanup);

const citation = { source: 'fpl-gtr-282', locator: 'Table 4-3', seen: 'source-text' } as const;

describe('the mark of how a figure is known', () => {
  test('is one sign for a published figure, and its source unfolds when pressed', async () => {
    render(<EvidenceMark basis="published" citation={citation} />);
    const sign = screen.getByRole('button', { name: /^published/ });
    expect(sign.getAttribute('aria-expanded')).toBe('false');
    const words = document.getElementById(sign.getAttribute('aria-controls') ?? '');
    expect(words?.textContent).toContain('Table 4-3 (read in the work itself)');
    expect(words?.hasAttribute('data-open')).toBe(false);
    await userEvent.click(sign);
    expect(sign.getAttribute('aria-expanded')).toBe('true');
    expect(words?.hasAttribute('data-open')).toBe(true);
    // Escape puts it away again, and leaves the reader where they are.
    await userEvent.keyboard('{Escape}');
    expect(words?.hasAttribute('data-open')).toBe(false);
    expect(sign.getAttribute('aria-expanded')).toBe('false');
    expect(document.activeElement).toBe(sign);
  });

  test('is nothing to press where the source stands beside it', () => {
    render(<EvidenceMark basis="published" citation={citation} cited />);
    expect(screen.queryByRole('button')).toBeNull();
    expect(document.body.textContent).toBe('published');
  });

  test.each(['derived', 'supplier-sheet', 'shop-practice', 'memory'] as const)(
    'in a sentence is a small sign for %s too, which unfolds',
    async (basis) => {
      render(<SentenceMark basis={basis} />);
      const sign = screen.getByRole('button', { name: basisWords[basis] });
      const words = document.getElementById(sign.getAttribute('aria-controls') ?? '');
      expect(words?.textContent).toBe(` (${basisWords[basis]})`);
      expect(words?.hasAttribute('data-open')).toBe(false);
      await userEvent.click(sign);
      expect(words?.hasAttribute('data-open')).toBe(true);
    },
  );

  test.each(['derived', 'supplier-sheet', 'shop-practice', 'memory'] as const)('is written out for %s', (basis) => {
    render(<EvidenceMark basis={basis} />);
    expect(screen.getByText(basisWords[basis])).toBeTruthy();
    expect(screen.queryByRole('button')).toBeNull();
  });
});

const figure = (more: Partial<Figure>): Figure => ({
  label: 'Swing',
  value: 50_400,
  unit: 's',
  digits: 2,
  basis: 'derived',
  ...more,
});

const result: Result = {
  verdict: { level: 'care', text: 'Leave room.' },
  figures: {
    swing: figure({ low: 50_200, high: 50_500, band: 'of the sources' }),
    other: figure({ label: 'Other', value: 40_000, low: 30_000, high: 50_000, band: 'of the sources' }),
  },
  cautions: [
    { id: 'own', level: 'warning', text: 'Mind the end.', why: 'It splits.', basis: 'shop-practice', own: true },
    { id: 'all', level: 'note', text: 'Averages.', basis: 'shop-practice' },
  ],
  evidence: [],
};

describe('an answer', () => {
  const at = (text: string) => document.body.textContent?.indexOf(text) ?? -1;

  test('begins with its verdict, the headline beside it, then this case’s cautions and the other figures', () => {
    render(<ResultView result={result} units={defaultUnits} headingLevel={2} />);
    const order = ['Leave room.', '14 h', 'Mind the end.', 'Other', 'Averages.'].map(at);
    expect(order.every((place) => place >= 0)).toBe(true);
    expect(order).toEqual([...order].sort((a, b) => a - b));
    expect(document.querySelector('[data-part="verdict"]')?.parentElement?.querySelector('output')?.textContent).toBe(
      '14 h',
    );
  });

  test('shows a band only where it says more than the figure', () => {
    render(<ResultView result={result} units={defaultUnits} headingLevel={2} />);
    expect(document.querySelector('[data-figure="swing"]')?.textContent).not.toMatch(/14 h.*14 h/);
    expect(document.querySelector('[data-figure="other"]')?.textContent).toContain('8 h to 14 h');
  });

  test('folds reason and source of this case’s cautions, and only the reason of the others', () => {
    render(<CautionList cautions={result.cautions} />);
    const [own, all] = screen.getAllByRole('listitem');
    const fold = own?.querySelector('[class*="why"]');
    expect(fold?.textContent).toContain('It splits.');
    expect(fold?.textContent).toContain('common practice');
    expect(own?.querySelector('button')?.getAttribute('aria-expanded')).toBe('false');
    expect(all?.querySelector('button')).toBeNull();
    expect(all?.textContent).toContain('common practice');
  });
});
