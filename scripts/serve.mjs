import { createReadStream, existsSync, readFileSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { networkInterfaces } from 'node:os';
import { extname, join, resolve, sep } from 'node:path';
import { parseArgs } from 'node:util';

// `npm run serve`: the built site on this machine. `-- --host 0.0.0.0` lets others on the same network read it.
// It answers as a host of files does: a folder by its index.html, a folder without its slash by sending on, what is not there by 404.html;
// and with the headers that the build asks of a host.

const { values, positionals } = parseArgs({
  options: { port: { type: 'string', default: '3000' }, host: { type: 'string', default: 'localhost' } },
  allowPositionals: true,
});
const folder = resolve(positionals[0] ?? 'build');
const port = Number(values.port);
if (!Number.isInteger(port) || port < 1 || port > 65535)
  stop(`The port is ${values.port}; it is a whole number from 1 to 65535.`);
if (!existsSync(join(folder, '404.html')))
  stop(`${folder} holds no built site: it has no 404.html. Build it first: npm run build`);

const types = {
  '.css': 'text/css; charset=utf-8',
  '.csv': 'text/csv; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.ttf': 'font/ttf',
  '.txt': 'text/plain; charset=utf-8',
  '.webmanifest': 'application/manifest+json',
  '.woff': 'font/woff',
  '.woff2': 'font/woff2',
  '.xml': 'application/xml; charset=utf-8',
  '.yaml': 'application/yaml; charset=utf-8',
  '.zip': 'application/zip',
};

/** The folder that the site was built for, as its own pages name their scripts. */
const base =
  /(?:src|href)=["']?([^"'\s>]*?)assets\/(?:js|css)\//.exec(readFileSync(join(folder, '404.html'), 'utf8'))?.[1] ?? '/';

/** What the build asks a host to send with every file: the lines under `/*` of its `_headers`. Read each time, for a build may come anew. */
function askedHeaders() {
  const file = join(folder, '_headers');
  if (!existsSync(file)) return {};
  const [, lines = ''] = /^\/\*\n((?: +.*\n)*)/m.exec(readFileSync(file, 'utf8')) ?? [];
  return Object.fromEntries([...lines.matchAll(/^ +([\w-]+): (.*)$/gm)].map(([, name, value]) => [name, value]));
}

/** What an address within the site means: a file with its state, or where to go instead. */
function find(path) {
  const file = resolve(folder, `.${sep}${path}`);
  if (file !== folder && !file.startsWith(folder + sep)) return undefined;
  const state = statSync(file, { throwIfNoEntry: false });
  if (state?.isFile()) return path.endsWith('/') ? undefined : { file, state };
  if (!state?.isDirectory()) return undefined;
  const index = join(file, 'index.html');
  const found = statSync(index, { throwIfNoEntry: false });
  if (!found) return undefined;
  return path === '' || path.endsWith('/') ? { file: index, state: found } : { slash: true };
}

const server = createServer((request, response) => {
  let path;
  const [, address, query] = /^([^?]*)(.*)$/s.exec(request.url ?? '/');
  try {
    path = decodeURIComponent(address);
  } catch {
    path = undefined;
  }
  const send = (status, { file, state }) => {
    const tag = `"${state.size.toString(36)}-${Math.floor(state.mtimeMs).toString(36)}"`;
    const headers = {
      ...askedHeaders(),
      'Content-Type': types[extname(file)] ?? 'application/octet-stream',
      'Cache-Control': 'no-cache',
      ETag: tag,
      'X-Content-Type-Options': 'nosniff',
    };
    if (status === 200 && request.headers['if-none-match'] === tag) {
      response.writeHead(304, headers).end();
      return;
    }
    response.writeHead(status, { ...headers, 'Content-Length': state.size });
    if (request.method === 'HEAD') response.end();
    else
      createReadStream(file)
        .on('error', () => response.destroy())
        .pipe(response);
  };
  const goTo = (where) => response.writeHead(301, { Location: where }).end();
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    response.writeHead(405, { Allow: 'GET, HEAD' }).end();
    return;
  }
  // Two slashes at the head of an address would name another host.
  if (/^[/\\]{2}/.test(address)) path = undefined;
  if (base !== '/' && path !== undefined && [base.slice(0, -1), '/'].includes(path)) {
    goTo(base + query);
    return;
  }
  const within = path?.includes('\0') || !path?.startsWith(base) ? undefined : find(path.slice(base.length));
  if (within && 'slash' in within) goTo(`${address}/${query}`);
  else if (within) send(200, within);
  else send(404, { file: join(folder, '404.html'), state: statSync(join(folder, '404.html')) });
});

server.on('error', (error) =>
  stop(
    error.code === 'EADDRINUSE'
      ? `Port ${port} is taken. Choose another: npm run serve -- --port ${port + 1}`
      : error.message,
  ),
);
server.listen(port, values.host, () => {
  const hosts = values.host === '0.0.0.0' ? ['localhost', ...others()] : [values.host];
  for (const host of hosts) console.log(`http://${host}:${port}${base}`);
});

/** Numbers of this machine in the networks that it is on. */
function others() {
  return Object.values(networkInterfaces())
    .flat()
    .filter((one) => one && one.family === 'IPv4' && !one.internal)
    .map(({ address }) => address);
}

function stop(words) {
  console.error(words);
  process.exit(1);
}
