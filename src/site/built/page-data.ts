import type { Step } from './finish.ts';
import { rewritePages } from './markup.ts';

/**
 * What programs read of a page (JSON-LD) is written by the server alone, since a browser with the site's policy may set no text of a script.
 * The framework takes away, as a page comes to life, what bears its mark and was not written by the page itself; without the mark it stays.
 */
export const pageData: Step = {
  does: 'Data of pages for programs',
  run: (folder) => `${rewritePages(folder, withoutMark)} pages keep it`,
};

/** A page whose data bears no mark of the framework. */
export const withoutMark = (html: string): string =>
  html.replace(/<script(?=[^>]*application\/ld\+json)([^>]*?) data-rh=["']?true["']?/g, '<script$1');
