import { createHash } from 'node:crypto';
import { vi } from 'vitest';

/** SHA-256 of a text, in base 64. */
export const hash = (text: string) => createHash('sha256').update(text).digest('base64');

/** A cache of a browser, as far as it is used. */
export class Shelf {
  readonly entries = new Map<string, string>();
  most = Number.POSITIVE_INFINITY;
  async put(url: string, response: Response) {
    if (this.entries.size >= this.most) throw Object.assign(new Error('full'), { name: 'QuotaExceededError' });
    this.entries.set(url, await response.text());
  }
  async match(url: string) {
    const text = this.entries.get(url);
    return text === undefined ? undefined : new Response(text);
  }
  async keys() {
    return [...this.entries.keys()].map((url) => ({ url }));
  }
}

/** Caches of a browser and a server that a test fills: what it has now, and what was asked of it. */
export function browserOf(address: string) {
  const shelves = new Map<string, Shelf>();
  const server: { files: Record<string, string>; asked: string[] } = { files: {}, asked: [] };
  const beginAnew = () => {
    shelves.clear();
    server.asked = [];
    vi.stubGlobal('caches', {
      has: async (name: string) => shelves.has(name),
      open: async (name: string) => shelves.get(name) ?? shelves.set(name, new Shelf()).get(name),
      keys: async () => [...shelves.keys()],
      delete: async (name: string) => shelves.delete(name),
    });
    vi.stubGlobal('fetch', async (url: string, { integrity }: { integrity?: string } = {}) => {
      const path = url.slice(address.length);
      const text = server.files[path.endsWith('/') || path === '' ? `${path}index.html` : path];
      if (integrity) server.asked.push(path);
      // A browser fails alike where the network is gone and where the bytes are others.
      if (text === undefined || (integrity && integrity !== `sha256-${hash(text)}`)) throw new TypeError('Failed');
      return new Response(text);
    });
  };
  const end = () => vi.unstubAllGlobals();
  return { shelves, server, beginAnew, end };
}
