/** The part of a BroadcastChannel that is used here. */
export interface Channel {
  postMessage(message: unknown): void;
  onmessage: ((event: MessageEvent) => void) | null;
  close(): void;
}

/** A channel to the other tabs of this browser, where it has them. */
export function channelOf(name: string): Channel | undefined {
  return typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel(name);
}
