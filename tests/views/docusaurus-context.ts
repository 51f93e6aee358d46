import { readSite } from '../../src/store/index.ts';

const { name, address } = readSite();

/** What the framework knows of the site. */
export default function useDocusaurusContext() {
  return { siteConfig: { title: name, url: address, customFields: {} } };
}
