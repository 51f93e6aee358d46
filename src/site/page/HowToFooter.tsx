import Link from '@docusaurus/Link';
import { useDoc } from '@docusaurus/plugin-content-docs/client';
import { printHandout } from '../booklet/print-handout.ts';
import { bookletOf } from '../how-to-order.ts';
import { calculatorsOfPage } from '../jobs.ts';
import styles from './how-to-footer.module.css';
import { NeedsScripts } from './NeedsScripts.tsx';
import { useTitles } from './titles.ts';

/** The end of a how-to page: the calculators that work it out, each on a page of its own, and the methods, in which all of it stands together. */
export function HowToFooter() {
  const { metadata } = useDoc();
  const { calculators } = useTitles();
  const own = calculatorsOfPage(metadata.id).flatMap((id) => calculators.find((each) => each.id === id) ?? []);
  const booklet = bookletOf(metadata.id);
  return (
    <>
      <section className="no-print" aria-labelledby="on-paper">
        <h2 id="on-paper">On paper</h2>
        <NeedsScripts instead="Print this page with your browser: it is set for A4 and Letter.">
          <p className={styles.buttons}>
            <button type="button" className="button" onClick={() => window.print()}>
              Print
            </button>
            <button type="button" className="button" onClick={printHandout}>
              Handout
            </button>
          </p>
          <p className="small quiet">
            The handout has the text and what the calculators answer, without the answers to the questions and the
            sources.
          </p>
        </NeedsScripts>
        {booklet && (
          <p>
            All pages of this stage in one: <Link to={booklet.to}>booklet “{booklet.title}”</Link>.
          </p>
        )}
      </section>
      {own.length > 0 && (
        <section className="how-to-footer" aria-labelledby="its-calculators">
          <h2 id="its-calculators">Calculators for this work</h2>
          <ul className="index-list">
            {own.map(({ id, to, title, question }) => (
              <li key={id}>
                <Link to={to}>
                  <strong>{title}</strong>
                  <span>{question}</span>
                </Link>
              </li>
            ))}
          </ul>
        </section>
      )}
      <p className="no-print">
        A whole piece from start to end, every step with its numbers: <Link to="/methods">the methods</Link>.
      </p>
    </>
  );
}
