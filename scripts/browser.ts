import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';

const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome'];

/** Start a browser that asks nothing of the network by itself. */
export const browserArguments = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** Path of a Chromium on this machine: `CHROMIUM_PATH` where set, else the first found in `PATH`; undefined where there is none. */
export function findBrowser(): string | undefined {
  const given = process.env.CHROMIUM_PATH;
  if (given) return given;
  const folders = (process.env.PATH ?? '').split(delimiter);
  return folders.flatMap((folder) => names.map((name) => join(folder, name))).find((file) => existsSync(file));
}

/**
 * Path of a Chromium on this machine.
 *
 * @throws Error that says how to get one
 */
export function browserPath(): string {
  const path = findBrowser();
  if (path) return path;
  throw new Error(
    'No Chromium was found. On Debian: apt-get install chromium. Elsewhere: set CHROMIUM_PATH to the path of one.',
  );
}
