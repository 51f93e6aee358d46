import Link from '@docusaurus/Link';
import useDocusaurusContext from '@docusaurus/useDocusaurusContext';
import { useSearch } from '../../calculators/view/address-bar.ts';
import { footLinks } from '../navigation.ts';
import { useHere } from '../page/use-here.ts';

/** The foot of every page: the reference pages, what the figures are worth, and on paper the page's address. */
export function Footer() {
  return (
    <footer className="colophon">
      <div className="colophon__inner">
        <ul>
          {footLinks.map((link) => (
            <li key={link.to}>
              <Link to={link.to}>{link.label}</Link>
            </li>
          ))}
        </ul>
        <p>
          Handbook figures are averages; your board is one tree. Local codes, the maker’s data sheet and a licensed
          practitioner come before this site. Program under the MIT licence; data are facts from public documents.
        </p>
      </div>
      <PrintedAddress />
    </footer>
  );
}

/** The address, with the inputs of a calculator once the page is live, so that a printed answer can be worked again. */
function PrintedAddress() {
  const { siteConfig } = useDocusaurusContext();
  const here = useHere();
  const search = useSearch();
  return (
    <p className="print-only small">
      {siteConfig.title} · {siteConfig.url}
      {here}
      {here !== undefined && search}
    </p>
  );
}
