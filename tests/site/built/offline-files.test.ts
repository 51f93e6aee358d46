import { createHash } from 'node:crypto';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, describe, expect, test } from 'vitest';
import { listFiles, offlineStep } from '../../../src/site/built/offline.ts';
import { chunksOfPages, layerOf, secondChunks } from '../../../src/site/built/offline-files.ts';

const routes = (folder: string) =>
  [
    `"${folder}-abc":{"__comp":"11111111","config":"22222222"}`,
    `"${folder}woods-a1b":{"__comp":"33333333","woods":"44444444"}`,
    `"${folder}woods/white-ash-c25":{"__comp":"55555555","__context":{"plugin":"22222222"},"facts":"66666666"}`,
    `"${folder}booklets/resin/-0af":{"__comp":"77777777","contents":[{"Content":"88888888"},{"Content":"99999999"}]}`,
    `"${folder}how-to/bubbles-1ce":{"__comp":"aaaaaaaa","content":"99999999"}`,
  ].join(',');

describe('chunks of pages', () => {
  test.each(['/', '/sub/dir/'])('are read from the main script of a site in %s', (folder) => {
    const pages = chunksOfPages(`var r=JSON.parse('{${routes(folder)}}')`, folder);
    expect(pages.get('/woods/white-ash')).toEqual(['55555555', '22222222', '66666666']);
    expect(pages.get('/booklets/resin')).toEqual(['77777777', '88888888', '99999999']);
    expect([...pages.keys()]).toContain('/');
  });

  test.each(['/', '/sub/dir/'])('of the woods are read from the line that holds for all of them, in %s', (folder) => {
    const pages = chunksOfPages(
      `var r={${routes(folder)}};for(let[e]of t.h)r["${folder}woods/"+e+"/-wood"]={__comp:"55555555",__context:{plugin:"22222222"},facts:"facts-"+e};let h="sugar-maple.0f31cc,white-oak.8facd7".split(",")`,
      folder,
    );
    for (const wood of ['sugar-maple', 'white-oak'])
      expect(pages.get(`/woods/${wood}`), wood).toEqual(['55555555', '22222222']);
  });

  test('one that a page of the first layer asks for too is not of the second', () => {
    expect([...secondChunks(chunksOfPages(routes('/'), '/'))].sort()).toEqual([
      '55555555',
      '66666666',
      '77777777',
      '88888888',
    ]);
  });
});

test.each([
  ['index.html', 'first'],
  ['404.html', 'first'],
  ['woods/index.html', 'first'],
  ['woods/white-ash/index.html', 'second'],
  ['reference/index.html', 'second'],
  ['reference/tables/trgs-907/index.html', 'second'],
  ['booklets/resin/index.html', 'second'],
  ['how-to/oily-rags/index.html', 'first'],
  ['how-to/resin-and-hardeners/index.html', 'first'],
  ['bench/index.html', 'first'],
  ['search.json', 'first'],
  ['data/methods/first-tray.yaml', 'first'],
  ['data/methods/index.json', 'first'],
  ['data/shop-sample.yaml', 'first'],
  ['data/species.json', 'second'],
  ['data/woods/white-ash.0f31cc.json', 'second'],
  ['schemas/method.schema.json', 'second'],
  ['assets/js/66666666.12345678.js', 'second'],
  ['assets/js/33333333.12345678.js', 'first'],
  ['assets/js/20372.12345678.js', 'first'],
  ['assets/js/woods.12345678.js', 'first'],
  ['assets/css/styles.12345678.css', 'first'],
  ['assets/fonts/KaTeX_Main-Regular-0123456789abcdef.woff2', 'first'],
  ['assets/fonts/KaTeX_Main-Regular-0123456789abcdef.ttf', undefined],
  ['fonts/kerf-book.woff2', 'first'],
  ['fonts/LICENSE.txt', undefined],
  ['app.webmanifest', 'first'],
  ['img/app-192.png', 'first'],
  ['img/readme-phone.png', undefined],
  ['sitemap.xml', undefined],
  ['kerf-and-cure.zip', undefined],
  ['_headers', undefined],
  ['hosting/nginx-headers.conf', undefined],
  ['.nojekyll', undefined],
  ['offline-files.json', undefined],
  ['offline-worker.js', undefined],
])('%s is kept in layer %s', (path, layer) => {
  expect(layerOf(path, new Set(['66666666']))).toBe(layer);
});

describe('a built folder', () => {
  const made: string[] = [];
  afterEach(() => {
    for (const folder of made.splice(0)) rmSync(folder, { recursive: true });
  });
  function folderOf(files: Readonly<Record<string, string>>): string {
    const folder = mkdtempSync(join(tmpdir(), 'offline-'));
    made.push(folder);
    for (const [path, text] of Object.entries(files)) {
      mkdirSync(dirname(join(folder, path)), { recursive: true });
      writeFileSync(join(folder, path), text);
    }
    return folder;
  }
  const site = {
    'index.html': '<h1>Home</h1>',
    '404.html': '<script src=/assets/js/main.01234567.js defer></script>',
    'woods/white-ash/index.html': 'ash',
    'assets/js/main.01234567.js': routes('/'),
    'assets/js/66666666.01234567.js': 'facts',
  };

  test('is listed with the hash and the sizes of what is kept', async () => {
    const list = await listFiles(folderOf(site));
    expect(Object.keys(list.first)).toEqual(['404.html', 'assets/js/main.01234567.js', 'index.html']);
    expect(Object.keys(list.second)).toEqual(['assets/js/66666666.01234567.js', 'woods/white-ash/index.html']);
    expect(list.first['index.html']).toBe(createHash('sha256').update('<h1>Home</h1>').digest('base64'));
    expect(list.sizes.second).toMatchObject({ files: 2, bytes: 8 });
  });

  test('has another version as soon as one byte of what is kept is another, and the same again on its own output', async () => {
    const one = await listFiles(folderOf(site));
    const other = await listFiles(folderOf({ ...site, 'woods/white-ash/index.html': 'Ash' }));
    const unkept = await listFiles(folderOf({ ...site, 'sitemap.xml': '<urlset/>' }));
    expect(other.version).not.toBe(one.version);
    expect(unkept.version).toBe(one.version);
    const folder = folderOf(site);
    await offlineStep.run(folder);
    const worker = readFileSync(join(folder, 'offline-worker.js'), 'utf8');
    await offlineStep.run(folder);
    expect(readFileSync(join(folder, 'offline-worker.js'), 'utf8')).toBe(worker);
    expect(worker).toContain(one.version);
    // The browser asks for it with each page: it stays small, as the list is a file of its own.
    expect(worker.length).toBeLessThan(8_000);
  });

  test('whose pages the main script does not know stops the build, and says why', async () => {
    await expect(listFiles(folderOf({ ...site, 'how-to/new/index.html': 'new' }))).rejects.toThrow(
      'main.01234567.js does not say which chunks how-to/new/index.html asks for',
    );
    await expect(listFiles(folderOf({ 'index.html': '' }))).rejects.toThrow('is no built site');
  });
});
