import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Plugin } from '@docusaurus/types';
import { calculators } from '../../calculators/index.ts';
import { type SourceId, shortSource, sources } from '../../model/evidence/index.ts';
import { root } from '../../store/index.ts';
import { bundlerPolicy } from '../built/headers.ts';
import { writeShortList } from './pages-of-woods.ts';

const require = createRequire(import.meta.url);

type ConfigureBundler = NonNullable<Plugin['configureWebpack']>;
type BundlerConfig = Parameters<ConfigureBundler>[0];

/** What the bundler is told beside what the framework tells it: what a page carries is decided here. */
export function bundleRules(
  config: BundlerConfig,
  isServer: boolean,
  { currentBundler }: Parameters<ConfigureBundler>[2],
  baseUrl: string,
): ReturnType<ConfigureBundler> {
  keepFontsApart(config);
  renewCache(config, baseUrl);
  if (!isServer) {
    keepStylesApart(config);
    leaveOutFetchingAhead(config);
  }
  return {
    // This package is made of ES modules. The framework's generated files still ask for `require`, and so do the
    // chunks of the bundle that writes the pages; the ending tells Node so.
    module: { rules: [{ test: /[\\/]\.docusaurus[\\/].*\.js$/, type: 'javascript/auto' }, ownModules] },
    resolve: { alias: { ...unusedParts, ...ownParts } },
    plugins: [
      new currentBundler.instance.DefinePlugin({ KERF_WRITES_PAGES: JSON.stringify(isServer) }),
      new currentBundler.instance.NormalModuleReplacementPlugin(/[\\/]short-source\.ts$/, shortSourcesModule),
      ...(isServer
        ? []
        : [filesOfPages, new currentBundler.instance.NormalModuleReplacementPlugin(frameworksPreload, ownPreload)]),
      // While pages are written anew as somebody types, the framework keeps its list by itself.
      ...(isServer || config.mode !== 'production'
        ? []
        : [...writeShortList(join(root, '.docusaurus'), baseUrl)].map(
            ([module, file]) =>
              new currentBundler.instance.NormalModuleReplacementPlugin(new RegExp(`^${module}$`), file),
          )),
    ],
    ...(isServer
      ? { output: { chunkFilename: 'assets/js/[name].[contenthash:8].cjs' }, optimization: namesAsTheyAre }
      : {
          output: {
            // The addresses of its own files, workers among them, are then those that a browser with Trusted Types takes.
            trustedTypes: { policyName: bundlerPolicy, onPolicyCreationFailure: 'continue' },
          },
          // The framework turns the first off: without it, what several pages ask for later is written once for each of them.
          optimization: {
            ...namesAsTheyAre,
            mergeDuplicateChunks: true,
            splitChunks: { cacheGroups: { ...sharedBundles, ...sharedStyles, ...sharedLater } },
          },
        }),
  };
}

/**
 * Left to itself the bundler names each bundle anew once it is written small, and then writes the new name wherever the old one stands in a text. One
 * old name in forty is eight figures long and nothing else, and a long decimal of a table may hold just these.
 */
const namesAsTheyAre = { realContentHash: false };

/**
 * Our own modules do nothing by being imported: what a page does not use of them is left out, with all that it would bring along. Style sheets
 * do, and so does what the framework runs by itself (`chrome`).
 */
const ownModules = {
  test: /[\\/]src[\\/](model|calculators|method|site[\\/](?!chrome[\\/]))[^?]*\.tsx?$/,
  sideEffects: false,
};

/** Name of the file that holds the short names of the sources for the pages, among what the build writes. */
export const shortSourcesFile = 'short-sources.js';
const shortSourcesModule = `@generated/handbook/default/${shortSourcesFile}`;

/** The module of short names in place of the model's own, which looks them up in the whole list: a page names a source and lists none. */
export const shortSourcesText = (): string =>
  `const names = ${JSON.stringify(Object.fromEntries(sources.map(({ id }) => [id, shortSource(id as SourceId)])))};\nexport const shortSource = (id) => names[id];\n`;

/** Parts of the theme that run on every page for what no page has: here, the colouring of code by a reader of every language. */
const unusedParts = { [require.resolve('@docusaurus/theme-classic/lib/prism-include-languages')]: false as const };

/** What gets a page ready before it is shown. */
const frameworksPreload = /[\\/]core[\\/]lib[\\/]client[\\/]preload\.js$/;
const ownPreload = fileURLToPath(new URL('../chrome/preload.ts', import.meta.url));

/** Parts of ours in place of those that the policy of the site forbids: one writes markup as text, one programs as texts. */
const ownParts = {
  nprogress: fileURLToPath(new URL('../chrome/progress.ts', import.meta.url)),
  'zod/mini$': fileURLToPath(new URL('../chrome/zod-without-eval.ts', import.meta.url)),
};

/** One sheet for all pages would carry the style of each to every other: each part brings its own. */
function keepStylesApart(config: BundlerConfig): void {
  const { splitChunks } = config.optimization ?? {};
  if (typeof splitChunks === 'object') delete splitChunks.cacheGroups?.['styles'];
}

/** The framework writes the names of all bundles into every page once more, for fetching pages ahead, which `chrome/no-prefetch` turns off. */
function leaveOutFetchingAhead(config: BundlerConfig): void {
  config.plugins = (config.plugins ?? []).filter((plugin) => plugin?.constructor.name !== 'ChunkAssetPlugin');
}

interface Compiler {
  hooks: { done: { tap(name: string, then: (stats: Compiled) => void): void } };
}
interface Compiled {
  toJson(options: object): { namedChunkGroups?: Record<string, { chunks?: readonly (string | number)[] }> };
}

