import DocusaurusLink from '@docusaurus/Link';
import { useBaseUrlUtils } from '@docusaurus/useBaseUrl';
import useDocusaurusContext from '@docusaurus/useDocusaurusContext';
import { type ReactNode, useMemo } from 'react';
import { readShopDefaults } from '../../calculators/kit/read-shop-defaults.ts';
import { SiteShopContext } from '../../calculators/view/kept-shop.ts';
import { type Links, LinksContext } from '../../calculators/view/links.tsx';
import { asPage } from '../page/address.ts';
import { useTypedEarly } from '../page/use-typed-early.ts';

/** Links of the calculators' kit, made by the site's router, so that broken ones fail the build. */
const Link: Links['Link'] = ({ to, children }) => <DocusaurusLink to={to}>{children}</DocusaurusLink>;

/** What surrounds every page and outlives each of them. */
export function Root({ children }: { children: ReactNode }) {
  useTypedEarly();
  const { withBaseUrl } = useBaseUrlUtils();
  const { siteConfig } = useDocusaurusContext();
  const { shop } = siteConfig.customFields ?? {};
  const ofSite = useMemo(() => readShopDefaults(shop), [shop]);
  const links = useMemo<Links>(() => ({ Link, href: (path) => asPage(withBaseUrl(path)) }), [withBaseUrl]);
  return (
    <LinksContext.Provider value={links}>
      <SiteShopContext.Provider value={ofSite}>{children}</SiteShopContext.Provider>
    </LinksContext.Provider>
  );
}
