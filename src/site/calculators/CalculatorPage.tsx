import { DrawnCalculator } from '../../calculators/view/DrawnCalculator.tsx';
import type { Drawn } from '../../calculators/view/drawn.ts';
import { pagesOfCalculator } from '../jobs.ts';
import { Page } from '../page/Page.tsx';
import { useTitles } from '../page/titles.ts';
import { HowToLinks } from './HowToLinks.tsx';

/** A calculator on its own page, whose address is a worked case. */
export default function CalculatorPage({ calculator }: { calculator: Drawn }) {
  const { id, title, summary } = calculator;
  const { pages } = useTitles();
  return (
    <Page title={title} description={summary}>
      <h1>{title}</h1>
      <p className="lead">{summary}</p>
      <HowToLinks names={pagesOfCalculator(id)} pages={pages} />
      <DrawnCalculator calculator={calculator} prefix="" titled={false} headingLevel={2} remembers="cases" />
    </Page>
  );
}
