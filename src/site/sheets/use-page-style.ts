import { useEffect } from 'react';
import { styleString } from '../../method/documents/index.ts';
import { type PaperName, papers } from '../../model/outline/tiles.ts';

const font = 'font: 8pt sans-serif';

/**
 * The paper and its margins as a style sheet: whose sheet it is at the foot with the number of the page, the day at the head, where it stands
 * beside nothing that could break it.
 */
export const pageStyle = (paper: PaperName, running: string, day?: string): string =>
  `@page { size: ${papers[paper].label.toLowerCase()}; ${
    day === undefined ? '' : `@top-right { content: ${styleString(`printed ${day}`)}; ${font}; white-space: nowrap } `
  }@bottom-left { content: ${styleString(running)}; ${font} } @bottom-right { content: "page " counter(page) " of " counter(pages); ${font}; white-space: nowrap } }`;

/** The paper and what stands in its margins: a style of the page's own while it is open, made without a style element. */
export function usePageStyle(paper: PaperName, running: string, day?: string): void {
  useEffect(() => {
    if (!('adoptedStyleSheets' in document)) return;
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(pageStyle(paper, running, day));
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
    return () => {
      document.adoptedStyleSheets = document.adoptedStyleSheets.filter((each) => each !== sheet);
    };
  }, [paper, running, day]);
}
