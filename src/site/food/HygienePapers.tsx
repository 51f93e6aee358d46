import Link from '@docusaurus/Link';
import { shortSource } from '../../model/evidence/index.ts';
import { hygieneFindings } from '../../model/food/index.ts';

/** Papers on boards and bacteria: what each tested and found, and which way it speaks. */
export function HygienePapers() {
  return (
    <ul>
      {hygieneFindings.map((paper) => (
        <li key={paper.id}>
          <strong>{paper.who}</strong> ({paper.speaks}). Tested: {paper.tested}. Found: {paper.found}{' '}
          <span className="cite">
            (
            <Link to={`/reference/sources#${paper.citation.source}`}>
              {shortSource(paper.citation.source)}, abstract
            </Link>
            )
          </span>
        </li>
      ))}
    </ul>
  );
}
