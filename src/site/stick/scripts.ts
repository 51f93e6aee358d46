import { transform } from 'esbuild';

/** Under this name the script that stands in for the server is found by all others. */
export const standIn = 'kerfStick';

/** Where a script looks for the address of its page: the stand-in answers with the site's own path. */
const place = Object.fromEntries(
  ['location', 'window.location', 'self.location', 'document.location', 'globalThis.location'].map((name) => [
    name,
    `${standIn}.location`,
  ]),
);

/**
 * A script of the site that believes to stand at the site's own address, though its page is a file somewhere on a disk.
 *
 * @param code a whole script of the site
 */
export async function stickScript(code: string): Promise<string> {
  if (!/\blocation\b/.test(code)) return code;
  // Only names that the script does not declare itself are replaced, and nothing in texts.
  const made = await transform(code, {
    define: place,
    minifyWhitespace: true,
    minifySyntax: false,
    legalComments: 'inline',
    charset: 'utf8',
  });
  return made.code;
}

/**
 * The script that fetches all others, which it then finds beside itself.
 *
 * @throws Error where it does not say from where it fetches
 */
export function stickRuntime(code: string, base: string): string {
  const parts = code.split(`.p=${JSON.stringify(base)}`);
  if (parts.length !== 2)
    throw new Error(
      `the script that fetches all others names ${base} ${parts.length - 1} times as their place, in place of once`,
    );
  return parts.join(`.p=${standIn}.root`);
}

/** Whether a script is one that runs in a worker. */
export const isWorker = (code: string): boolean => /\bimportScripts\(/.test(code);

/** Names of the chunks that the script of a worker may bring in, as it names them. */
export function chunksOfWorker(code: string): string[] {
  const hashes = /\{((?:\w+:"[0-9a-f]{8}",?)+)\}/g;
  const names = new Map(
    [...code.matchAll(/\{((?:\w+:"[a-zA-Z][\w-]*",?)+)\}\)\[\w+\]\|\|/g)].flatMap(([, list = '']) => entries(list)),
  );
  return [...code.matchAll(hashes)]
    .flatMap(([, list = '']) => entries(list))
    .map(([id, hash]) => `${names.get(id) ?? id}.${hash}.js`);
}

const entries = (list: string) =>
  [...list.matchAll(/(\w+):"([^"]*)"/g)].map(([, id = '', value = '']) => [id, value] as const);

/** A text as a script that hands it over: a file may fetch no other, but run it. */
export const textTwin = (name: string, text: string): string =>
  `${standIn}.take(${scriptText(name)},${scriptText(text)})\n`;

/** A script as one that hands itself over unrun, for a worker to run. */
export const codeTwin = (name: string, code: string): string =>
  `${standIn}.take(${scriptText(name)},function(){${code}\n})\n`;

/** A text in a script: what ends lines there is written otherwise. */
const scriptText = (text: string) =>
  JSON.stringify(text).replaceAll('\u2028', '\\u2028').replaceAll('\u2029', '\\u2029');
