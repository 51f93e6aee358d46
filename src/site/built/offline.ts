import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { gzip } from 'node:zlib';
import { build } from 'esbuild';
import { type FileList, type LayerName, type LayerSize, listName, workerName } from '../offline/kept-files.ts';
import type { Step } from './finish.ts';
import { chunksOfPages, layerOf, secondChunks } from './offline-files.ts';

const compress = promisify(gzip);

/** Lists what is kept for reading without a network, with the hash of each file, and writes the worker that keeps it. Hashes are of bytes that nobody changes any more: it stands last. */
export const offlineStep: Step = {
  does: 'Read without a network',
  async run(folder) {
    const list = await listFiles(folder);
    const text = JSON.stringify(list);
    writeFileSync(join(folder, listName), text);
    const worker = await workerText(list.version, hashOf(Buffer.from(text)));
    writeFileSync(join(folder, workerName), worker);
    const { first, second } = list.sizes;
    return `${inWords(first)} at once, ${inWords(second)} after it; worker ${(worker.length / 1000).toFixed(1)} KB`;
  },
};

const inWords = ({ files, bytes, gzip }: LayerSize) =>
  `${files} files, ${(bytes / 1e6).toFixed(1)} MB, ${(gzip / 1e6).toFixed(1)} MB compressed`;

const hashOf = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('base64');

/**
 * What is kept of a built site, by layer, each file with its hash.
 *
 * @throws Error where the main script does not say which chunks belong to which page
 */
export async function listFiles(folder: string): Promise<FileList> {
  const paths = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join('/'))
    .sort();
  const apart = secondChunks(pagesOf(folder, paths));
  const layers: Record<LayerName, Record<string, string>> = { first: {}, second: {} };
  const sizes: Record<LayerName, LayerSize> = {
    first: { files: 0, bytes: 0, gzip: 0 },
    second: { files: 0, bytes: 0, gzip: 0 },
  };
  await Promise.all(
    paths.map(async (path) => {
      const layer = layerOf(path, apart);
      if (!layer) return;
      const bytes = readFileSync(join(folder, path));
      layers[layer][path] = hashOf(bytes);
      sizes[layer].files += 1;
      sizes[layer].bytes += bytes.length;
      const { length } = await compress(bytes);
      sizes[layer].gzip += length;
    }),
  );
  const version = createHash('sha256').update(JSON.stringify(layers)).digest('hex').slice(0, 16);
  return { version, ...layers, sizes };
}

function pagesOf(folder: string, paths: readonly string[]): Map<string, readonly string[]> {
  const name = paths.find((path) => /^assets\/js\/main\.[0-9a-f]{8}\.js$/.test(path));
  if (!name || !paths.includes('404.html'))
    throw new Error(`${folder} is no built site: it has no assets/js/main.….js, or no 404.html. Build it first.`);
  // Every page names its scripts from the folder on that the site is built for.
  const at = /["'= ](\/[^"'= >]*)assets\/js\/main\./.exec(readFileSync(join(folder, '404.html'), 'utf8'))?.[1];
  const pages = chunksOfPages(readFileSync(join(folder, name), 'utf8'), at ?? '/');
  const missing = paths.filter(
    (path) => path.endsWith('/index.html') && !pages.has(`/${path.slice(0, -'/index.html'.length)}`),
  );
  if (missing.length > 0)
    throw new Error(
      `${name} does not say which chunks ${missing[0]} asks for, nor those of ${missing.length - 1} more: what is read without a network cannot be told apart.`,
    );
  return pages;
}

async function workerText(version: string, hash: string): Promise<string> {
  const made = await build({
    entryPoints: [fileURLToPath(new URL('../offline/worker.ts', import.meta.url))],
    bundle: true,
    minify: true,
    write: false,
    format: 'iife',
    target: 'es2022',
    define: { VERSION: JSON.stringify(version), LIST_HASH: JSON.stringify(hash) },
  });
  return made.outputFiles[0]?.text ?? '';
}
