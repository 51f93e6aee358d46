import type { CslItem } from '../../model/evidence/index.ts';
import { Anchored } from '../page/Anchored.tsx';
import type { SourcesEntry } from './data.ts';
import { PageOfPart } from './PageOfPart.tsx';
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

/** The sources of one subject, and how each was read. */
export default function SourcesOfSubject({ subject }: { subject: SourcesEntry }) {
  const about = subject.title.toLowerCase();
  return (
    <PageOfPart
      title={`Sources: ${about}`}
      description={`What was read, and how, behind the figures of this site: ${about}.`}
      list={{ to: '/reference/sources', all: 'All sources' }}
    >
      {subject.sources.map((source) => (
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
    </PageOfPart>
  );
}
