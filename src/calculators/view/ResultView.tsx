import type { Caution, EvidenceNote, Figure, Result } from '../../model/evidence/index.ts';
import { formatBand, formatQuantity, type ReaderUnits } from '../../model/quantity/index.ts';
import { CautionList } from './CautionList.tsx';
import { Chart } from './Chart.tsx';
import { DocumentView } from './DocumentView.tsx';
import { DrawingView } from './DrawingView.tsx';
import { citationWords, EvidenceMark } from './EvidenceMark.tsx';
import { Heading, type HeadingLevel } from './Heading.tsx';
import { useLinks } from './links.tsx';
import styles from './result.module.css';
import { TableView } from './TableView.tsx';
import { TimelineView } from './TimelineView.tsx';
import { VerdictLine } from './VerdictLine.tsx';

interface ResultViewProps {
  result: Result;
  units: ReaderUnits;
  headingLevel: HeadingLevel;
  /** The cautions that the page around says already. */
  said?: readonly Caution[] | undefined;
}

/**
 * An answer: what it comes to with the headline figure beside it, what this case must beware of, what one works by (a mixing sheet, a
 * label), the other figures, what only repeats them on paper, drawings and charts, what every such case must beware of, and what it all
 * rests on.
 */
export function ResultView({ result, units, headingLevel, said }: ResultViewProps) {
  const [headline, ...others] = Object.keys(result.figures);
  const minor = (name: string) => result.figures[name]?.minor === true;
  const first = headline ? result.figures[headline] : undefined;
  const documents = (folded: boolean) =>
    result.documents
      ?.filter((document) => (document.folded ?? false) === folded)
      .map((document) => (
        <DocumentView
          key={document.id}
          document={document}
          units={units}
          headingLevel={headingLevel}
          beside={result.cautions}
          said={said}
        />
      ));
  return (
    <div className={styles.result}>
      <div className={styles.head}>
        <VerdictLine verdict={result.verdict} />
        {first && (
          <div className={styles.headline} data-figure={headline}>
            <span className={styles.headlineLabel}>{first.label}</span>
            {/* The verdict says it, once the fields rest; here it would be said at every key. */}
            <output className={styles.headlineValue} aria-live="off">
              {figureWords(first, units)}
            </output>
            <FigureFoot figure={first} units={units} />
          </div>
        )}
      </div>
      <CautionList cautions={result.cautions.filter(({ own }) => own)} />
      <div className={styles.rest} data-rest>
        {documents(false)}
        <FigureList names={others.filter((name) => !minor(name))} result={result} units={units} />
        {result.timeline && <TimelineView timeline={result.timeline} units={units} />}
        {documents(true)}
        {result.drawings?.map((drawing) => (
          <DrawingView key={drawing.id} drawing={drawing} />
        ))}
        {result.tables?.map((table) => (
          <TableView key={table.id} table={table} units={units} />
        ))}
        {result.series?.map((series) => (
          <Chart key={series.id} series={series} units={units} />
        ))}
        <FigureList names={others.filter(minor)} result={result} units={units} />
        <CautionList cautions={result.cautions.filter(({ own }) => !own)} said={said} />
        <Heading level={headingLevel} className={styles.subtitle}>
          What this rests on
        </Heading>
        <EvidenceList notes={result.evidence} />
      </div>
    </div>
  );
}

function FigureList({ names, result, units }: { names: readonly string[]; result: Result; units: ReaderUnits }) {
  if (names.length === 0) return null;
  return (
    <dl className={styles.figures}>
      {names.map((name) => {
        const figure = result.figures[name] as Figure;
        return (
          <div key={name} className={styles.figure} data-figure={name}>
            <dt>{figure.label}</dt>
            <dd>
              <span className={styles.value}>{figureWords(figure, units)}</span>
              <FigureFoot figure={figure} units={units} />
            </dd>
          </div>
        );
      })}
    </dl>
  );
}

/** A figure in the reader's units. */
export function figureWords(
  figure: Pick<Figure, 'value' | 'unit' | 'digits' | 'kept' | 'limit'>,
  units: ReaderUnits,
): string {
  return formatQuantity(figure.value, figure.unit, units, figure);
}

/** The band of a figure in the reader's units, where it says more than the figure does. */
function bandWords(
  { value, low, high, unit, digits, kept }: Pick<Figure, 'value' | 'low' | 'high' | 'unit' | 'digits' | 'kept'>,
  units: ReaderUnits,
): string | undefined {
  if (low === undefined || high === undefined) return undefined;
  return formatBand(value, { low, high }, unit, units, { digits, kept });
}

function FigureFoot({ figure, units }: { figure: Figure; units: ReaderUnits }) {
  const band = bandWords(figure, units);
  return (
    <span className={styles.foot}>
      {band && <span className={styles.band}>{band}</span>}{' '}
      <EvidenceMark basis={figure.basis} citation={figure.citation} />
      {figure.help && <span className={styles.note}>{figure.help}</span>}
      {figure.note && <span className={styles.note}>{figure.note}</span>}
    </span>
  );
}

function EvidenceList({ notes }: { notes: readonly EvidenceNote[] }) {
  const { Link } = useLinks();
  return (
    <ul className={styles.evidence}>
      {notes.map((note) => (
        <li key={`${note.equation ?? ''}${note.text}`}>
          {note.equation ? <Link to={`/reference/equations#${note.equation}`}>{note.text}</Link> : note.text}{' '}
          <EvidenceMark basis={note.basis} citation={note.citation} cited />
          {note.citation && <small className={styles.noteSource}> {citationWords(note.citation)}</small>}
        </li>
      ))}
    </ul>
  );
}
