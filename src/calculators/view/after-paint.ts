/** A page that nobody sees is not painted: that is not waited for longer than this, ms. */
const unpainted = 100;

/**
 * Do something once what stands in the page now has been painted: a tap or a key that has just been answered need not wait for it.
 *
 * @param act what can wait
 */
export function afterPaint(act: () => void): void {
  const timer = setTimeout(() => {
    cancelAnimationFrame(frame);
    act();
  }, unpainted);
  const frame = requestAnimationFrame(() => {
    clearTimeout(timer);
    setTimeout(act);
  });
}
