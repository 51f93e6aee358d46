import { usePluginData } from '@docusaurus/useGlobalData';
import type { Titled } from './find-titles.ts';

/** What every page of the site knows of the others: the titles of the how-to pages and of the calculators. */
export interface Titles {
  pages: readonly Titled[];
  calculators: readonly (Titled & { id: string })[];
}

export function useTitles(): Titles {
  return usePluginData('handbook') as Titles;
}
