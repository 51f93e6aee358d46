import { runInNewContext } from 'node:vm';
import { act, cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { renderToString } from 'react-dom/server';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { systemOfRegion } from '../../src/model/quantity/index.ts';

/** The part anew, as a page just opened has it, in a browser of these languages. */
async function opened(languages: readonly string[]) {
  vi.spyOn(navigator, 'languages', 'get').mockReturnValue(languages);
  vi.resetModules();
  const units = await import('../../src/calculators/view/units.tsx');
  return { ...units, shown: <Words useUnits={units.useUnits} /> };
}

function Words({ useUnits }: { useUnits: () => { system: string } }) {
  return <p>{useUnits().system}</p>;
}

beforeEach(() => window.localStorage.clear());
afterEach(() => {
  cleanup();
  vi.restoreAllMocks();
  document.documentElement.removeAttribute('data-units-guess');
});

describe('the units of a first visit', () => {
  test.each([
    [['en-US'], 'inch'],
    [['en-GB'], 'metric'],
    [['my-MM'], 'inch'],
  ] as const)('for %j are those of the region: %s', async (languages, system) => {
    const { shown } = await opened(languages);
    render(shown);
    expect(screen.getByText(system)).toBeTruthy();
  });

  test('are metric in the page as sent, whoever opens it', async () => {
    const { shown } = await opened(['en-US']);
    expect(renderToString(shown)).toBe('<p>metric</p>');
  });

  test('give way to a choice, which is kept and takes the line away', async () => {
    const { shown, UnitsGuess } = await opened(['en-US']);
    document.documentElement.setAttribute('data-units-guess', 'inch');
    render(
      <>
        <UnitsGuess />
        {shown}
      </>,
    );
    await userEvent.click(screen.getByRole('button', { name: 'Use mm' }));
    expect(screen.getByText('metric')).toBeTruthy();
    expect(window.localStorage.getItem('kerf-units')).toBe('metric thirty-seconds');
    expect(document.documentElement.hasAttribute('data-units-guess')).toBe(false);
    cleanup();
    const again = await opened(['en-US']);
    render(again.shown);
    expect(screen.getByText('metric')).toBeTruthy();
  });

  test('follow a choice made in another tab, on the root of the page too', async () => {
    const { shown } = await opened(['en-US']);
    document.documentElement.setAttribute('data-units', 'inch');
    document.documentElement.setAttribute('data-units-guess', 'inch');
    render(shown);
    act(() => {
      window.localStorage.setItem('kerf-units', 'metric sixteenths');
      window.dispatchEvent(new StorageEvent('storage', { key: 'kerf-units', newValue: 'metric sixteenths' }));
    });
    expect(screen.getByText('metric')).toBeTruthy();
    expect(document.documentElement.getAttribute('data-units')).toBe('metric');
    expect(document.documentElement.hasAttribute('data-units-guess')).toBe(false);
  });

  test('can be kept as guessed', async () => {
    const { UnitsGuess } = await opened(['en-US']);
    render(<UnitsGuess />);
    await userEvent.click(screen.getByRole('button', { name: 'Keep inches' }));
    expect(window.localStorage.getItem('kerf-units')).toBe('inch thirty-seconds');
  });
});

describe('what runs before the page is painted', () => {
  /** What the script writes on the root of the page. */
  async function guessed(languages: readonly string[], kept: string | null): Promise<Record<string, string>> {
    const { guessScript } = await import('../../src/calculators/view/units-guess.ts');
    const written: Record<string, string> = {};
    const setAttribute = (name: string, value: string) => {
      written[name] = value;
    };
    runInNewContext(guessScript, {
      localStorage: { getItem: () => kept },
      navigator: { languages },
      document: { documentElement: { setAttribute } },
    });
    return written;
  }

  test.each([
    ['en-US', 'en'],
    ['en'],
    [],
    ['en', 'en-US'],
    ['en-CA', 'en-US'],
    ['en-LR'],
    ['my-MM'],
    ['de-DE-u-co-phonebk'],
    ['en-u-hc-h12', 'en-US'],
    ['zh-Hant-TW'],
  ])('guesses as the page does: %s %s', async (...languages) => {
    const system = systemOfRegion(languages);
    expect(await guessed(languages, null)).toEqual({ 'data-units': system, 'data-units-guess': system });
  });

  test('guesses nothing where a choice is kept', async () => {
    expect(await guessed(['en-US'], 'metric thirty-seconds')).toEqual({ 'data-units': 'metric' });
  });
});
