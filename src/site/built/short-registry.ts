import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Step } from './finish.ts';
import { pagesIn } from './markup.ts';

/** A part of a page in the framework's list of all: how it is fetched, the file it was made from, its number. */
const part = /(\.bind\(\w+,(\d+)(?:,\d+)?\)\),)"[^"]*"(,\2\])/g;

/**
 * The main script without the files that parts of pages were made from. Only whoever writes the pages asks for them, and they are
 * folders of the machine that built the site.
 *
 * @returns how many parts it lists, beside it
 */
export function withoutFiles(script: string): { script: string; parts: number } {
  let parts = 0;
  const short = script.replace(part, (_, before: string, _number: string, after: string) => {
    parts += 1;
    return `${before}""${after}`;
  });
  return { script: short, parts };
}

/** Every page carries the list of the parts of all pages: keep it short. */
export const shortRegistry: Step = {
  does: 'Files of the machine in the list of parts',
  run(folder) {
    const scripts = join(folder, 'assets', 'js');
    const name = readdirSync(scripts).find((file) => /^main\.[0-9a-f]{8}\.js$/.test(file));
    if (name === undefined)
      throw new Error(`${scripts} holds no main.….js: it is no folder of a built site. Build it first.`);
    const before = readFileSync(join(scripts, name), 'utf8');
    const { script, parts } = withoutFiles(before);
    if (parts === 0)
      throw new Error(
        `${name} lists no part of a page in the form that is known: the bundler or the framework writes it otherwise now. Look at src/site/built/short-registry.ts.`,
      );
    if (script === before) return `none among ${parts}`;
    const next = `main.${createHash('sha256').update(script).digest('hex').slice(0, 8)}.js`;
    writeFileSync(join(scripts, name), script);
    renameSync(join(scripts, name), join(scripts, next));
    for (const page of pagesIn(folder)) {
      const text = readFileSync(join(folder, page), 'utf8');
      const named = text.replaceAll(`/${name}`, `/${next}`);
      if (named !== text) writeFileSync(join(folder, page), named);
    }
    return `left out of ${parts}, ${((before.length - script.length) / 1024).toFixed(0)} KB`;
  },
};
