import { calculators } from '../../calculators/index.ts';
import type { Titles } from '../page/titles.ts';
import { gatherHowTo } from './how-to.ts';

/** What every page may link to by its title: a few thousand characters that come with the site's first script. */
export function handbookTitles(): Titles {
  return {
    pages: gatherHowTo().map(({ to, title }) => ({ to, title })),
    calculators: calculators.map(({ id, title, question }) => ({ id, to: `/calculators/${id}`, title, question })),
  };
}
