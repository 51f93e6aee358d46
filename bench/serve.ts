import { existsSync, readFileSync, statSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';
import { gzipSync } from 'node:zlib';

const types: Record<string, string> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.json': 'application/json',
  '.webmanifest': 'application/manifest+json',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.txt': 'text/plain; charset=utf-8',
  '.xml': 'text/xml',
  '.woff2': 'font/woff2',
};

/** What no host compresses: it is compressed already. */
const asItIs = new Set(['.woff2', '.png', '.pdf', '.zip']);

/** A served folder: where it answers, and how to end it. */
export interface Served {
  origin: string;
  close: () => void;
}

/** Serve a built site from a folder on a free port of this machine, with gzip and with the site's own page for what is not there, as a host does. */
export async function serve(folder: string): Promise<Served> {
  const packed = new Map<string, Buffer>();
  const packedOf = (file: string): Buffer => {
    const kept = packed.get(file) ?? gzipSync(readFileSync(file));
    packed.set(file, kept);
    return kept;
  };
  const server: Server = createServer((request, response) => {
    const path = normalize(decodeURIComponent(new URL(request.url ?? '/', 'http://localhost').pathname));
    const there = [join(folder, path), join(folder, path, 'index.html'), join(folder, `${path}.html`)].find(
      (candidate) => existsSync(candidate) && statSync(candidate).isFile(),
    );
    const file = there ?? join(folder, '404.html');
    if (!existsSync(file)) {
      response.writeHead(404).end();
      return;
    }
    const ending = extname(file);
    const headers: Record<string, string> = { 'content-type': types[ending] ?? 'application/octet-stream' };
    const gzip = !asItIs.has(ending) && /\bgzip\b/.test(String(request.headers['accept-encoding']));
    if (gzip) Object.assign(headers, { 'content-encoding': 'gzip', vary: 'accept-encoding' });
    response.writeHead(there ? 200 : 404, headers).end(gzip ? packedOf(file) : readFileSync(file));
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  return { origin: `http://127.0.0.1:${port}`, close: () => server.close() };
}
