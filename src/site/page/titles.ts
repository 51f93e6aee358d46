import { usePluginData } from '@docusaurus/useGlobalData';

/** A page of the site by its title. */
export interface Titled {
  to: string;
  title: string;
}

/** What every page of the site knows of the others: the titles of the how-to pages and of the calculators. */
export interface Titles {
  pages: readonly Titled[];
  calculators: readonly (Titled & { id: string; question: string })[];
}

export function useTitles(): Titles {
  return usePluginData('handbook') as Titles;
}
