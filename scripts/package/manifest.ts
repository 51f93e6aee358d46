import { entries } from '../../src/library/entries.ts';

/** What the package takes from the manifest of the project. */
export interface ProjectManifest {
  name: string;
  version: string;
  description: string;
  license: string;
  engines: { node: string };
  dependencies: Readonly<Record<string, string>>;
}

/** A range of versions that keep the same interface; which one was tried stands in the lock file of the project. */
function rangeOf(name: string, dependencies: Readonly<Record<string, string>>): string {
  const version = dependencies[name];
  if (version === undefined)
    throw new Error(
      `The package imports ${name}, which is no dependency in package.json. Add it there, or import it nowhere that an entry reaches.`,
    );
  return `^${version}`;
}

/**
 * The manifest of the package.
 *
 * @param project the manifest of the project
 * @param imported packages that its code imports
 * @param types the declarations of each entry, from the folder `types`
 */
export function packageManifest(
  project: ProjectManifest,
  imported: readonly string[],
  types: Readonly<Record<string, string>>,
) {
  const { name, version, license, engines, dependencies } = project;
  return {
    name,
    version,
    description:
      'Moisture, movement, stock, outlines, abrasives, resin and finishes of serving boards: published figures with their sources, calculators, and shop methods checked and planned.',
    keywords: ['wood movement', 'moisture content', 'shrinkage', 'epoxy resin', 'serving board', 'woodworking'],
    license,
    type: 'module',
    engines,
    sideEffects: false,
    bin: { kerf: './lib/kerf.js' },
    exports: {
      ...Object.fromEntries(
        Object.keys(entries).map((entry) => [
          `./${entry}`,
          { types: `./types/${types[entry]}`, default: `./lib/${entry}.js` },
        ]),
      ),
      './schemas/*': './schemas/*',
      './datapackage.json': './datapackage.json',
      './package.json': './package.json',
    },
    files: ['lib', 'types', 'src', 'schemas', 'methods', 'datapackage.json', 'CHANGELOG.md'],
    dependencies: Object.fromEntries(imported.map((each) => [each, rangeOf(each, dependencies)])),
  };
}
