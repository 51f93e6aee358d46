import { Calm } from './calm.ts';
import { choice, register, workersOf } from './client.ts';
import type { Asked, Heard } from './worker.ts';

/** How long typing takes to be stored at most, ms: drafts are stored when it pauses for a quarter of a second. */
const storing = 600;
/** A page may stay open for days: so often it is asked whether there is a newer site, ms. */
const between = 3_600_000;
/** Whether a notice may come is looked at so often, ms. */
const look = 2_000;
/** A page that is being used says so at most so often, ms. */
const signs = 300;

/** What `navigator.connection` says where a browser has it. */
interface Connection {
  saveData?: boolean;
  effectiveType?: string;
}

/** Whether the reader pays for what comes, or waits long for it: the second part is then kept only on demand. */
export function isSparing(): boolean {
  const { connection } = navigator as Navigator & { connection?: Connection };
  return connection?.saveData === true || /2g/.test(connection?.effectiveType ?? '');
}

/** Keep the site in this browser, and say when there is a newer one. Called once, when the page stands. */
export async function watch(folder: string): Promise<void> {
  const workers = workersOf();
  if (!workers || choice() === 'nothing') return;
  reloadTogether(workers);
  const registration = await register(folder);
  if (!registration) return;
  offerUpdates(workers, registration);
  let fillsSecond = false;
  tellOfUse(() => [registration.installing, fillsSecond ? registration.active : null]);
  if (isSparing() && choice() !== 'all') return;
  await workers.ready;
  const ask = () => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = ({ data }: MessageEvent<Heard>) => {
      fillsSecond = 'kept' in data;
    };
    fillsSecond = registration.active !== null;
    registration.active?.postMessage({ say: 'keep the rest' } satisfies Asked, [port2]);
  };
  (window.requestIdleCallback ?? setTimeout)(ask);
}

/** Tell workers that keep the site that this page is being used: they rest meanwhile, or every tap on a cheap phone would wait for them. */
function tellOfUse(fillers: () => readonly (ServiceWorker | null)[]): void {
  let told = Number.NEGATIVE_INFINITY;
  const tell = () => {
    const now = performance.now();
    if (now - told < signs) return;
    told = now;
    for (const worker of fillers()) worker?.postMessage({ say: 'in use' } satisfies Asked);
  };
  for (const kind of ['pointerdown', 'keydown', 'scroll'] as const)
    document.addEventListener(kind, tell, { capture: true, passive: true });
}

/** Every tab is renewed as soon as one has accepted an update, so that none goes on with an old page under a new worker. */
function reloadTogether(workers: ServiceWorkerContainer): void {
  // The first worker of this browser takes over a page that is of its own version.
  let kept = workers.controller !== null;
  let going = false;
  workers.addEventListener('controllerchange', () => {
    if (kept && !going) {
      going = true;
      // A field that stores what was typed when it is left does so now.
      if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
      setTimeout(() => location.reload(), storing);
    }
    kept = true;
  });
}

function offerUpdates(workers: ServiceWorkerContainer, registration: ServiceWorkerRegistration): void {
  const calm = new Calm();
  for (const kind of ['input', 'keydown'] as const)
    document.addEventListener(kind, () => calm.typed(), { capture: true, passive: true });
  let shown = false;
  const offer = async () => {
    // Without a controller this is the first worker: there is nothing older to be renewed.
    if (shown || !registration.waiting || !workers.controller) return;
    if (document.visibilityState === 'hidden' || !calm.is(document.activeElement)) return;
    shown = true;
    const { showNotice } = await import('./UpdateNotice.tsx');
    showNotice(() => registration.waiting?.postMessage({ say: 'take over' } satisfies Asked), storing);
  };
  setInterval(offer, look);
  setInterval(() => document.visibilityState === 'visible' && registration.update().catch(() => undefined), between);
}
