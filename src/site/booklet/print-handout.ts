/** What the print style looks for on the root while a page is printed for a class. */
const mark = 'data-handout';

/** Print the page for a class: the text and what the calculators answer, without the answers to its questions and what the answers rest on. */
export function printHandout(): void {
  const root = document.documentElement;
  root.setAttribute(mark, '');
  window.addEventListener('afterprint', () => root.removeAttribute(mark), { once: true });
  window.print();
}
