/**
 * Buttons that unfold what stands beside them, in a page as sent: what is unfolded stands there already, so that nothing need be fetched to show
 * it. Such a button says by `aria-expanded` how it stands and by `aria-controls` what it unfolds, which bears `data-open` while it is open.
 */

const folds = 'button[aria-controls][aria-expanded]';

function turn(button: Element, open: boolean): boolean {
  const held = button.ownerDocument.getElementById(button.getAttribute('aria-controls') ?? '');
  if (!held) return false;
  button.setAttribute('aria-expanded', String(open));
  held.toggleAttribute('data-open', open);
  for (const words of button.querySelectorAll<HTMLElement>('[data-when]'))
    words.hidden = (words.dataset['when'] === 'open') !== open;
  return true;
}

/**
 * Fold or unfold what the button of a press is for.
 *
 * @returns false where the button unfolds nothing, so that its code is needed to answer it
 */
export function unfoldBy(button: Element): boolean {
  return button.matches(folds) && turn(button, button.getAttribute('aria-expanded') !== 'true');
}

/** Fold again what the button unfolds that a key was pressed on, as Escape does. */
export function foldBy(button: Element): void {
  if (button.matches(folds)) turn(button, false);
}

/** Buttons of a part by which something stands unfolded. */
export const unfoldedIn = (part: Element): Element[] =>
  [...part.querySelectorAll(folds)].filter((button) => button.getAttribute('aria-expanded') === 'true');
