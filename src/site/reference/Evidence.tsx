import Link from '@docusaurus/Link';
import { citationWords, EvidenceMark } from '../../calculators/view/EvidenceMark.tsx';
import { useUnits } from '../../calculators/view/units.tsx';
import { formatQuantity } from '../../model/quantity/index.ts';
import { Anchored } from '../page/Anchored.tsx';
import { Page } from '../page/Page.tsx';
import { ScrollBox } from '../page/ScrollBox.tsx';
import type { EvidenceEntry } from './data.ts';
import styles from './reference.module.css';

/** How figures are marked, how many there are of each kind, and which still need somebody with the book. */
export default function Evidence({ evidence }: { evidence: EvidenceEntry }) {
  const units = useUnits();
  const total = (kind: 'published' | 'derived' | 'memory' | 'none') =>
    evidence.counts.reduce((sum, count) => sum + count[kind], 0);
  return (
    <Page
      title="Where the figures come from"
      description="How figures are marked, how many of each kind there are, and which still need somebody with the book."
    >
      <h1>Where the figures come from</h1>
      <p className="lead">
        Of the figures of {evidence.woods} woods, {total('published')} are published, {total('derived')} derived from
        published ones, and {total('memory')} still from memory. {total('none')} are not published anywhere that was
        read, and are left empty.
      </p>
      <Anchored as="h2" id="marks">
        The marks
      </Anchored>
      <ul>
        <li>
          <EvidenceMark basis="published" /> Published: printed in the source named beside it, or shown when the sign is
          pressed. The words after the source say whether it was read in the work itself or in a text that quotes it.
        </li>
        <li>
          <EvidenceMark basis="derived" /> Worked out from other figures by a named equation, and no firmer than the
          weakest of them.
        </li>
        <li>
          <EvidenceMark basis="supplier-sheet" /> Taken by you from the maker’s own sheet.
        </li>
        <li>
          <EvidenceMark basis="shop-practice" /> What careful shops do; there is no source.
        </li>
        <li>
          <EvidenceMark basis="memory" /> Written from memory and not yet checked against its source. Check it before
          money or safety hangs on it.
        </li>
      </ul>
      <Anchored as="h2" id="counts">
        Counts
      </Anchored>
      <ScrollBox label="Figures by how they are known">
        <table>
          <thead>
            <tr>
              <th scope="col" className={styles.many}>
                Figure
              </th>
              <th scope="col" className="num">
                Published
              </th>
              <th scope="col" className="num">
                Derived
              </th>
              <th scope="col" className="num">
                From memory
              </th>
              <th scope="col" className="num">
                Not published
              </th>
            </tr>
          </thead>
          <tbody>
            {evidence.counts.map((count) => (
              <tr key={count.name}>
                <th scope="row">{count.label}</th>
                <td className="num">{count.published}</td>
                <td className="num">{count.derived}</td>
                <td className="num">{count.memory}</td>
                <td className="num">{count.none}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollBox>
      <Anchored as="h2" id="report">
        Report a figure
      </Anchored>
      <p>
        If you own the book that a figure names, or find a figure that is wrong, open an issue in the project’s
        repository with four things: the wood and the figure; what is printed; the title, edition, table and page; and
        how you read it (the book itself, a scan, a quotation). A photograph of the row settles most questions. You need
        not write code.
      </p>
      <Anchored as="h2" id="to-check">
        Figures to check against the book
      </Anchored>
      <p>{evidence.toCheck.length} woods have figures from memory.</p>
      <ScrollBox label="Figures from memory">
        <table>
          <thead>
            <tr>
              <th scope="col" className={styles.some}>
                Wood
              </th>
              <th scope="col" className={styles.many}>
                Figure
              </th>
              <th scope="col" className="num">
                Value
              </th>
              <th scope="col" className={styles.most}>
                Where to look
              </th>
            </tr>
          </thead>
          <tbody>
            {evidence.toCheck.map((wood) =>
              wood.figures.map((figure, index) => (
                <tr key={`${wood.id}${figure.label}`}>
                  {index === 0 && (
                    <th scope="rowgroup" rowSpan={wood.figures.length}>
                      <Link to={`/woods/${wood.id}`}>{wood.name}</Link>
                    </th>
                  )}
                  <td>{figure.label}</td>
                  <td className="num">{formatQuantity(figure.value, figure.unit, units, figure)}</td>
                  <td>{figure.citation && citationWords(figure.citation)}</td>
                </tr>
              )),
            )}
          </tbody>
        </table>
      </ScrollBox>
    </Page>
  );
}
