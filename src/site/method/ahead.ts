/*
 * What a method needs to be worked out for its reader, fetched while the code of its page is still on its way: on a slow phone one after the other
 * take seconds, in which the page shows the method's own case.
 */

const texts = new Map<string, Promise<string>>();

/** A method as written, fetched once; whoever asks again after a failure fetches it anew. */
export function methodText(address: string): Promise<string> {
  const known = texts.get(address);
  if (known) return known;
  const asked = fetch(address).then((response) => {
    if (!response.ok) throw new Error(String(response.status));
    return response.text();
  });
  texts.set(address, asked);
  asked.catch(() => texts.delete(address));
  return asked;
}

const begin = () => new Worker(new URL('./worker.ts', import.meta.url));

/** A worker that nobody asks yet, its code on its way. */
let spare: Worker | undefined;

/** A worker for methods: the one that was begun ahead, if there is one. */
export function makeWorker(): Worker {
  const made = spare ?? begin();
  spare = undefined;
  made.onerror = null;
  return made;
}

/** Fetch a method's text and begin its worker, whose answer is sure to be asked for. */
export function workAhead(address: string): void {
  void methodText(address).catch(() => undefined);
  if (spare) return;
  const made = begin();
  spare = made;
  // One that could not be had is no help: the next is begun when it is asked, and says so.
  made.onerror = () => {
    if (spare === made) spare = undefined;
  };
}
