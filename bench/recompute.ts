import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type CDPSession, chromium, type Page } from '@playwright/test';
import { browserArguments, browserPath } from '../scripts/browser.ts';
import { answersTo, MethodMemory } from '../src/method/page/answer.ts';
import { PageTeller, withoutDocuments } from '../src/method/page/patch.ts';
import { serve } from './serve.ts';
import { renderersOf, slowProcesses } from './slowed.ts';

/** What is changed on the page of a method: one parameter of each kind, each time to a value that was not asked before where there are so many. */
interface Change {
  kind: 'a length' | 'a wood' | 'a number' | 'a choice';
  field: string;
  value: (turn: number) => string;
}

const among =
  (...values: readonly string[]) =>
  (turn: number) =>
    values[turn % values.length] as string;

const changes: Readonly<Record<string, readonly Change[]>> = {
  'first-tray': [
    { kind: 'a length', field: 'length', value: (turn) => `${401 + turn} mm` },
    { kind: 'a wood', field: 'wood', value: among('black-cherry', 'american-beech', 'sugar-maple') },
    { kind: 'a number', field: 'pieces', value: (turn) => String(2 + (turn % 4)) },
    { kind: 'a choice', field: 'finish', value: among('tung-oil', 'walnut-oil', 'mineral-oil') },
  ],
  'class-of-twelve': [
    { kind: 'a length', field: 'length', value: (turn) => `${421 + turn} mm` },
    { kind: 'a wood', field: 'wood', value: among('yellow-birch', 'american-beech', 'sugar-maple') },
    { kind: 'a number', field: 'pieces', value: (turn) => String(11 - (turn % 4)) },
    { kind: 'a choice', field: 'colour', value: among('moss green, 100 %, paste 2 %', 'amber, 100 %, paste 2 %') },
  ],
};

/** How many times slower than this machine the phone is. */
const slowdown = 4;
const turns = 12;
/** After a change, until its timetable and its advice are there too, ms. */
const pause = 2500;

/** What changes of one parameter took. */
export interface Recomputed {
  method: string;
  kind: Change['kind'];
  field: string;
  /** From the input to the paint that shows the new figures, each, ms. */
  painted: readonly number[];
}

/** Run in the page: notes when a field was changed, and when the figures that came of it were painted. A text, since the browser must read it as it stands. */
const watch = `(() => {
  globalThis.painted = [];
  let changed = 0;
  const input = () => { changed = performance.now(); globalThis.painted = []; };
  document.addEventListener('input', input, true);
  document.addEventListener('change', input, true);
  new MutationObserver((all) => {
    const isFigure = all.some(({ target }) => {
      const element = target instanceof Element ? target : target.parentElement;
      return element !== null && element.closest('li[id^="step-"]') !== null;
    });
    if (!isFigure || changed === 0) return;
    // A frame is painted after its callbacks: what is sent from one arrives behind the paint.
    requestAnimationFrame(() => {
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = () => globalThis.painted.push(performance.now() - changed);
      port2.postMessage(0);
    });
  }).observe(document.body, { subtree: true, childList: true, characterData: true });
})()`;

/** The worker of a page, asked by the browser's own protocol: it is a target beside its page. */
class Worker {
  readonly #page: CDPSession;
  readonly #waiting = new Map<number, (answer: Record<string, never>) => void>();
  #session: string | undefined;
  #count = 0;

  constructor(page: CDPSession) {
    this.#page = page;
    page.on('Target.attachedToTarget', ({ sessionId, targetInfo }) => {
      if (targetInfo.type === 'worker') this.#session = sessionId;
    });
    page.on('Target.receivedMessageFromTarget', ({ message }) => {
      const { id, ...answer } = JSON.parse(message) as { id: number };
      this.#waiting.get(id)?.(answer as Record<string, never>);
      this.#waiting.delete(id);
    });
  }

  async watch(): Promise<void> {
    await this.#page.send('Target.setAutoAttach', { autoAttach: true, waitForDebuggerOnStart: false, flatten: false });
  }

