import Link from '@docusaurus/Link';
import { findTitles } from './find-titles.ts';
import { useTitles } from './titles.ts';

const most = 6;

/** What else the site holds under the words that no wood bears: how-to pages and calculators by their titles. */
export function OtherPages({ text }: { text: string }) {
  const { pages, calculators } = useTitles();
  const found = findTitles([...pages, ...calculators], text).slice(0, most);
  if (found.length === 0) {
    return (
      <p className="small">
        No page and no calculator is named so either. See all <Link to="/how-to">how-to pages</Link>, all{' '}
        <Link to="/calculators">calculators</Link>, or the <Link to="/how-to/glossary">words</Link>.
      </p>
    );
  }
  return (
    <>
      <p className="small">Pages and calculators with these words:</p>
      <ul className="index-list">
        {found.map(({ to, title }) => (
          <li key={to}>
            <Link to={to}>
              <strong>{title}</strong>
            </Link>
          </li>
        ))}
      </ul>
    </>
  );
}
