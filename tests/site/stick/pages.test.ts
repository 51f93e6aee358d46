import { runInNewContext } from 'node:vm';
import { expect, test } from 'vitest';
import { stickPage, stickSheet } from '../../../src/site/stick/pages.ts';
import {
  chunksOfWorker,
  codeTwin,
  isWorker,
  stickRuntime,
  stickScript,
  textTwin,
} from '../../../src/site/stick/scripts.ts';
import { needsServer, startPage } from '../../../src/site/stick/start.ts';

const page = (head: string, body = '') =>
  `<!doctype html><html><head><meta charset=UTF-8>${head}</head><body>${body}</body></html>`;

test('links, scripts, forms and styles of a page lead to files, as seen from the page', () => {
  const made = stickPage(
    page(
      '<link rel=icon href=/img/favicon.svg><script src=/assets/js/main.1.js defer></script><style>@font-face{src:url(/fonts/a.woff2)format("woff2")}</style>',
      '<a class=x href="/woods/?q=a&amp;b#c">W</a><form action=/search/></form><a href="https://else.example/">E</a><a href="#here">H</a><p>href="/woods/"',
    ),
    'how-to/bubbles/index.html',
    '/',
  );
  expect(made).toContain('<link rel=icon href="../../img/favicon.svg">');
  expect(made).toContain('<script src="../../assets/js/main.1.js" defer>');
  expect(made).toContain('url(../../fonts/a.woff2)format');
  expect(made).toContain('<a class=x href="../../woods/index.html?q=a&amp;b#c">');
  expect(made).toContain('<form action="../../search/index.html">');
  expect(made).toContain('<a href="https://else.example/">E</a><a href="#here">H</a><p>href="/woods/"');
});

test('the script that stands in for the server runs first, and what a browser refuses to a file is gone', () => {
  const made = stickPage(
    page(
      '<meta http-equiv="Content-Security-Policy" content="script-src \'self\'"><link rel=preload as=font crossorigin=anonymous href=/fonts/a.woff2><link rel=manifest href=/site.webmanifest><script src=/a.js crossorigin integrity=sha256-x></script>',
    ),
    'index.html',
    '/boards/',
  );
  expect(made.indexOf('stick/place.js')).toBeLessThan(made.indexOf('a.js'));
  expect(made.match(/Content-Security-Policy/g)).toHaveLength(1);
  expect(made).toContain("connect-src 'none'");
  expect(made).not.toMatch(/script-src|preload|manifest|crossorigin|integrity/);
  expect(made).toContain('src=/a.js');
});

test('a page without a head is refused by its name', () => {
  expect(() => stickPage('<p>', 'odd/index.html', '/')).toThrow(/odd\/index\.html: has no <head>/);
});

test('a sheet names its files from where it stands', () => {
  expect(stickSheet('a{b:url(/boards/fonts/x.woff2)}c{d:url("data:,")}', 'assets/css/s.css', '/boards/')).toBe(
    'a{b:url(../../fonts/x.woff2)}c{d:url("data:,")}',
  );
});

test('a script asks the stand-in for its address, and nothing of its own name is touched', async () => {
  const made = await stickScript(
    'const at=window.location.pathname+location.search;function f(location){return location}const text="window.location";o.location;history.location.pathname',
  );
  expect(made).toContain('kerfStick.location.pathname+kerfStick.location.search');
  expect(made).toMatch(/function f\((location\d*)\)\{return \1\}/);
  expect(made).toContain('"window.location"');
  expect(made).toMatch(/o\.location/);
  expect(made).toContain('history.location.pathname');
});

test('the runtime finds scripts beside itself, and one that it cannot be told so is refused', () => {
  expect(stickRuntime('l.p="/boards/",l.x', '/boards/')).toBe('l.p=kerfStick.root,l.x');
  expect(() => stickRuntime('l.p="/elsewhere/"', '/boards/')).toThrow(/0 times/);
});

test('a worker’s chunks are read off its script', () => {
  const code =
    'l.u=e=>"assets/js/"+(({11:"calculator-a",12:"woods"})[e]||e)+"."+({11:"1fb2ce30",12:"fcd9b401",131:"535e6c78"})[e]+".js";importScripts(l.p+l.u(e))';
  expect(isWorker(code)).toBe(true);
  expect(isWorker('new Worker(u)')).toBe(false);
  expect(chunksOfWorker(code)).toEqual(['calculator-a.1fb2ce30.js', 'woods.fcd9b401.js', '131.535e6c78.js']);
});

test('what comes as a script says what it holds, whatever that is', () => {
  const came = new Map<string, unknown>();
  const run = (text: string) =>
    runInNewContext(text, { kerfStick: { take: (name: string, what: unknown) => came.set(name, what) } });
  const odd = '{"a":"</script>\u2028 `$' + '{x}` \\"}\n';
  run(textTwin('data/a.json', odd));
  expect(came.get('data/a.json')).toBe(odd);
  run(codeTwin('assets/js/w.js', '"use strict";self.n=1//'));
  expect(String(came.get('assets/js/w.js'))).toMatch(/^function\(\)\{"use strict";self\.n=1\/\/\n\}$/);
});

test('the page that is opened first leads on, says what to do where nothing opens, and what needs a server', () => {
  const made = startPage('<html><head><title data-rh=true>Oak &amp; Amber</title>');
  expect(made).toContain('<title>Oak &amp; Amber</title>');
  expect(made).toContain('<a href="site/index.html">');
  expect(made).toContain('src="site/stick/place.js"');
  expect(made).toMatch(/not unpacked/);
  for (const line of needsServer) expect(made).toContain(line);
});
