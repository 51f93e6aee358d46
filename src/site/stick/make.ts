import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { type Zippable, zipSync } from 'fflate';
import { baseOf } from '../built/markup.ts';
import { placeScript, stickPage, stickSheet } from './pages.ts';
import { chunksOfWorker, codeTwin, isWorker, stickRuntime, stickScript, textTwin } from './scripts.ts';
import { startPage } from './start.ts';

/** The folder that comes out of the zip. */
const outer = 'kerf-and-cure';

/** What a stick has no use for: what servers, search engines and the browser's keeper of pages read, and forms of a font that no browser of today asks for. */
const left = [
  /^(?:_headers|_redirects|\.htaccess|sitemap\.xml|robots\.txt|404\.html|[^/]*\.webmanifest|manifest\.json|offline-[^/]*)$/,
  /^hosting\//,
  /^[^/]*\.zip$/,
  /^[^/]*\.js$/,
  /\.(?:ttf|woff|map)$/,
];

/** What pages fetch as data: it comes as scripts. */
const fetched = /^(?:[^/]*\.json|data\/.*\.(?:json|yaml))$/;

/** What was made of a built site. */
export interface Stick {
  zip: Uint8Array;
  /** Pages in it. */
  pages: number;
  files: number;
  /** Bytes once it is unpacked. */
  unpacked: number;
}

/** The files of a stick, by their place in the zip. */
export async function stickFiles(folder: string): Promise<Map<string, Uint8Array>> {
  if (!existsSync(join(folder, '404.html')))
    throw new Error(`${folder} holds no built site: it has no 404.html. Build it first: npm run build`);
  const base = baseOf(readFileSync(join(folder, '404.html'), 'utf8'), '404.html');
  const names = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) =>
      join(entry.parentPath, entry.name)
        .slice(folder.length + 1)
        .split(sep)
        .join('/'),
    )
    .filter((name) => !left.some((pattern) => pattern.test(name)))
    .sort();
  const made = new Map<string, Uint8Array>();
  const put = (name: string, what: string | Uint8Array) =>
    made.set(`${outer}/site/${name}`, typeof what === 'string' ? new TextEncoder().encode(what) : what);
  const read = (name: string) => readFileSync(join(folder, name), 'utf8');
  const inWorkers = new Set<string>();
  for (const name of names) {
    if (fetched.test(name)) put(`stick/files/${name}.js`, textTwin(name, read(name)));
    if (name.endsWith('.html')) put(name, stickPage(read(name), name, base));
    else if (name.endsWith('.css')) put(name, stickSheet(read(name), name, base));
    else if (/^assets\/js\/runtime~main\./.test(name)) put(name, stickRuntime(read(name), base));
    else if (name.endsWith('.js')) {
      const code = read(name);
      if (isWorker(code)) {
        const chunks = chunksOfWorker(code).map((chunk) => `assets/js/${chunk}`);
        for (const one of [name, ...chunks]) inWorkers.add(one);
        put(`stick/files/${name}.list.js`, textTwin(`${name}.list`, JSON.stringify(chunks)));
      } else put(name, await stickScript(code));
    } else put(name, readFileSync(join(folder, name)));
  }
  for (const name of inWorkers) put(`stick/files/${name}.js`, codeTwin(name, read(name)));
  put(placeScript, await placeText(base));
  made.set(`${outer}/start.html`, new TextEncoder().encode(startPage(read('index.html'))));
  return made;
}

async function placeText(base: string): Promise<string> {
  const made = await build({
    entryPoints: [fileURLToPath(new URL('./place.ts', import.meta.url))],
    bundle: true,
    write: false,
    format: 'iife',
    minify: true,
    target: 'es2022',
    define: { siteBase: JSON.stringify(base) },
  });
  return made.outputFiles[0]?.text ?? '';
}

/** The zip of a built site that opens from a stick, without network or server. The same site gives the same bytes. */
export async function makeStick(folder: string): Promise<Stick> {
  const made = await stickFiles(folder);
  const files: Zippable = {};
  let unpacked = 0;
  let pages = 0;
  for (const [name, bytes] of made) {
    files[name] = [bytes, { mtime: new Date(1980, 0, 1), level: /\.(?:woff2|png)$/.test(name) ? 0 : 9 }];
    unpacked += bytes.length;
    if (name.endsWith('.html')) pages++;
  }
  return { zip: zipSync(files), pages, files: made.size, unpacked };
}
