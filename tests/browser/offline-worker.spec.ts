import { expect, test } from '@playwright/test';
import { becomes, Deployment, isControlled, lookForNewer } from './deployment.ts';
import { watch } from './site.ts';

test.use({ serviceWorkers: 'allow', reuseContext: false } as object);

/** A site of a few small files, of the form in which ours is built: what the worker does is the same, and takes no time. */
function tinySite(at: string, words: string, hash: string) {
  const page = (text: string) =>
    `<!doctype html><html lang=en><title>${text}</title><h1>${text}</h1><p>${words}</p><script src=${at}assets/js/main.${hash}.js></script>`;
  const routes = ['-aaa', 'woods-bbb', 'woods/ash-ccc', 'woods/oak-ddd', 'offline-eee', 'how-to/bubbles-fff']
    .map((route) => `"${at}${route}":{"__comp":"00000000"}`)
    .join(',');
  return {
    'index.html': page('Home'),
    '404.html': page('There is no such page'),
    'offline/index.html': page('Without a network'),
    'woods/index.html': page('Woods'),
    'woods/ash/index.html': page('Ash'),
    'woods/oak/index.html': page('Oak'),
    'how-to/bubbles/index.html': page('Bubbles'),
    'search.json': JSON.stringify({ words }),
    [`assets/js/main.${hash}.js`]: `({${routes}});window.main='${words}'`,
    [`assets/js/lazy.${hash}.js`]: `window.lazy='${words}'`,
  };
}

const register = (at: string) =>
  navigator.serviceWorker
    .register(`${at}offline-worker.js`, { scope: at, updateViaCache: 'none' })
    .then(() => undefined);

for (const at of ['/', '/sub/dir/'])
  test(`pages of a site in ${at} open with the server off, by any form of address`, async ({ browser }) => {
    const site = new Deployment(at);
    const context = await browser.newContext();
    try {
      site.write(tinySite(at, 'one', '00000001'));
      await site.finish();
      await site.start();
      const page = await context.newPage();
      await page.goto(site.address);
      await page.evaluate(register, at);
      await isControlled(page);
      await site.isKept(page, 'first');
      await site.stop();
      const complaints = watch(page, site.address);
      for (const form of [
        'how-to/bubbles',
        'how-to/bubbles/',
        'how-to/bubbles.html',
        'how-to/bubbles/index.html',
        'how-to/bubbles?x=1#y',
      ]) {
        await page.goto(site.address + form);
        await expect(page.locator('h1'), form).toHaveText('Bubbles');
        expect(await page.evaluate(() => (window as unknown as { main: string }).main)).toBe('one');
      }
      for (const form of ['', 'index.html', '?x=1']) {
        await page.goto(site.address + form);
        await expect(page.locator('h1'), form).toHaveText('Home');
      }
      for (const form of ['nowhere', 'nowhere/at/all/', 'no%20where?x', 'a:b']) {
        await page.goto(site.address + form);
        await expect(page.locator('h1'), form).toHaveText('There is no such page');
      }
      // A wood that is not kept yet is not called unknown.
      await page.goto(`${site.address}woods/ash?q=1`);
      await expect(page.locator('h1')).toHaveText('Without a network');
      expect(new URL(page.url()).searchParams.get('page')).toBe(`${at}woods/ash?q=1`);
      await site.start();
      await page.evaluate(() => navigator.serviceWorker.controller?.postMessage({ say: 'keep the rest' }));
      await site.isKept(page, 'second');
      await site.stop();
      await page.goto(`${site.address}woods/ash/`);
      await expect(page.locator('h1')).toHaveText('Ash');
      expect(complaints).toEqual([]);
    } finally {
      await context.close();
      await site.end();
    }
  });

test('old and new files never mix: half a deployment, a late chunk, two tabs, and a page that came from the server', async ({
  browser,
}) => {
  const site = new Deployment();
  const context = await browser.newContext();
  try {
    const old = tinySite('/', 'old', '00000001');
    site.write(old);
    await site.finish();
    await site.start();
    const page = await context.newPage();
    await page.goto(site.address);
    await page.evaluate(register, '/');
    await isControlled(page);
    await site.isKept(page, 'first');
    const before = site.version;

    // A newer version, of which a file has not come yet.
    const next = tinySite('/', 'new', '00000002');
    site.write(next);
    site.remove('assets/js/main.00000001.js');
    site.remove('assets/js/lazy.00000001.js');
    await site.finish();
    site.write({ 'how-to/bubbles/index.html': old['how-to/bubbles/index.html'] as string });
    await lookForNewer(page, false);
    await page.reload();
    await expect(page.locator('p')).toHaveText('old');
    const lazy = () =>
      page.evaluate(async () => {
        const script = document.body.appendChild(document.createElement('script'));
        script.src = '/assets/js/lazy.00000001.js';
        await new Promise((resolve, reject) => Object.assign(script, { onload: resolve, onerror: reject }));
        const { words } = await (await fetch('/search.json')).json();
        return [(window as unknown as { lazy: string }).lazy, words];
      });
    expect(await lazy()).toEqual(['old', 'old']);

    // A page that is not kept comes from the server, whole and new, and so do the files whose names do not tell their version.
    const second = await context.newPage();
    await second.goto(`${site.address}woods/ash`);
    await expect(second.locator('p')).toHaveText('new');
    expect(await second.evaluate(async () => (await (await fetch('/search.json')).json()).words)).toBe('new');
    await second.goto(site.address);
    expect(await second.evaluate(async () => (await (await fetch('/search.json')).json()).words)).toBe('old');

    // The rest comes: the new version waits, and the old one still serves both tabs.
    site.write(next);
    await lookForNewer(page, true);
    await second.goto(`${site.address}how-to/bubbles`);
    await expect(second.locator('p')).toHaveText('old');
    expect(await lazy()).toEqual(['old', 'old']);

    // Accepted.
    await page.evaluate(() =>
      navigator.serviceWorker.ready.then((it) => it.waiting?.postMessage({ say: 'take over' })),
    );
    await becomes(page, async (gone) => !(await caches.keys()).some((name) => name.endsWith(gone)), before);
    await site.stop();
    for (const tab of [page, second]) {
      await tab.reload();
      await expect(tab.locator('p')).toHaveText('new');
    }
  } finally {
    await context.close();
    await site.end();
  }
});
