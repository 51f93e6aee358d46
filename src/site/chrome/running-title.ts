import { styleString } from '../../method/documents/style-string.ts';

/** Characters of an address that a margin holds beside the number of the page; the entries of a longer one stand on the sheet. */
const longest = 100;

/** What stands in the margins of every sheet but its number. */
export interface Running {
  title: string;
  address: string;
  /** When it was printed. */
  date: string;
}

/**
 * The margin boxes of a page as a style sheet: its title from the second sheet on, since the first bears it as a heading, the date, and
 * the address.
 */
export function runningStyle({ title, address, date }: Running): string {
  const font = 'font: 8pt sans-serif';
  return `@page { @top-left { content: ${styleString(title)}; ${font} } @top-right { content: ${styleString(`printed ${date}`)}; ${font} } @bottom-left { content: ${styleString(address)}; ${font} } } @page :first { @top-left { content: none } }`;
}

/** The address of a page without its protocol; without its entries where they would not fit. */
export function addressWords(host: string, path: string, search: string): string {
  const place = `${host}${path.replace(/(?<=.)(\/index\.html|\/)$/, '')}`;
  return `${place}${search}`.length > longest ? place : `${place}${search}`;
}

/** What is about to be printed: a sheet by itself, a part by itself, or the page. */
function titleOf(): string {
  const alone =
    document.querySelector<HTMLElement>('[data-part="paper"][data-title]')?.dataset.title ??
    document.querySelector('[data-alone] :is(h2, h3, h4)')?.textContent;
  return alone ?? document.querySelector('h1')?.textContent ?? document.title;
}

if (typeof document !== 'undefined' && 'adoptedStyleSheets' in document) {
  const sheet = new CSSStyleSheet();
  // A page that says more of its paper lays it over this.
  document.adoptedStyleSheets = [sheet, ...document.adoptedStyleSheets];
  window.addEventListener('beforeprint', () => {
    // Sheets of a method say their own, and a sheet of labels has no margin to say anything in.
    if (document.querySelector('[data-part="sheets"], [data-part="paper"][data-form="labels"]')) {
      sheet.replaceSync('');
      return;
    }
    const { host, pathname, search } = window.location;
    const date = new Intl.DateTimeFormat('en-GB', { dateStyle: 'long' }).format(new Date());
    sheet.replaceSync(runningStyle({ title: titleOf().trim(), address: addressWords(host, pathname, search), date }));
  });
}
