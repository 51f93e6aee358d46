import { nameKey } from '../../model/quantity/index.ts';

/** A page of the site as a search finds it. */
export interface Titled {
  to: string;
  title: string;
  /** What it is about, and the trade's words for it: searched too, and never shown. */
  about: string;
}

/**
 * The pages in which every word of a text begins some word, those whose title holds them first.
 *
 * @param text as typed; one without a letter or digit finds nothing
 */
export function findTitles<Page extends Titled>(pages: readonly Page[], text: string): Page[] {
  const wanted = nameKey(text).split(' ').filter(Boolean);
  if (wanted.length === 0) return [];
  const holds = (words: string) => {
    const has = nameKey(words).split(' ');
    return wanted.every((word) => has.some((each) => each.startsWith(word)));
  };
  const inTitle = pages.filter(({ title }) => holds(title));
  return [...inTitle, ...pages.filter((page) => !inTitle.includes(page) && holds(`${page.title} ${page.about}`))];
}
