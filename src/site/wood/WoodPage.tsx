import { useMemo } from 'react';
import { DrawnCalculator } from '../../calculators/view/DrawnCalculator.tsx';
import type { Drawn } from '../../calculators/view/drawn.ts';
import { Botanical } from '../page/Botanical.tsx';
import { Page } from '../page/Page.tsx';
import { Alternatives } from './Alternatives.tsx';
import { Dust } from './Dust.tsx';
import { FigureTable } from './FigureTable.tsx';
import { Food } from './Food.tsx';
import type { WoodFacts } from './facts.ts';
import { KeyFacts } from './KeyFacts.tsx';
import { Others } from './Others.tsx';
import { PoreDrawing } from './PoreDrawing.tsx';
import { RecordLinks } from './RecordLinks.tsx';
import { Structure } from './Structure.tsx';
import styles from './wood.module.css';

/** What stands below the calculator, for a thumb that does not want to pass it. */
const parts = [
  { to: '#figures', label: 'Figures' },
  { to: '#food', label: 'Food' },
  { to: '#structure', label: 'Pores' },
  { to: '#dust', label: 'Dust' },
  { to: '#record', label: 'Record' },
];

/** A wood: the answer first, then a board of it through the year, then every figure with where it comes from. */
export default function WoodPage({ facts, calculator }: { facts: WoodFacts; calculator: Drawn }) {
  const { wood } = facts;
  const preset = useMemo(() => ({ species: wood.id }), [wood.id]);
  return (
    <Page title={wood.name} description={summary(facts)}>
      <div className={styles.first}>
        <div>
          <h1>{wood.name}</h1>
          <p className={styles.names}>
            {wood.botanical && <Botanical>{wood.botanical}</Botanical>}
            {wood.botanical && wood.botanicalBasis === 'memory' && ' (name from memory)'}
            {wood.botanical && '. '}
            {wood.tradeNames.length > 0 && <>Also {wood.tradeNames.join(', ')}. </>}
            {originWords(wood.kind, wood.origin)}
          </p>
          <KeyFacts facts={facts} />
          <nav className={`${styles.jumps} no-print`} aria-label="On this page">
            {parts.map((part) => (
              <a key={part.to} href={part.to}>
                {part.label}
              </a>
            ))}
          </nav>
        </div>
        <PoreDrawing arrangement={wood.pores.arrangement} kind={wood.kind} />
      </div>
      <DrawnCalculator calculator={calculator} prefix="" preset={preset} headingLevel={2} remembers="habits" />
      <FigureTable wood={wood} />
      <Food wood={wood} />
      <Structure wood={wood} />
      <Dust wood={wood} />
      <Others wood={wood} />
      <Alternatives facts={facts} />
      <RecordLinks wood={wood} />
    </Page>
  );
}

function originWords(kind: string, origin: string): string {
  const sort = `${kind.charAt(0).toUpperCase()}${kind.slice(1)}`;
  return origin === 'elsewhere' ? `${sort}.` : `${sort} of ${origin}.`;
}

function summary({ wood }: WoodFacts): string {
  const hardness = wood.figures.sideHardness12;
  return [
    `${wood.name}${wood.botanical ? ` (${wood.botanical})` : ''}:`,
    hardness ? `side hardness ${Math.round(hardness.value).toLocaleString('en')} N at 12 %,` : '',
    'pores, movement across the width, food contact and dust, each with its source.',
  ]
    .filter(Boolean)
    .join(' ');
}
