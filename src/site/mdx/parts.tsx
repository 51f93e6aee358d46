import Link from '@docusaurus/Link';
import { type ComponentProps, type ReactNode, useMemo } from 'react';
import type { RawInputs } from '../../calculators/kit/calculator.ts';
import type { FoldedAnswer } from '../../calculators/kit/folded.ts';
import { CautionList } from '../../calculators/view/CautionList.tsx';
import { SentenceMark } from '../../calculators/view/EvidenceMark.tsx';
import { Folded } from '../../calculators/view/Folded.tsx';
import type { HeadingLevel } from '../../calculators/view/Heading.tsx';
import type { Shown } from '../../calculators/view/shown.ts';
import { useUnits } from '../../calculators/view/units.tsx';
import type { Basis, Caution, Figure as FigureData } from '../../model/evidence/index.ts';
import { formatQuantity, inReaderUnits } from '../../model/quantity/index.ts';
import { ScrollBox } from '../page/ScrollBox.tsx';
import { Answers, AnswersSheet, Check } from './Check.tsx';
import { FoodContact, HygienePapers } from './food-parts.tsx';
import { InInches } from './InInches.tsx';
import { Card, Cards, HandOut } from './paper-parts.tsx';
import { Term } from './Term.tsx';

/**
 * A figure of a wood in the reader's units, with its evidence mark.
 * `resolved` is written by the build from `species` and `name`, so that a page does not load every wood for one number.
 */
function Figure({ species, name, resolved }: { species: string; name: string; resolved?: string }) {
  const units = useUnits();
  if (resolved === undefined)
    throw new Error(`<Figure species="${species}" name="${name}" /> was not resolved by the build.`);
  const figure = JSON.parse(resolved) as FigureData | null;
  if (!figure) return <span className="unknown">not published</span>;
  return (
    <span className="unit">
      <span className="num">{formatQuantity(figure.value, figure.unit, units, figure)}</span>{' '}
      <SentenceMark basis={figure.basis} citation={figure.citation} />
    </span>
  );
}

/**
 * A figure of the case that goes through all pages, `<Tray at="/parameters/length" />`, or of another method, `of="first-tray"`: in the reader's
 * units, and where it is first said also how it is known. `resolved` is written by the build.
 */
function Tray({ at, resolved }: { at: string; of?: string; resolved?: string }) {
  const units = useUnits();
  if (resolved === undefined) throw new Error(`<Tray at="${at}" /> was not resolved by the build.`);
  const { text, basis } = JSON.parse(resolved) as { text: string; basis?: Basis };
  const said = inReaderUnits(text, units);
  // A quantity keeps its unit beside it; a sentence of an answer breaks as any other.
  if (!/^⟦[^⟧]*⟧$/.test(text)) return said;
  return (
    <span className="unit">
      {said}
      {basis && (
        <>
          {' '}
          <SentenceMark basis={basis} />
        </>
      )}
    </span>
  );
}

/** A link to a wood's page, by its name unless other words are given. `resolved` is written by the build. */
function Wood({ id, resolved, children }: { id: string; resolved?: string; children?: ReactNode }) {
  return <Link to={`/woods/${id}`}>{children ?? resolved ?? id}</Link>;
}

/** Where a statement was read, linked to the list of sources; `resolved`, its short name, is written by the build. */
function Cite({ source, locator, resolved }: { source: string; locator?: string; resolved?: string }) {
  if (resolved === undefined) throw new Error(`<Cite source="${source}" /> was not resolved by the build.`);
  return (
    <span className="cite">
      (
      <Link to={`/reference/sources#${source}`}>
        {resolved}
        {locator && `, ${locator}`}
      </Link>
      )
    </span>
  );
}

/** What can hurt somebody in the work of a page; `resolved` is written by the build, so that a page carries its own cautions and no others. */
function Cautions({ ids, resolved }: { ids: readonly string[]; resolved?: string }) {
  if (resolved === undefined) throw new Error(`<Cautions ids="${ids}" /> was not resolved by the build.`);
  return <CautionList cautions={useMemo(() => JSON.parse(resolved) as Caution[], [resolved])} />;
}

interface CalculatorProps {
  id: string;
  preset?: RawInputs;
  headingLevel?: HeadingLevel;
  /** What the build writes: its title, the answer as data, how it is fetched, and the cautions that stand above it, as data. */
  title?: string;
  folded?: string;
  load?: () => Promise<{ default: Shown }>;
  cautions?: string;
  prefix?: string;
  ordinal?: string;
}

const none: RawInputs = {};

/** A calculator between the steps of a page, folded to its answer; it need not say again what the page says above it. */
function Calculator({ id, title, folded, load, cautions = '[]', ...props }: CalculatorProps) {
  const said = useMemo(() => JSON.parse(cautions) as Caution[], [cautions]);
  if (title === undefined || folded === undefined || load === undefined)
    throw new Error(`<Calculator id="${id}" /> was not resolved by the build.`);
  const { preset = none, headingLevel = 3, prefix = id, ordinal } = props;
  return (
    <Folded
      id={id}
      title={title}
      folded={useMemo(() => JSON.parse(folded) as FoldedAnswer, [folded])}
      load={load}
      preset={preset}
      prefix={prefix}
      ordinal={ordinal}
      headingLevel={headingLevel}
      said={said}
    />
  );
}

/** A table of a how-to page, which scrolls within itself. */
function Table(props: ComponentProps<'table'>) {
  return (
    <ScrollBox label="Table">
      <table {...props} />
    </ScrollBox>
  );
}

/** The corner of a table heads nothing: it is no heading. */
function HeadCell({ children, ...props }: ComponentProps<'th'>) {
  return children ? <th {...props}>{children}</th> : <td />;
}

/** The parts that every how-to page can use without importing them. */
export const handbookParts = {
  Calculator,
  Figure,
  Tray,
  Wood,
  Cite,
  Cautions,
  Check,
  Answers,
  AnswersSheet,
  Card,
  Cards,
  HandOut,
  FoodContact,
  HygienePapers,
  InInches,
  Term,
  table: Table,
  th: HeadCell,
};
