import { restUntilClosed, workersOf } from './client.ts';
import { readCacheName } from './kept-files.ts';

/**
 * Names of the caches that this browser has of the site; of another site in another folder of the host, none.
 *
 * @param folder the folder of the site on its host, as `baseUrl` gives it
 */
export async function ownCaches(folder: string): Promise<string[]> {
  if (typeof caches === 'undefined') return [];
  return (await caches.keys()).filter((name) => readCacheName(folder, name) || name === `kerf-pages ${folder}`);
}

/**
 * Take away what this browser keeps of the site's own files: the worker, then the caches that it fills. What readers typed is not touched.
 * Nothing of it is kept again in this tab until the reader asks; a later visit keeps it anew, unless the reader chose that nothing be kept
 * (`choose('nothing')`).
 *
 * @param folder the folder of the site on its host, as `baseUrl` gives it
 * @returns false where the browser refused
 */
export async function forgetOffline(folder: string): Promise<boolean> {
  try {
    restUntilClosed();
    const registrations = (await workersOf()?.getRegistrations()) ?? [];
    await Promise.all(
      registrations.filter(({ scope }) => new URL(scope).pathname === folder).map((each) => each.unregister()),
    );
    await Promise.all((await ownCaches(folder)).map((name) => caches.delete(name)));
    return true;
  } catch {
    return false;
  }
}
