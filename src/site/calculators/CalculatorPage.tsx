import { CalculatorView } from '../../calculators/view/CalculatorView.tsx';
import type { Shown } from '../../calculators/view/shown.ts';
import { pagesOfCalculator } from '../jobs.ts';
import { Page } from '../page/Page.tsx';
import { useTitles } from '../page/titles.ts';
import { HowToLinks } from './HowToLinks.tsx';

/** A calculator on its own page, whose address is a worked case. */
export default function CalculatorPage({ shown }: { shown: Shown }) {
  const { id, title, summary } = shown.calculator;
  const { pages } = useTitles();
  return (
    <Page title={title} description={summary}>
      <h1>{title}</h1>
      <p className="lead">{summary}</p>
      <HowToLinks names={pagesOfCalculator(id)} pages={pages} />
      <CalculatorView shown={shown} prefix="" titled={false} headingLevel={2} remembers="cases" />
    </Page>
  );
}
