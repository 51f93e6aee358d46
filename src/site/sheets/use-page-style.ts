import { useEffect } from 'react';
import { styleString } from '../../method/documents/index.ts';
import { type PaperName, papers } from '../../model/outline/tiles.ts';

/** What stands at the foot of every page, and which paper it is: a style of the page's own while it is open, made without a style element. */
export function usePageStyle(paper: PaperName, running: string): void {
  useEffect(() => {
    if (!('adoptedStyleSheets' in document)) return;
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(
      `@page { size: ${papers[paper].label.toLowerCase()}; @bottom-left { content: ${styleString(running)}; font: 8pt sans-serif } @bottom-right { content: "page " counter(page) " of " counter(pages); font: 8pt sans-serif; white-space: nowrap } }`,
    );
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
    return () => {
      document.adoptedStyleSheets = document.adoptedStyleSheets.filter((each) => each !== sheet);
    };
  }, [paper, running]);
}
