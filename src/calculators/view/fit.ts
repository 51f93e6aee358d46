/** Sizes of type that a card is tried in, pt, largest first. */
export const cardSizes = sizesFrom(11, 6);

/** Sizes of type that a sheet is tried in, pt, largest first. */
export const sheetSizes = sizesFrom(11, 8);

/** What a printer may draw taller than the screen does, px. */
const spare = 2;

/** Every tenth of a point, largest first. */
function sizesFrom(largest: number, smallest: number): readonly number[] {
  return Array.from({ length: Math.round((largest - smallest) * 10) + 1 }, (_, step) => largest - step / 10);
}

/**
 * The largest size of type at which a card or sheet ends within its paper, pt; undefined where none does. It depends on the faces
 * that the reader's machine draws, which nobody can know before, so a copy is laid out and measured.
 *
 * @param face a card or sheet as drawn, of whatever width and height
 * @param trial class that lays the copy out beside the page, unseen, at the size of its paper
 * @param sizes that are tried, pt, largest first; what does not fit at one fits at no larger one
 */
export function fittingSize(face: HTMLElement, trial: string, sizes: readonly number[]): number | undefined {
  const beside = document.createElement('div');
  beside.className = trial;
  beside.dataset.part = 'trial';
  beside.setAttribute('aria-hidden', 'true');
  const copy = face.cloneNode(true) as HTMLElement;
  // A copy is no second card to whoever counts them.
  copy.removeAttribute('data-part');
  beside.append(copy);
  document.body.append(beside);
  const room = copy.clientHeight;
  copy.style.height = 'auto';
  copy.style.minHeight = '0';
  const fits = (size: number) => {
    copy.style.setProperty('--type-size', `${size}pt`);
    return copy.offsetHeight <= room - spare && copy.scrollWidth <= copy.clientWidth;
  };
  // Most words fit as they are wished, and to lay a card out takes a phone longer than a key may.
  const [wished] = sizes;
  let [from, to] = [0, sizes.length];
  if (wished !== undefined && fits(wished)) to = 0;
  else from = 1;
  while (from < to) {
    const middle = Math.floor((from + to) / 2);
    if (fits(sizes[middle] as number)) to = middle;
    else from = middle + 1;
  }
  beside.remove();
  return sizes[from];
}
