import { type ComponentType, createContext, type ReactNode, useContext } from 'react';

/** How the surrounding site makes links; the kit itself knows no site. */
export interface Links {
  Link: ComponentType<{ to: string; children: ReactNode }>;
  /** A site path as an address path, with whatever base the site is served under. */
  href: (path: string) => string;
}

/** Plain links, for a page that is served from the root. */
const plainLinks: Links = {
  Link: ({ to, children }) => <a href={to}>{children}</a>,
  href: (path) => path,
};

export const LinksContext = createContext<Links>(plainLinks);

/** The links of the surrounding site. */
export function useLinks(): Links {
  return useContext(LinksContext);
}
