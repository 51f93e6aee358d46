import { sayOver } from './say-over.ts';

/** Told on the window when the address of the page was changed in place. */
const changed = 'kerf:address';

const nowhere = '';
/** The address of the page that stands. */
let here = nowhere;
/** Whether the reader goes back or on in the history, and not to a new place in it. */
let goesBack = false;
let close: (() => void) | undefined;
/** Whether the page that stands is being gone back to. */
let returns = false;

const note = () => {
  here = window.location.href;
};

if (typeof window !== 'undefined') {
  window.addEventListener(changed, note);
  window.addEventListener(
    'popstate',
    ({ state }) => {
      goesBack = (state as { asked?: boolean } | null)?.asked !== true;
      // Whoever listens to it has begun to fetch the page by then.
      setTimeout(() => {
        goesBack = false;
      });
    },
    true,
  );
}

/** Whether the page that is being fetched was gone to in the history. To be asked before anything is waited for. */
export const isGoingBack = (): boolean => goesBack;

/** The page of the address stands. */
export function pageStands(): void {
  note();
  if (!returns) close?.();
  returns = false;
}

/** Go to a page of the site without loading this one anew. */
function goTo(address: string): void {
  window.history.pushState({ asked: true }, '', address);
  window.dispatchEvent(new PopStateEvent('popstate', { state: { asked: true } }));
}

/** Whether the server answers, whatever it says. */
export async function isReached(address: string): Promise<boolean> {
  try {
    await fetch(address, { method: 'HEAD', cache: 'no-store' });
    return true;
  } catch {
    return false;
  }
}

/**
 * Keep the page that stands, since the one of the address cannot be had, and say so. Nothing of it is drawn anew, so that all that was typed
 * stays.
 *
 * @param wasGoingBack whether the other was gone to in the history
 */
export function stay(wasGoingBack: boolean): void {
  if (returns) return;
  const wanted = window.location.href;
  returns = true;
  const say = () => {
    close?.();
    close = sayOver(
      `There is no network, and the page ${new URL(wanted).pathname} is not kept in this browser. The page before you stays, with all that you typed.`,
      [
        { label: 'Try again', act: () => goTo(wanted) },
        { label: 'Stay here', act: () => undefined },
      ],
    );
  };
  if (wasGoingBack) {
    // A place that was there before stays in the history, behind this page.
    if (here !== nowhere) goTo(here);
    say();
    return;
  }
  // A new place is taken out of the history, which takes a moment: who tried again before it was out would be taken back with it.
  window.addEventListener('popstate', () => setTimeout(say), { once: true });
  window.history.back();
}
