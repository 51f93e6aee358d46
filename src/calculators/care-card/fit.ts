/** Sizes of type that a card is tried in, pt, largest first. */
const sizes = Array.from({ length: 41 }, (_, step) => 9 - step / 10);

/** Smaller than this, pt, print is hard to read in a kitchen. */
export const smallestEasy = 6;

/** What a printer may draw taller than the screen does, px. */
const spare = 2;

/**
 * The largest size of type at which a card ends within its quarter sheet, pt; undefined where none does. It depends on the faces that
 * the reader's machine draws, which nobody can know before, so a copy of the card is laid out and measured.
 *
 * @param face a card as drawn, of whatever width and height
 * @param trial class that lays the copy out beside the page, unseen
 */
export function fittingSize(face: HTMLElement, trial: string): number | undefined {
  const beside = document.createElement('div');
  beside.className = trial;
  beside.setAttribute('aria-hidden', 'true');
  const copy = face.cloneNode(true) as HTMLElement;
  // A copy is no second card to whoever counts them.
  copy.removeAttribute('data-part');
  beside.append(copy);
  document.body.append(beside);
  const room = copy.clientHeight;
  copy.style.height = 'auto';
  const size = sizes.find((each) => {
    copy.style.setProperty('--card-size', `${each}pt`);
    return copy.offsetHeight <= room - spare && copy.scrollWidth <= copy.clientWidth;
  });
  beside.remove();
  return size;
}