/**
 * Tell whoever writes the pages in which files the parts of a page stand, so that each names its own style and scripts: with this bundler
 * the framework's list knows only those of all pages, and a page would be drawn before its style is there.
 */
const filesOfPages = {
  apply(compiler: Compiler): void {
    compiler.hooks.done.tap('files-of-pages', (stats) => {
      const groups = stats.toJson({ all: false, chunkGroups: true }).namedChunkGroups ?? {};
      const generated = (file: string) => join(root, '.docusaurus', file);
      const list = generated('client-manifest.json');
      const manifest = JSON.parse(readFileSync(list, 'utf8')) as { origins: Record<string, string[]> };
      const parts = readFileSync(generated('registry.js'), 'utf8').matchAll(
        /"([^"]+)": \[\(\) => import\([^)]*\), "([^"]*)", require/g,
      );
      for (const [, name = '', module = ''] of parts) {
        manifest.origins[module] = (groups[name]?.chunks ?? []).map(String);
      }
      writeFileSync(list, JSON.stringify(manifest));
    });
  },
};

/** Style that several pages share, each in one sheet. */
const sharedStyles = Object.fromEntries(
  Object.entries({
    formulas: /[\\/]katex(\.css|[\\/]dist[\\/])/,
    'calculator-style':
      /[\\/]calculators[\\/]view[\\/](chart|drawing|drawn|frame|onward|resin|result|rows|take-away|timeline|verdict)\.module\.css/,
    'document-style': /[\\/]calculators[\\/]view[\\/]document\.module\.css/,
    'paper-style': /[\\/]calculators[\\/]view[\\/]paper\.module\.css/,
  }).map(([name, test]) => [
    name,
    { name, test, type: 'css/mini-extract', chunks: 'async' as const, enforce: true, priority: 60 },
  ]),
);

/**
 * What several calculators carry, each in one bundle of its own: a page with two of them, and the next page, fetch it once.
 * Left to itself the bundler writes the woods, the places and the sources into every calculator anew.
 */
const sharedBundles = Object.fromEntries(
  Object.entries({
    woods: /[\\/]model[\\/]species[\\/](all|compact|resolved)\b/,
    places: /[\\/]model[\\/]moisture[\\/]climates\b/,
    sources: /[\\/]model[\\/]evidence[\\/]sources[\\/]/,
    fields: /[\\/]node_modules[\\/]zod[\\/]/,
    charts: /[\\/]node_modules[\\/](d3-[a-z]+|internmap)[\\/]/,
    frame:
      /[\\/]calculators[\\/](kit[\\/](answer|address|fields|report)|view[\\/](CalculatorView|Frame|Form|Field|ResultView|Chart|DrawingView|use-inputs|download))\b/,
    // A calculator has a page of its own and stands in others.
    ...Object.fromEntries(
      calculators.map(({ id }) => [`calculator-${id}`, new RegExp(`[\\\\/]src[\\\\/]calculators[\\\\/]${id}[\\\\/]`)]),
    ),
  }).map(([name, test]) => [name, { name, test, chunks: 'async' as const, enforce: true, priority: 40 }]),
);

/** The part of a bundle that is looked at here. */
interface Bundle {
  name?: string | null | undefined;
  runtime: string | Iterable<string> | undefined;
  canBeInitial(): boolean;
}

const runtimesOf = ({ runtime = [] }: Bundle) => (typeof runtime === 'string' ? [runtime] : [...runtime]);

/**
 * What is fetched after a page stands, and has no name of its own: what three of its bundles or more would each hold is written once, where it is
 * large. A page fetches its bundles at once. Workers are left alone: they fetch one after the other, and what their bundles hold in common is cut to
 * what each uses only while it stands in them. Set apart it weighed half as much again, before the first answer.
 */
const sharedLater = {
  later: {
    chunks: (bundle: Bundle) =>
      !bundle.name && !bundle.canBeInitial() && runtimesOf(bundle).every((one) => one === 'runtime~main'),
    type: /^javascript/,
    minChunks: 3,
    minSize: 100_000,
    reuseExistingChunk: true,
    priority: 1,
  },
};

/** Fonts of KaTeX stay files of their own: written into the style sheet they would weigh on every page. */
function keepFontsApart(config: BundlerConfig): void {
  for (const rule of config.module?.rules ?? []) {
    if (typeof rule !== 'object' || rule === null || !(rule.test instanceof RegExp) || !rule.test.test('.woff2'))
      continue;
    const uses = Array.isArray(rule.use) ? rule.use : [];
    for (const use of uses) {
      if (typeof use === 'object' && use !== null && typeof use.options === 'object') use.options.limit = -1;
    }
  }
}

/** What figures and answers in compiled pages are made from, and what writes them in. */
const workedFrom = ['src/model', 'src/calculators', 'src/method', 'src/site/mdx', 'methods'];

/**
 * A bundler's cache of compiled how-to pages holds figures of the woods and the answers of calculators: when what they are made from
 * changes it is void. Without this a changed table row, or equation, would not reach a page whose own text did not change. It holds the
 * addresses of fonts too, which lie elsewhere once the site has another folder.
 */
function renewCache(config: BundlerConfig, baseUrl: string): void {
  const cache = (config as { experiments?: { cache?: { version?: string } } }).experiments?.cache;
  if (typeof cache !== 'object') return;
  const state = createHash('sha256').update(baseUrl);
  for (const folder of workedFrom) {
    const files = readdirSync(join(root, folder), { recursive: true, withFileTypes: true }).filter((one) =>
      one.isFile(),
    );
    for (const file of files.map(({ parentPath, name }) => join(parentPath, name)).sort()) {
      state.update(readFileSync(file));
    }
  }
  cache.version = `${cache.version ?? ''}-${state.digest('hex').slice(0, 16)}`;
}
