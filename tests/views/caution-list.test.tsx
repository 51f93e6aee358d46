import { cleanup, render, screen } from '@testing-library/react';
import { afterEach, describe, expect, test } from 'vitest';
import { foldedCase } from '../../src/calculators/kit/folded.ts';
import { CautionList } from '../../src/calculators/view/CautionList.tsx';
import { ResultView } from '../../src/calculators/view/ResultView.tsx';
import { cautionById } from '../../src/model/evidence/cautions.ts';
import type { Caution, Result } from '../../src/model/evidence/index.ts';
import { defaultUnits } from '../../src/model/quantity/index.ts';
import { handbookParts } from '../../src/site/mdx/parts.tsx';
import { shownOf } from './view-of.tsx';

const caution = (id: string, more: Partial<Caution> = {}): Caution => ({
  id,
  level: 'warning',
  text: `Mind ${id}.`,
  basis: 'shop-practice',
  ...more,
});
const lineOf = (words: string) => screen.getByText(words, { exact: false }).closest('li');

afterEach(cleanup);

describe('cautions that the page around says already', () => {
  test('are marked as said, and a line says that they hold', () => {
    render(<CautionList cautions={[caution('dust'), caution('noise')]} said={[caution('noise')]} />);
    expect(lineOf('Mind noise.')?.hasAttribute('data-said')).toBe(true);
    expect(lineOf('Mind dust.')?.hasAttribute('data-said')).toBe(false);
    expect(screen.getByText(/cautions of this page, above, hold here too/)).toBeTruthy();
  });

  test('are no matter where there are none of them', () => {
    render(<CautionList cautions={[caution('dust')]} said={[caution('noise')]} />);
    expect(screen.queryByText(/of this page, above/)).toBeNull();
  });

  test('a case’s own are said by the answer, whatever the page says', () => {
    const result: Result = {
      verdict: { level: 'care', text: 'It goes.' },
      figures: {},
      cautions: [caution('dust', { own: true }), caution('noise')],
      evidence: [],
    };
    render(
      <ResultView result={result} units={defaultUnits} headingLevel={3} said={[caution('dust'), caution('noise')]} />,
    );
    expect(lineOf('Mind dust.')?.hasAttribute('data-said')).toBe(false);
    expect(lineOf('Mind noise.')?.hasAttribute('data-said')).toBe(true);
  });
});

test('a how-to page hands its cautions to its calculators', async () => {
  window.history.replaceState(null, '', '/page?flood-coat.wantedThickness=2+mm');
  const { Calculator } = handbookParts;
  const shown = await shownOf('flood-coat');
  const said = ['resin-skin', 'resin-air'];
  const folded = foldedCase(shown.calculator, {}, said);
  render(
    <Calculator
      id="flood-coat"
      title={shown.calculator.title}
      folded={JSON.stringify(folded)}
      load={async () => ({ default: shown })}
      cautions={JSON.stringify(said.map(cautionById))}
    />,
  );
  await screen.findByLabelText(/thickness/i);
  expect(document.querySelectorAll('li[data-said]')).toHaveLength(2);
});
