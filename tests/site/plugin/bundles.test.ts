import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { bundleRules } from '../../../src/site/plugin/bundles.ts';

/** As much of the bundler as is asked here: it comes with the framework. */
interface Bundler {
  rspack(
    options: object,
    done: (error: Error | null, stats?: { hasErrors(): boolean; toString(): string }) => void,
  ): void;
}
const { rspack } = createRequire(createRequire(import.meta.url).resolve('@docusaurus/faster/package.json'))(
  '@rspack/core',
) as Bundler;

/** Nothing of the framework’s is needed to be told the rules. */
const rulesFor = (isServer: boolean) => {
  class Nothing {}
  const instance = { DefinePlugin: Nothing, NormalModuleReplacementPlugin: Nothing };
  const utils = { currentBundler: { name: 'rspack', instance } };
  return bundleRules({ mode: 'development' } as never, isServer, utils as never, '/') as {
    optimization?: { realContentHash?: boolean };
  };
};

/** What is written of a program that fetches two modules, by file: one says a word, the other holds a figure. */
async function bundled(word: string, figure: string, optimization: object): Promise<Map<string, string>> {
  const context = mkdtempSync(join(tmpdir(), 'bundles-'));
  try {
    writeFileSync(join(context, 'main.js'), "import('./word.js').then(console.log);import('./figure.json');");
    writeFileSync(join(context, 'word.js'), `export default ${JSON.stringify(word)};`);
    writeFileSync(join(context, 'figure.json'), JSON.stringify({ figure, long: 'x'.repeat(300) }));
    const path = join(context, 'written');
    const output = { path, chunkFilename: '[name].[contenthash:8].js' };
    await new Promise<void>((resolve, reject) =>
      rspack({ mode: 'production', context, entry: './main.js', output, optimization }, (error, stats) =>
        error || stats?.hasErrors() ? reject(error ?? new Error(`${stats}`)) : resolve(),
      ),
    );
    return new Map(readdirSync(path).map((file) => [file, readFileSync(join(path, file), 'utf8')]));
  } finally {
    rmSync(context, { recursive: true, force: true });
  }
}

/** Of one bundle in forty the name is made of figures alone: a word whose bundle has such a name, and that name. */
async function wordOfFigures(): Promise<{ word: string; name: string }> {
  // The first tries are known to find none.
  for (let at = 52; at < 1000; at += 1) {
    const word = `t${at}`;
    for (const file of (await bundled(word, '', { realContentHash: false })).keys()) {
      const name = file.split('.')[1] ?? '';
      if (/^\d{8}$/.test(name)) return { word, name };
    }
  }
  throw new Error('No bundle has a name of figures alone.');
}

test.each([
  ['the pages', true],
  ['a browser', false],
])('no figure in a bundle for %s is taken for the name of another bundle', async (_, isServer) => {
  const { word, name } = await wordOfFigures();
  const figure = `3.14${name}159`;
  const { optimization = {} } = rulesFor(isServer);
  const { realContentHash } = optimization;
  const written = await bundled(word, figure, realContentHash === undefined ? {} : { realContentHash });
  expect([...written.values()].filter((text) => text.includes(figure))).toHaveLength(1);
});
