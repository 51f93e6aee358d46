import type { ReactNode } from 'react';
import { handbookTitles } from '../../src/site/plugin/titles.ts';

/*
 * What the site's framework hands to its pages, as far as the pages under test ask for it: links as plain anchors, no base address, the
 * real titles. Each name stands in for the default or named export of one module (vitest.config.ts).
 */

export default function Plain({ to, children, ...others }: { to?: string; children?: ReactNode }) {
  return to === undefined ? (
    children
  ) : (
    <a href={to} {...others}>
      {children}
    </a>
  );
}

export const usePluginData = () => handbookTitles();
export const useHistory = () => ({ push: () => undefined, replace: () => undefined, location: window.location });
export const useBaseUrlUtils = () => ({ withBaseUrl: (path: string) => path });
export const useDoc = () => ({ metadata: { id: 'routing-to-a-template' } });
