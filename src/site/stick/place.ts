import { fileOf, pathOf } from './addresses.ts';

/**
 * Stands in for the server where the site is opened from a stick. A browser lets a page that is a file read no other file, go by script to
 * no other, and begin no worker from one; all that it lets it do is run scripts and follow links. So this tells the site its own address, sends
 * links and the site's router to files, and hands over data and workers that come as scripts. It is built into `stick/place.js` and runs
 * before all others.
 */

declare const siteBase: string;

type Kept = string | (() => void);

const script = document.currentScript as HTMLScriptElement;
/** The folder of the site, as the browser writes it. */
const root = new URL('../', script.src).href;
/** What the site calls itself: links that are copied or printed lead there. */
const site = new URL(document.querySelector<HTMLLinkElement>('link[rel="canonical"]')?.href ?? 'https://site.invalid')
  .origin;

const bare = (address: string) => address.replace(/[?#].*$/s, '');

/** The file that an address of the site means, as the browser writes it; undefined where it is none of the site. */
function fileAt(address: string): string | undefined {
  if (address.startsWith(root)) return address;
  const path = address.startsWith(`${site}/`) ? address.slice(site.length) : address;
  const file = fileOf(/^[?#]/.test(path) ? here() + path : path, siteBase);
  return file === undefined ? undefined : root + file;
}

/** The path of this page within the site. */
const here = () => pathOf(bare(window.location.href).slice(root.length), siteBase);

const isHere = (file: string) => bare(file) === bare(window.location.href);

function go(address: string, how: 'assign' | 'replace'): void {
  window.location[how](fileAt(address) ?? address);
}

/** The address of this page, as the site’s own code knows it. */
const place = {
  get pathname() {
    return here();
  },
  get search() {
    return window.location.search;
  },
  get hash() {
    return window.location.hash;
  },
  set hash(to: string) {
    window.location.hash = to;
  },
  get href() {
    return site + here() + window.location.search + window.location.hash;
  },
  set href(to: string) {
    go(to, 'assign');
  },
  get origin() {
    return site;
  },
  get protocol() {
    return new URL(site).protocol;
  },
  get host() {
    return new URL(site).host;
  },
  get hostname() {
    return new URL(site).hostname;
  },
  get port() {
    return new URL(site).port;
  },
  assign: (to: string) => go(to, 'assign'),
  replace: (to: string) => go(to, 'replace'),
  reload: () => window.location.reload(),
  toString() {
    return this.href;
  },
};

// The site’s router writes addresses: within a page the browser lets it, to another page it must be gone.
for (const name of ['pushState', 'replaceState'] as const) {
  const write = window.history[name].bind(window.history);
  window.history[name] = (state: unknown, unused: string, address?: string | URL | null) => {
    if (address === undefined || address === null) return write(state, unused);
    const file = fileAt(String(address));
    if (file !== undefined && isHere(file)) return write(state, unused, file);
    go(String(address), name === 'pushState' ? 'assign' : 'replace');
  };
}

/** A link or a form that a script wrote names a path of the site; it is given the file before the browser follows it. */
function lead(element: Element, name: 'href' | 'action'): string | undefined {
  const written = element.getAttribute(name);
  if (written === null || written.startsWith('#')) return undefined;
  const file = fileAt(
    written.startsWith('/') || written.startsWith(site) ? written : new URL(written, document.baseURI).href,
  );
  if (file !== undefined && file !== written) element.setAttribute(name, file);
  return file;
}

const linkOf = (event: Event) => (event.target instanceof Element ? event.target.closest('a[href]') : null);

for (const name of ['pointerdown', 'focusin'])
  window.addEventListener(
    name,
    (event) => {
      const link = linkOf(event);
      if (link) lead(link, 'href');
    },
    true,
  );
window.addEventListener(
  'click',
  (event) => {
    const link = linkOf(event);
    const file = link ? lead(link, 'href') : undefined;
    // To another page the browser goes by itself; the router would draw it here.
    if (file !== undefined && !isHere(file)) event.stopImmediatePropagation();
  },
  true,
);
window.addEventListener(
  'submit',
  (event) => {
    if (event.target instanceof Element && event.target.hasAttribute('action')) lead(event.target, 'action');
  },
  true,
);
// What a script writes into the page and the browser asks for by itself, at once.
for (const kind of [HTMLLinkElement, HTMLImageElement])
  kind.prototype.setAttribute = function (name: string, value: string) {
    const file = /^(?:href|src)$/.test(name) && value.startsWith('/') ? fileAt(value) : undefined;
    Element.prototype.setAttribute.call(this, name, file ?? value);
  };
// A page that the browser kept while another was open may show what the router drew as it left.
window.addEventListener('pageshow', (event) => {
  if (event.persisted) window.location.reload();
});

/** What came as scripts, by its file in the site’s folder. */
const taken = new Map<string, Kept>();
const asked = new Map<string, Promise<Kept>>();

/** What a file of the site holds, which lies beside it as a script. */
function bring(file: string): Promise<Kept> {
  const known = asked.get(file);
  if (known) return known;
  const coming = new Promise<Kept>((resolve, reject) => {
    const element = document.createElement('script');
    element.src = `${root}stick/files/${file}.js`;
    element.onload = () => {
      const kept = taken.get(file);
      element.remove();
      if (kept === undefined) reject(new TypeError(`${file} holds nothing`));
      else resolve(kept);
    };
    element.onerror = () => {
      element.remove();
      asked.delete(file);
      reject(new TypeError(`${file} is not on this stick`));
    };
    document.head.append(element);
  });
  asked.set(file, coming);
  return coming;
}

const types: Readonly<Record<string, string>> = { json: 'application/json', yaml: 'application/yaml', csv: 'text/csv' };

window.fetch = async (input) => {
  const address = input instanceof Request ? input.url : String(input);
  const file = fileAt(address);
  if (file === undefined) throw new TypeError(`${address}: a page on a stick asks nobody`);
  const name = bare(file).slice(root.length);
  const text = String(await bring(name));
  return new Response(text, { headers: { 'content-type': types[name.split('.').at(-1) ?? ''] ?? 'text/plain' } });
};

/** What a worker runs first: scripts that it brings in were handed to it. */
function begin(scripts: Record<string, () => void>, base: string, first: string): void {
  (self as unknown as Record<string, unknown>)['importScripts'] = (...addresses: (string | URL)[]) => {
    for (const address of addresses) {
      const name = String(address).slice(base.length);
      const run = scripts[name];
      if (!run) throw new Error(`${name} is not on this stick`);
      run.call(self);
    }
  };
  scripts[first]?.call(self);
}

const NativeWorker = window.Worker;

/** A worker whose scripts are brought first; what is said to it meanwhile waits. */
class StickWorker extends EventTarget {
  onmessage: ((event: MessageEvent) => void) | null = null;
  onerror: ((event: ErrorEvent) => void) | null = null;
  onmessageerror: ((event: MessageEvent) => void) | null = null;
  #real: Worker | undefined;
  #closed = false;
  #waiting: [unknown, Transferable[]][] = [];

  constructor(file: string) {
    super();
    this.#begin(file).catch((error: unknown) => {
      this.#tell('error', new ErrorEvent('error', { message: String(error), error }));
    });
  }

  async #begin(first: string): Promise<void> {
    const list = JSON.parse(String(await bring(`${first}.list`))) as string[];
    const scripts = await Promise.all(
      [first, ...list].map(async (name) => `${JSON.stringify(name)}:${await bring(name)}`),
    );
    if (this.#closed) return;
    const text = `(${begin})({${scripts.join(',')}},${JSON.stringify(siteBase)},${JSON.stringify(first)})`;
    const address = URL.createObjectURL(new Blob([text], { type: 'text/javascript' }));
    const real = new NativeWorker(address);
    this.#real = real;
    real.onmessage = ({ data }) => {
      URL.revokeObjectURL(address);
      this.#tell('message', new MessageEvent('message', { data }));
    };
    real.onmessageerror = ({ data }) => this.#tell('messageerror', new MessageEvent('messageerror', { data }));
    real.onerror = ({ message, filename, lineno, colno }) =>
      this.#tell('error', new ErrorEvent('error', { message, filename, lineno, colno }));
    for (const [message, transfer] of this.#waiting.splice(0)) real.postMessage(message, transfer);
  }

  #tell(name: 'message' | 'error' | 'messageerror', event: Event): void {
    (this[`on${name}`] as ((event: Event) => void) | null)?.call(this, event);
    this.dispatchEvent(event);
  }

  postMessage(message: unknown, transfer: Transferable[] | StructuredSerializeOptions = []): void {
    const list = Array.isArray(transfer) ? transfer : (transfer.transfer ?? []);
    if (this.#real) this.#real.postMessage(message, list);
    else this.#waiting.push([message, list]);
  }

  terminate(): void {
    this.#closed = true;
    this.#real?.terminate();
  }
}

window.Worker = new Proxy(NativeWorker, {
  construct(native, [address, options]: [string | URL, WorkerOptions?]) {
    const text = String(address);
    const file = text.startsWith('blob:') ? undefined : fileAt(text);
    return file === undefined
      ? new native(text, options)
      : (new StickWorker(bare(file).slice(root.length)) as unknown as Worker);
  },
});

(window as unknown as Record<string, unknown>)['kerfStick'] = {
  root,
  location: place,
  take: (name: string, what: Kept) => taken.set(name, what),
};
