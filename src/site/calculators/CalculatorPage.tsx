import Link from '@docusaurus/Link';
import type { ComponentType } from 'react';
import Calculator from '../../calculators/view/Calculator.tsx';
import type { ViewProps } from '../../calculators/view/view.ts';
import { Page } from '../page/Page.tsx';
import type { CalculatorEntry } from './entry.ts';

/** A calculator on its own page, whose address is a worked case. */
export default function CalculatorPage({
  calculator,
  view,
}: {
  calculator: CalculatorEntry;
  view: ComponentType<ViewProps>;
}) {
  return (
    <Page title={calculator.title} description={calculator.summary}>
      <h1>{calculator.title}</h1>
      <p className="lead">{calculator.summary}</p>
      <Calculator id={calculator.id} view={view} prefix="" titled={false} headingLevel={2} />
      <p className="small quiet">
        The same calculator answers on the command line and in files: its input names are in{' '}
        <Link to="/reference/schemas">its schema</Link>.
      </p>
    </Page>
  );
}
