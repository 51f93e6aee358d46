import { build } from 'esbuild';
import { entries, programs } from '../../src/library/entries.ts';

/** Packages that are asked for by name in a text, where no bundler sees it: what writes PDF loads its own fonts so. */
const askedByName = ['pdfmake'];

const packageOf = (specifier: string): string =>
  specifier
    .split('/')
    .slice(0, specifier.startsWith('@') ? 2 : 1)
    .join('/');

/**
 * Write the code of the package with its source maps: one module an entry, and what several of them share in modules beside them.
 *
 * @param root folder of the project
 * @param folder where the modules go
 * @returns the packages that the code imports
 */
export async function writeCode(root: string, folder: string): Promise<string[]> {
  const { metafile } = await build({
    absWorkingDir: root,
    entryPoints: [
      ...Object.entries(entries).map(([out, { source }]) => ({ out, in: source })),
      ...Object.entries(programs).map(([out, file]) => ({ out, in: file })),
    ],
    outdir: folder,
    // Beside the entries, since the command looks for its worker beside itself.
    chunkNames: 'shared-[hash]',
    bundle: true,
    splitting: true,
    packages: 'external',
    platform: 'node',
    format: 'esm',
    target: 'es2023',
    sourcemap: true,
    sourcesContent: true,
    legalComments: 'none',
    metafile: true,
    logLevel: 'error',
  });
  const imported = Object.values(metafile.outputs).flatMap((output) =>
    output.imports.filter(({ external, path }) => external && !path.startsWith('node:')).map(({ path }) => path),
  );
  return [...new Set([...imported, ...askedByName].map(packageOf))].sort();
}
