import { workersOf } from './client.ts';
import { readCacheName } from './kept-files.ts';

/**
 * Take away what this browser keeps of the site's own files: the caches, and the worker that fills them. What readers typed is not touched.
 * With the next page that is opened from the network it is kept anew, unless the reader chose that nothing be kept (`choose('nothing')`).
 *
 * @param folder the folder of the site on its host, as `baseUrl` gives it
 * @returns false where the browser refused
 */
export async function forgetOffline(folder: string): Promise<boolean> {
  try {
    if (typeof caches !== 'undefined') {
      const own = (await caches.keys()).filter(
        (name) => readCacheName(folder, name) || name === `kerf-pages ${folder}`,
      );
      await Promise.all(own.map((name) => caches.delete(name)));
    }
    const registrations = (await workersOf()?.getRegistrations()) ?? [];
    const scope = new URL(folder, location.origin).href;
    await Promise.all(registrations.filter((each) => each.scope === scope).map((each) => each.unregister()));
    return true;
  } catch {
    return false;
  }
}
