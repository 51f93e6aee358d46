import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { watch } from '../../src/site/offline/watch.ts';
import type { Asked, Heard } from '../../src/site/offline/worker.ts';

/** A worker that notes what it is asked. */
class Listener {
  readonly asked: Asked[] = [];
  port: MessagePort | undefined;
  postMessage(asked: Asked, [port]: MessagePort[] = []) {
    this.asked.push(asked);
    this.port ??= port;
  }
  get signs() {
    return this.asked.filter(({ say }) => say === 'in use').length;
  }
}

const registration: Record<'installing' | 'active', Listener | null> & Record<string, unknown> = {
  installing: null,
  active: null,
  update: async () => undefined,
};
let ready: () => void = () => undefined;

beforeEach(() => {
  vi.useFakeTimers({ toFake: ['performance', 'setInterval'] });
  registration.installing = null;
  registration.active = null;
  vi.stubGlobal('requestIdleCallback', (act: () => void) => setTimeout(act));
  Object.defineProperty(navigator, 'serviceWorker', {
    configurable: true,
    value: {
      controller: null,
      register: async () => registration,
      ready: new Promise<void>((resolve) => {
        ready = resolve;
      }),
      addEventListener: () => undefined,
    },
  });
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
  Reflect.deleteProperty(navigator, 'serviceWorker');
});

const tap = () => document.body.dispatchEvent(new Event('pointerdown', { bubbles: true }));
/** What is on its way arrives, and so long goes by. */
async function later(time: number): Promise<void> {
  await new Promise((resolve) => setTimeout(resolve, 20));
  vi.advanceTimersByTime(time);
}

test('a worker that keeps the site is told now and then that its page is in use, and nothing more once all is kept', async () => {
  const worker = new Listener();
  registration.installing = worker;
  void watch('/');
  await later(400);
  tap();
  tap();
  expect(worker.signs).toBe(1);
  await later(400);
  tap();
  expect(worker.signs).toBe(2);
  // It serves now, and keeps the second layer.
  registration.installing = null;
  registration.active = worker;
  ready();
  await later(400);
  expect(worker.asked.at(-1)).toEqual({ say: 'keep the rest' });
  tap();
  expect(worker.signs).toBe(3);
  worker.port?.postMessage({ done: true } satisfies Heard);
  await later(400);
  tap();
  expect(worker.signs).toBe(3);
});
