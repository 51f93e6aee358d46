import Link from '@docusaurus/Link';
import { useDoc } from '@docusaurus/plugin-content-docs/client';
import { calculatorsOfPage } from '../jobs.ts';
import { useTitles } from './titles.ts';

/** The end of a how-to page: the calculators that work it out, each on a page of its own, and the methods, in which all of it stands together. */
export function HowToFooter() {
  const { metadata } = useDoc();
  const { calculators } = useTitles();
  const own = calculatorsOfPage(metadata.id).flatMap((id) => calculators.find((each) => each.id === id) ?? []);
  return (
    <>
      {own.length > 0 && (
        <section className="how-to-footer" aria-labelledby="its-calculators">
          <h2 id="its-calculators">Calculators for this work</h2>
          <ul className="index-list">
            {own.map(({ id, to, title, about }) => (
              <li key={id}>
                <Link to={to}>
                  <strong>{title}</strong>
                  <span>{about}</span>
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
