import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { build } from 'esbuild';
import { publint } from 'publint';
import ts from 'typescript';
import { afterAll, describe, expect, test } from 'vitest';
import { entries, nodeEntries } from '../../src/library/entries.ts';
import { libraryExample } from '../../src/site/reference/library-data.ts';
import { root } from '../../src/store/index.ts';
import { examplesIn, freshProject, run } from './fresh-project.ts';

const project = freshProject();
// A thousand small files take their time on a busy machine.
afterAll(project.remove, 120_000);
const { folder, installed, manifest, tarball } = project;

/** Run a module in the fresh project; what it writes. */
function runModule(code: string): string {
  const file = join(folder, `module-${Math.random().toString(36).slice(2)}.mjs`);
  writeFileSync(file, code);
  return run(process.execPath, [file], folder);
}

describe('the package as it is packed', () => {
  test('publint finds nothing, not even a suggestion', async () => {
    const packed = readFileSync(tarball);
    const buffer = packed.buffer.slice(packed.byteOffset, packed.byteOffset + packed.byteLength) as ArrayBuffer;
    const { messages } = await publint({ pack: { tarball: buffer }, level: 'suggestion', strict: true });
    expect(messages).toEqual([]);
  });

  test('every entry resolves to its code and its types where modules are ESM', () => {
    const cli = join(root, 'node_modules', '@arethetypeswrong', 'cli', 'dist', 'index.js');
    // The package is ESM alone, as its README says: older ways to resolve are not judged.
    const options = ['--profile', 'esm-only', '--exclude-entrypoints', 'package.json', '--no-emoji'];
    const done = spawnSync(process.execPath, [cli, tarball, ...options], { encoding: 'utf8' });
    expect([done.status, done.stdout.match(/^node16 \(from ESM\): OK \(ESM\)/gm)?.length], done.stdout).toEqual([
      0,
      Object.keys(entries).length,
    ]);
  });

  test('names those dependencies that its code imports, and holds no test, no page and nothing of React', () => {
    const { dependencies } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
    for (const [name, range] of Object.entries(manifest.dependencies)) expect(range).toBe(`^${dependencies[name]}`);
    expect(Object.keys(manifest.dependencies).filter((name) => /react|docusaurus|codemirror/.test(name))).toEqual([]);
    expect(existsSync(join(installed, 'src', 'site'))).toBe(false);
    expect(existsSync(join(installed, 'tests'))).toBe(false);
  });

  test('has a map to the source of every module', () => {
    const maps = [...reachedFrom(join(installed, 'lib', 'quantity.js')).keys()].map((file) =>
      JSON.parse(readFileSync(`${file}.map`, 'utf8')),
    );
    const at = (path: string) =>
      maps.flatMap(({ sources, sourcesContent }) =>
        sources.flatMap((each: string, place: number) => (each.endsWith(path) ? [sourcesContent[place]] : [])),
      );
    const path = 'src/model/quantity/read.ts';
    expect(at(path)).toEqual([readFileSync(join(root, path), 'utf8')]);
  });
});

/** Modules of the package that a module loads, itself included, and what they import from elsewhere. */
function reachedFrom(file: string, seen = new Map<string, string[]>()): Map<string, string[]> {
  if (seen.has(file)) return seen;
  const imported = [
    ...readFileSync(file, 'utf8').matchAll(/^(?:import|export|\} from)\b[^'"\n]*["']([^'"]+)["'];$/gm),
  ].map(({ 1: path = '' }) => path);
  seen.set(
    file,
    imported.filter((path) => !path.startsWith('.')),
  );
  for (const path of imported.filter((each) => each.startsWith('.'))) reachedFrom(resolve(dirname(file), path), seen);
  return seen;
}

