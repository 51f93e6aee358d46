/** The part of a service worker's surroundings that ours uses; the types of pages and workers exclude one another. */
export interface WorkerScope {
  registration: { scope: string };
  clients: { claim(): Promise<void>; matchAll(options: object): Promise<readonly { id: string }[]> };
  skipWaiting(): Promise<void>;
  addEventListener(type: 'install' | 'activate', heard: (event: LastingEvent) => void): void;
  addEventListener(type: 'message', heard: (event: AskedEvent) => void): void;
  addEventListener(type: 'fetch', heard: (event: FetchedEvent) => void): void;
}

export interface LastingEvent {
  /** The worker is kept alive until this is settled. */
  waitUntil(done: Promise<unknown>): void;
}

export interface AskedEvent extends LastingEvent {
  data: unknown;
  ports: readonly MessagePort[];
}

export interface FetchedEvent extends LastingEvent {
  request: Request;
  clientId: string;
  resultingClientId: string;
  respondWith(answer: Promise<Response>): void;
}
