/*
 * Where a button is gone once it is pressed, as one that removes a row, the browser gives the focus to the page as a whole: who hears the
 * page is thrown to its top, who goes by keys sees no mark. It goes to what now stands in its place, whichever part of the site the
 * button was in. Only for a press by key or screen reader: under a finger a field that takes the focus would raise the keyboard.
 */
const canTakeFocus =
  'a[href], button:not(:disabled), input:not(:disabled), select:not(:disabled), textarea:not(:disabled), summary, [tabindex="0"]';

const focusable = (within: Element) =>
  [...within.querySelectorAll<HTMLElement>(canTakeFocus)].filter((each) => each.checkVisibility());

/** When to look, ms after the press: a list that lies in the browser's store is drawn anew later than one in memory. */
const looks = [50, 250, 800];

/**
 * Ready to give the focus to the neighbour of an element that may be about to go.
 *
 * @returns gives it, where the focus was lost; true once nothing is left to do
 */
export function focusKeeper(pressed: HTMLElement): () => boolean {
  const around: { holder: Element; at: number }[] = [];
  for (let holder = pressed.parentElement; holder && holder !== document.body; holder = holder.parentElement)
    around.push({ holder, at: focusable(holder).indexOf(pressed) });
  return () => {
    if (document.activeElement !== document.body) return document.activeElement !== pressed;
    for (const { holder, at } of around) {
      if (!holder.isConnected) continue;
      const left = focusable(holder).filter((each) => each !== pressed);
      const next = left[Math.min(Math.max(at, 0), left.length - 1)];
      if (!next) continue;
      next.focus();
      return true;
    }
    return true;
  };
}

function keep(event: MouseEvent): void {
  const pressed = document.activeElement;
  // A press by key, or by a screen reader, is told as a click of no pointer.
  if (event.detail !== 0 || !(pressed instanceof HTMLElement) || !pressed.matches('button, summary')) return;
  const give = focusKeeper(pressed);
  let done = false;
  for (const wait of looks) setTimeout(() => (done ||= give()), wait);
}

if (typeof document !== 'undefined') document.addEventListener('click', keep, true);