describe('a fresh project', () => {
  test('imports every entry', () => {
    const names = Object.keys(manifest.exports)
      .map((path) => path.slice(2))
      .filter((name) => name in entries);
    expect(names).toEqual(Object.keys(entries));
    const code = names
      .map((name) => `console.log('${name}', Object.keys(await import('kerf-and-cure/${name}')).length > 3);`)
      .join('\n');
    expect(runModule(code)).toBe(names.map((name) => `${name} true\n`).join(''));
  });

  test.each(Object.keys(entries).filter((name) => !nodeEntries.includes(name)))('%s runs in a browser too', (name) => {
    const reached = reachedFrom(join(installed, 'lib', `${name}.js`));
    expect([...new Set([...reached.values()].flat())].filter((path) => /^node:|react/.test(path))).toEqual([]);
  });

  test('that reads a length carries no list of woods into its page', async () => {
    const { outputFiles } = await build({
      stdin: {
        contents: "import { parseQuantity } from 'kerf-and-cure/quantity'; console.log(parseQuantity);",
        resolveDir: folder,
      },
      bundle: true,
      minify: true,
      write: false,
      platform: 'browser',
      format: 'esm',
    });
    const text = outputFiles[0]?.text ?? '';
    expect(text).not.toContain('african-blackwood');
    expect(text.length).toBeLessThan(60_000);
  });

  test.each(['bundler', 'nodenext'] as const)(
    'compiles with moduleResolution %s, with no other types at hand',
    (how) => {
      const file = join(folder, `${how}.ts`);
      writeFileSync(
        file,
        `${Object.keys(entries)
          .map((name, at) => `import * as room${at} from 'kerf-and-cure/${name}';`)
          .join('\n')}
import { answer, calculatorById } from 'kerf-and-cure/calculators';
import type { Plan, WorkedMethod } from 'kerf-and-cure/method';
export const all = [${Object.keys(entries).map((_, at) => `room${at}`)}];
const found = calculatorById('width-change');
if (!found) throw new Error('gone');
const outcome = answer(found, { width: '240 mm' });
export const level: 'good' | 'care' | 'stop' | 'unknown' | undefined = outcome.ok ? outcome.value.result.verdict?.level : undefined;
export const piecesOf = (plan: Plan): number => (plan.worked satisfies WorkedMethod).pieces;
// @ts-expect-error A number is no level: the types are there, and are no any.
export const wrong: number = level;
`,
      );
      const program = ts.createProgram([file], {
        strict: true,
        noEmit: true,
        target: ts.ScriptTarget.ES2023,
        lib: ['lib.es2023.d.ts', 'lib.dom.d.ts'],
        types: [],
        module: how === 'bundler' ? ts.ModuleKind.ESNext : ts.ModuleKind.NodeNext,
        moduleResolution: how === 'bundler' ? ts.ModuleResolutionKind.Bundler : ts.ModuleResolutionKind.NodeNext,
      });
      const ours = program.getSourceFiles().filter(({ fileName }) => fileName.startsWith(folder));
      expect(ours.length).toBeGreaterThan(Object.keys(entries).length);
      const wrong = ours.flatMap((each) => [
        ...program.getSyntacticDiagnostics(each),
        ...program.getSemanticDiagnostics(each),
      ]);
      expect(
        wrong.map(
          ({ file: at, messageText }) => `${at?.fileName}: ${ts.flattenDiagnosticMessageText(messageText, '\n')}`,
        ),
      ).toEqual([]);
    },
  );
});

const readme = readFileSync(join(installed, 'README.md'), 'utf8');

describe('the README', () => {
  test.each(examplesIn(readme, 'js'))('runs as it stands at line $line and writes what it says', ({ code, output }) => {
    expect(runModule(code)).toBe(output);
  });

  test('is not alone: what the page of the library shows runs too', () => {
    expect(runModule(`${libraryExample}\nconsole.log(outcome.value.result.verdict.level);`)).toBe('good\n');
  });

  test('lists every entry with what it holds', () => {
    const listed = [...readme.matchAll(/^\| `kerf-and-cure\/([a-z]+)` \| (.*) \|$/gm)].map(({ 1: name, 2: about }) => [
      name,
      about,
    ]);
    expect(Object.fromEntries(listed)).toEqual(
      Object.fromEntries(Object.entries(entries).map(([name, { about }]) => [name, about])),
    );
  });

  test('has commands that run one after the other', () => {
    const lines = examplesIn(readme, 'sh')
      .flatMap(({ code }) => code.trim().split('\n'))
      .filter((line) => line.startsWith('npx kerf '));
    expect(lines.length).toBeGreaterThan(5);
    // npx itself is tried with the first; it takes a second each time.
    const [first = '', ...rest] = lines;
    const kerf = [
      first.replace('npx ', 'npx --offline --no -- '),
      ...rest.map((line) => line.replace('npx kerf', './node_modules/.bin/kerf')),
    ];
    for (const line of kerf) {
      const done = spawnSync('sh', ['-c', line], { cwd: folder, encoding: 'utf8' });
      expect([line, done.status, done.stderr]).toEqual([line, 0, '']);
      if (!line.includes(' sheet ')) expect(done.stdout.length, line).toBeGreaterThan(20);
    }
    expect(readFileSync(join(folder, 'my-board.pdf')).subarray(0, 5).toString()).toBe('%PDF-');
  });

  test('many files are checked by workers, from the code of the package', () => {
    const method = join(installed, 'methods', 'first-tray.yaml');
    const files = Array.from({ length: 18 }, (_, at) => {
      const file = join(folder, `method-${at}.yaml`);
      writeFileSync(file, readFileSync(method, 'utf8').replace('act: oil', at === 3 ? 'act: oill' : 'act: oil'));
      return file;
    });
    const done = spawnSync(join(folder, 'node_modules', '.bin', 'kerf'), ['check', ...files, '--json'], {
      encoding: 'utf8',
    });
    const told = JSON.parse(done.stdout) as { file: string }[];
    expect([done.status, [...new Set(told.map(({ file }) => file))]]).toEqual([1, [files[3]]]);
  });
});
