/**
 * The line at the top of a page that tells that the next one is on its way. The framework asks for it by the name of a package
 * which writes markup as text; this one sets up its two elements, to the same rules of style, without any.
 */
let line: HTMLElement | undefined;

/** Show the line. */
function start(): void {
  if (line) return;
  line = document.createElement('div');
  line.id = 'nprogress';
  const bar = document.createElement('div');
  bar.className = 'bar';
  bar.style.transform = 'translate3d(-92%, 0, 0)';
  bar.style.transition = 'transform 8s cubic-bezier(0, 0.6, 0.2, 1)';
  line.append(bar);
  document.body.append(line);
  // Read, so that the line grows from where it was set.
  void bar.offsetWidth;
  bar.style.transform = 'translate3d(-6%, 0, 0)';
}

/** Take it away. */
function done(): void {
  line?.remove();
  line = undefined;
}

export default { configure(): void {}, start, done };
