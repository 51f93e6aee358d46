import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import ts from 'typescript';
import { entries } from '../../src/library/entries.ts';

/** What is kept of an earlier run, so that a second one takes seconds. */
const cache = join('.kerf', 'package-types');

/** Write the declarations of the entries and of all that they import into the cache. */
function declare(root: string): void {
  const { config } = ts.readConfigFile(join(root, 'tsconfig.json'), ts.sys.readFile);
  const { options } = ts.convertCompilerOptionsFromJson(config.compilerOptions, root);
  const program = ts.createIncrementalProgram({
    rootNames: Object.values(entries).map(({ source }) => join(root, source)),
    options: {
      ...options,
      noEmit: false,
      allowImportingTsExtensions: true,
      declaration: true,
      emitDeclarationOnly: true,
      incremental: true,
      tsBuildInfoFile: join(root, cache, 'tsbuildinfo'),
      rootDir: join(root, 'src'),
      outDir: join(root, cache, 'out'),
    },
  });
  program.emit();
}

/** Imports of a declaration, both as statements and within a type. */
const relativeImport = /((?:from\s+|import\()['"])(\.{1,2}\/[^'"]+)\.ts(['"])/g;

/**
 * Write the declarations that the entries need, each import under the name that the file bears when it runs.
 *
 * @param root folder of the project
 * @param folder where the declarations go
 * @returns the file of each entry, from that folder
 */
export function writeTypes(root: string, folder: string): Record<string, string> {
  declare(root);
  const out = join(root, cache, 'out');
  const declarationOf = (source: string) => source.replace(/\.ts$/, '.d.ts');
  const waiting = Object.values(entries).map(({ source }) => join(out, relative('src', declarationOf(source))));
  const done = new Set<string>();
  for (let file = waiting.pop(); file !== undefined; file = waiting.pop()) {
    if (done.has(file)) continue;
    done.add(file);
    if (!existsSync(file)) throw new Error(`${file} was not written; a type in its source is not complete.`);
    const text = readFileSync(file, 'utf8');
    for (const [, , path] of text.matchAll(relativeImport)) waiting.push(join(dirname(file), `${path}.d.ts`));
    const target = join(folder, relative(out, file));
    mkdirSync(dirname(target), { recursive: true });
    writeFileSync(target, text.replace(relativeImport, '$1$2.js$3'));
  }
  return Object.fromEntries(
    Object.entries(entries).map(([name, { source }]) => [
      name,
      relative('src', declarationOf(source)).replaceAll('\\', '/'),
    ]),
  );
}
