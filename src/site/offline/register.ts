import ExecutionEnvironment from '@docusaurus/ExecutionEnvironment';
import siteConfig from '@generated/docusaurus.config';
import { tellOfMissingParts } from './missing-part.ts';

// The smallest part, which comes with every page: what keeps the site is fetched when the page stands and the machine has nothing to do.
if (ExecutionEnvironment.canUseDOM && process.env.NODE_ENV === 'production') {
  tellOfMissingParts();
  const begin = () =>
    (window.requestIdleCallback ?? setTimeout)(() => {
      import('./watch.ts').then(({ watch }) => watch(siteConfig.baseUrl)).catch(() => undefined);
    });
  if ('serviceWorker' in navigator) {
    if (document.readyState === 'complete') begin();
    else window.addEventListener('load', begin, { once: true });
  }
}
