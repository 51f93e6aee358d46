import { type CslItem, sources } from '../../model/evidence/index.ts';
import { Anchored } from '../page/Anchored.tsx';
import { Page } from '../page/Page.tsx';
import styles from './reference.module.css';

function authors(source: CslItem): string {
  return (source.author ?? [])
    .map((author) => ('literal' in author ? author.literal : [author.family, author.given].filter(Boolean).join(', ')))
    .join('; ');
}

function where(source: CslItem): string {
  const year = source.issued?.['date-parts'][0]?.[0];
  return [
    source['container-title'],
    source.number,
    source.volume && `vol. ${source.volume}`,
    source.page && `pp. ${source.page}`,
    source.publisher,
    year,
  ]
    .filter(Boolean)
    .join(', ');
}

/** Every source that a figure, equation, check or caution cites, and how it was read. */
export default function Sources() {
  return (
    <Page title="Sources" description="What was read, and how, behind every figure of this site." width="text">
      <h1>Sources</h1>
      <p className="lead">
        {sources.length} sources, with a note on the copy that was read. The list is also a{' '}
        <a href="pathname:///data/sources.json">CSL-JSON file</a>.
      </p>
      {sources.map((source) => (
        <section key={source.id} className={`card-unbroken ${styles.source}`}>
          <Anchored as="h2" id={source.id}>
            {source.title}
          </Anchored>
          <p>
            {[authors(source), where(source)].filter(Boolean).join('. ')}.
            {source.note && (
              <>
                <br />
                <span className="quiet">{source.note}</span>
              </>
            )}
          </p>
        </section>
      ))}
    </Page>
  );
}
