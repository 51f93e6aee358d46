import Link from '@docusaurus/Link';
import { citationWords, EvidenceMark } from '../../calculators/view/EvidenceMark.tsx';
import type { Citation, Figure } from '../../model/evidence/index.ts';
import { formatQuantity } from '../../model/quantity/index.ts';
import { figureLabels } from '../../model/species/labels.ts';
import { figureNames, type SpeciesDossier } from '../../model/species/types.ts';
import { Anchored } from '../page/Anchored.tsx';
import { InEither } from '../page/InEither.tsx';
import { Unknown } from './KeyFacts.tsx';
import styles from './wood.module.css';

/** Every figure of a wood, how it is known and where it was read; what no table gives says so. */
export function FigureTable({ wood }: { wood: SpeciesDossier }) {
  return (
    <section>
      <Anchored as="h2" id="figures">
        Figures
      </Anchored>
      <table className={styles.figures}>
        <thead>
          <tr>
            <th scope="col">Figure</th>
            <th scope="col">Value</th>
            <th scope="col">How it is known</th>
          </tr>
        </thead>
        <tbody>
          {figureNames.map((name) => (
            <FigureRow key={name} label={figureLabels[name]} figure={wood.figures[name]} />
          ))}
        </tbody>
      </table>
    </section>
  );
}

/** One line of a table of figures. */
export function FigureRow({ label, figure }: { label: string; figure: Figure | null }) {
  return (
    <tr>
      <th scope="row">{label}</th>
      <td className={styles.value}>
        {figure ? (
          <InEither write={(units) => formatQuantity(figure.value, figure.unit, units, figure)} />
        ) : (
          <Unknown />
        )}
      </td>
      <td>{figure && <Known figure={figure} />}</td>
    </tr>
  );
}

function Known({ figure }: { figure: Figure }) {
  return (
    <>
      <EvidenceMark basis={figure.basis} cited /> {figure.citation && <SourceLink citation={figure.citation} />}
      {figure.note && <span className={styles.note}>{figure.note}</span>}
    </>
  );
}

/** A citation in words, linked to its entry in the list of sources. */
export function SourceLink({ citation }: { citation: Citation }) {
  return (
    <Link {...(styles.cited ? { className: styles.cited } : {})} to={`/reference/sources#${citation.source}`}>
      {citationWords(citation)}
    </Link>
  );
}
