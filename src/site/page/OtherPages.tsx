import Link from '@docusaurus/Link';
import { findTitles } from './find-titles.ts';
import { useTitles } from './titles.ts';

/** So many of either kind are listed. */
const most = 4;

interface OtherPagesProps {
  text: string;
  /** True where other things were found before it: it then says nothing of having found none. */
  more?: boolean;
}

/** What the site holds under some words beside woods: how-to pages and calculators, by their titles and by what the trade calls them. */
export function OtherPages({ text, more = false }: OtherPagesProps) {
  const { pages, calculators } = useTitles();
  const found = [
    ...findTitles(pages, text)
      .slice(0, most)
      .map((page) => ({ ...page, kind: '' })),
    ...findTitles(calculators, text)
      .slice(0, most)
      .map((page) => ({ ...page, kind: ' calculator' })),
  ];
  if (found.length === 0 && more) return null;
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
        {found.map(({ to, title, kind }) => (
          <li key={to}>
            <Link to={to}>
              <strong>{title}</strong>
              {kind && <span className="small">{kind}</span>}
            </Link>
          </li>
        ))}
      </ul>
    </>
  );
}