  get there(): boolean {
    return this.#session !== undefined;
  }

  async send(method: string, params: object = {}): Promise<Record<string, never>> {
    this.#count += 1;
    const id = this.#count;
    const answered = new Promise<Record<string, never>>((resolve) => this.#waiting.set(id, resolve));
    const message = JSON.stringify({ id, method, params });
    await this.#page.send('Target.sendMessageToTarget', { sessionId: this.#session as string, message });
    return answered;
  }
}

/** How long a fixed piece of work takes, ms: tells whether a thread was slowed down. */
const loop =
  '(() => { const from = performance.now(); let sum = 0; for (let at = 0; at < 3e7; at += 1) sum += at % 7; return performance.now() - from; })()';

/** The least of several: the first is worked out before the browser has made it quick. */
async function least(measure: () => Promise<number>): Promise<number> {
  const all: number[] = [];
  for (let turn = 0; turn < 4; turn += 1) all.push(await measure());
  return Math.min(...all);
}

async function wakeUp(page: Page, worker: Worker): Promise<void> {
  await page.waitForSelector('html[data-has-hydrated="true"]', { state: 'attached' });
  await page.locator('[data-field="length"] input').focus();
  while (!worker.there) await page.waitForTimeout(100);
  // Its code is fetched, and the first answer is worked out.
  await page.waitForTimeout(6000);
}

async function change(page: Page, { field, value }: Change, turn: number): Promise<void> {
  const control = page.locator(`[data-field="${field}"]`).locator('input, select').first();
  const details = page.locator(`details:has([data-field="${field}"]):not([open]) > summary`);
  if ((await details.count()) > 0) await details.first().click();
  const kind = await control.evaluate((one) =>
    one instanceof HTMLSelectElement ? 'select' : one.getAttribute('type'),
  );
  const wanted = value(turn);
  if (kind === 'select') await control.selectOption(wanted);
  else if (kind === 'radio')
    await page.locator(`[data-field="${field}"] input[value="${wanted}"]`).check({ force: true });
  else await control.fill(wanted);
}

/**
 * Change parameters of methods of a served site on a slowed-down processor, its worker too.
 *
 * @param rate how many times slower
 * @returns what each took, and by how much page and worker were really slowed down
 */
export async function recompute(
  origin: string,
  rate = slowdown,
  count = turns,
  methods: readonly string[] = Object.keys(changes),
): Promise<{ found: Recomputed[]; slowed: { page: number; worker: number } }> {
  const browser = await chromium.launch({ executablePath: browserPath(), args: browserArguments });
  const found: Recomputed[] = [];
  let slowed = { page: 1, worker: 1 };
  for (const method of methods) {
    const context = await browser.newContext({
      viewport: { width: 360, height: 740 },
      locale: 'en-GB',
      serviceWorkers: 'block',
    });
    const page = await context.newPage();
    const session = await context.newCDPSession(page);
    const worker = new Worker(session);
    await worker.watch();
    await page.goto(`${origin}/methods/${method}`, { waitUntil: 'load' });
    await page.evaluate(watch);
    await wakeUp(page, worker);
    const onPage = async () => Number(await page.evaluate(loop));
    const inWorker = async () => {
      const { result } = (await worker.send('Runtime.evaluate', {
        expression: loop,
        returnByValue: true,
      })) as unknown as {
        result: { result: { value: number } };
      };
      return result.result.value;
    };
    const before = [await least(onPage), await least(inWorker)] as const;
    // All of the page's process, its worker too: what the browser itself offers slows the page alone.
    const letGo = slowProcesses(await renderersOf(browser), rate);
    slowed = { page: (await least(onPage)) / before[0], worker: (await least(inWorker)) / before[1] };
    for (const each of changes[method] ?? []) {
      const painted: number[] = [];
      for (let turn = 0; turn < count; turn += 1) {
        await page.evaluate('globalThis.painted = []');
        await change(page, each, turn);
        await page.waitForTimeout(pause);
        const first = (await page.evaluate('globalThis.painted[0]')) as number | undefined;
        if (first !== undefined) painted.push(first);
      }
      found.push({ method, kind: each.kind, field: each.field, painted });
    }
    await letGo();
    await context.close();
  }
  await browser.close();
  return { found, slowed };
}

const middle = (all: readonly number[]) =>
  [...all].sort((one, two) => one - two)[Math.floor(all.length / 2)] ?? Number.NaN;

/** A table, a parameter a line. */
export function printRecomputed({ found, slowed }: Awaited<ReturnType<typeof recompute>>, rate = slowdown): void {
  console.log(
    `\nFrom a changed parameter of a method to the paint of its new figures, processor slowed ${rate} times (really: page ${slowed.page.toFixed(1)}, worker ${slowed.worker.toFixed(1)}), ms`,
  );
  for (const { method, kind, field, painted } of found)
    console.log(
      `${method.padEnd(18)}${`${kind}, ${field}`.padEnd(24)}median ${middle(painted).toFixed(0).padStart(5)}, worst ${Math.max(
        ...painted,
      )
        .toFixed(0)
        .padStart(5)} of ${painted.length}`,
    );
}

/**
 * What the worker does for a changed parameter until the page hears of its figures: processor time, not slowed down, ms. The engine compiles and clears away
 * in threads beside the worker’s own, and their time is in it: after a changed length it is about as much again, for which nobody waits where there is a
 * second core.
 */
export interface WorkerWork {
  method: string;
  field: string;
  work: readonly number[];
}

/**
 * Work the same changes out here, one after another as a worker does that keeps its memory.
 *
 * @param root of the project
 */
export async function workerWork(root: string, count = turns): Promise<WorkerWork[]> {
  const shop = readFileSync(join(root, 'methods/shop.yaml'), 'utf8');
  const found: WorkerWork[] = [];
  for (const [method, each] of Object.entries(changes)) {
    const file = `methods/${method}.yaml`;
    const text = readFileSync(join(root, file), 'utf8');
    const memory = new MethodMemory();
    const teller = new PageTeller();
    const ask = async (own: object): Promise<number> => {
      const before = process.cpuUsage();
      let first: number | undefined;
      // What follows on the numbers is worked out too, as it is for a reader who waits: it is part of what the worker has in mind at the next change.
      for await (const answer of answersTo({ text, file, shop, ...own }, memory, true)) {
        if (!answer.ok) throw new Error(`${file}: ${answer.problems[0]?.message}`);
        teller.tell(withoutDocuments(answer.page), true);
        first ??= process.cpuUsage(before).user / 1000;
      }
      return first as number;
    };
    // The page as it was sent is worked out as its form is approached.
    await ask({});
    for (const { field, value } of each) {
      const work: number[] = [];
      for (let turn = 0; turn < count; turn += 1) {
        const now = value(turn);
        work.push(await ask(field === 'pieces' ? { pieces: Number(now) } : { set: { [field]: now } }));
      }
      found.push({ method, field, work });
    }
  }
  return found;
}

/** A table, a parameter a line. */
export function printWorkerWork(all: readonly WorkerWork[]): void {
  console.log(
    '\nProcessor time of the worker, with the engine’s threads beside it, until the figures of a changed parameter are told, ms',
  );
  for (const { method, field, work } of all)
    console.log(
      `${method.padEnd(18)}${field.padEnd(24)}median ${middle(work).toFixed(1).padStart(6)}, worst ${Math.max(...work)
        .toFixed(1)
        .padStart(6)} of ${work.length}`,
    );
}

// `tsx bench/recompute.ts [folder of the site] [slowdown] [turns] [methods with commas]`
if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const [folder, rate, count, methods] = process.argv.slice(2);
  const server = await serve(folder ?? fileURLToPath(new URL('../build', import.meta.url)));
  const at = Number(rate ?? slowdown);
  printWorkerWork(await workerWork(fileURLToPath(new URL('..', import.meta.url))));
  printRecomputed(await recompute(server.origin, at, Number(count ?? turns), methods?.split(',')), at);
  server.close();
}
