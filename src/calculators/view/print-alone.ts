/** What the print style looks for on the root while one part of a page is printed, and on that part. */
const marks = { root: 'data-print-alone', part: 'data-alone' } as const;

/** Print one part of a page without what lies around it; the page is as it was once the paper is out. */
export function printAlone(part: Element): void {
  const root = document.documentElement;
  root.setAttribute(marks.root, '');
  part.setAttribute(marks.part, '');
  const done = () => {
    root.removeAttribute(marks.root);
    part.removeAttribute(marks.part);
    window.removeEventListener('afterprint', done);
  };
  window.addEventListener('afterprint', done);
  window.print();
}
