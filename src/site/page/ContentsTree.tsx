import Link from '@docusaurus/Link';
import { headingWords } from './heading-words.ts';

interface Heading {
  id: string;
  /** HTML, as the framework gives it. */
  value: string;
  children: readonly Heading[];
}

export interface ContentsTreeProps {
  toc: readonly Heading[];
  className: string;
  linkClassName: string | null;
  isChild?: boolean;
}

/** What stands on a page, as links to its headings: in words, for under the site's policy no text becomes HTML in a browser. */
export function ContentsTree({ toc, className, linkClassName, isChild }: ContentsTreeProps) {
  if (toc.length === 0) return null;
  return (
    <ul className={isChild ? undefined : className}>
      {toc.map(({ id, value, children }) => (
        <li key={id}>
          <Link to={`#${id}`} {...(linkClassName ? { className: linkClassName } : {})}>
            {headingWords(value)}
          </Link>
          <ContentsTree isChild toc={children} className={className} linkClassName={linkClassName} />
        </li>
      ))}
    </ul>
  );
}
