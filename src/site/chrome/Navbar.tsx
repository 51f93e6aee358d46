import Link from '@docusaurus/Link';
import useBaseUrl from '@docusaurus/useBaseUrl';
import useDocusaurusContext from '@docusaurus/useDocusaurusContext';
import ColorModeToggle from '@theme/Navbar/ColorModeToggle';
import { UnitsGuess, UnitsSwitch } from '../../calculators/view/units.tsx';
import { rooms } from '../navigation.ts';
import { useHere } from '../page/use-here.ts';
import { Mark } from './Mark.tsx';

/**
 * The head of every page. The rooms are always in sight, on a phone in a row of their own:
 * no menu has to be opened first, and all of it works without JavaScript except the two switches.
 * The theme measures the element of class `navbar` to know which heading is in sight.
 */
export function Navbar() {
  const path = useHere();
  const { siteConfig } = useDocusaurusContext();
  const base = useBaseUrl('/');
  const here = path && `/${path.slice(base.length)}`;
  return (
    <nav className="navbar masthead" aria-label="Main">
      <div className="masthead__inner">
        <Link to="/" className="masthead__name">
          <Mark className="masthead__mark" />
          {siteConfig.title}
        </Link>
        <ul className="masthead__rooms">
          {rooms.map((room) => (
            <li key={room.to}>
              <Link
                to={room.to}
                {...(isWithin(here, room.to) ? { 'aria-current': here === room.to ? 'page' : 'true' } : {})}
              >
                {room.label}
              </Link>
            </li>
          ))}
        </ul>
        <div className="masthead__tools needs-scripts">
          <Link to="/search" className="masthead__search" aria-label="Search" title="Search">
            <svg viewBox="0 0 24 24" width="22" height="22" aria-hidden="true">
              <path d="M10 3a7 7 0 1 0 0 14 7 7 0 0 0 0-14Zm5.2 12.2L21 21" />
            </svg>
          </Link>
          <UnitsSwitch />
          <ColorModeToggle />
        </div>
      </div>
      <div className="masthead__guess">
        <UnitsGuess />
      </div>
    </nav>
  );
}

function isWithin(path: string | undefined, room: string): boolean {
  if (path === undefined) return false;
  return path === room || path.startsWith(`${room}/`);
}
