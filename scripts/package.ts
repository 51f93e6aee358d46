// Writes the npm package of the model, the calculators, the methods and the command to dist/package, or to the folder that is named.
// The project itself stays private: what others install is made here.
import { cpSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { recordFolder, recordKinds, root, tableDefinitions, tableFile } from '../src/store/index.ts';
import { dataPackage } from './generate/data-package.ts';
import { writeCode } from './package/code.ts';
import { packageManifest } from './package/manifest.ts';
import { writeTypes } from './package/types.ts';

const folder = resolve(process.argv[2] ?? join(root, 'dist', 'package'));
const write = (name: string, value: unknown) =>
  writeFileSync(join(folder, name), `${JSON.stringify(value, null, 2)}\n`);

/** Copy a file or folder of the project to the same place in the package. */
function keep(path: string): void {
  const from = resolve(root, path);
  const to = join(folder, relative(root, from));
  mkdirSync(dirname(to), { recursive: true });
  cpSync(from, to, { recursive: true });
}

rmSync(folder, { recursive: true, force: true });
mkdirSync(folder, { recursive: true });
const project = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
const types = writeTypes(root, join(folder, 'types'));
const imported = await writeCode(root, join(folder, 'lib'));
write('package.json', packageManifest(project, imported, types));
// Tables and records lie where the store looks for them, which is where they lie in the project.
for (const definition of tableDefinitions) keep(tableFile(definition));
for (const kind of recordKinds) keep(recordFolder(kind));
for (const each of ['schemas', 'methods', 'LICENSE', 'CHANGELOG.md']) keep(each);
const pathOf = (file: string) => relative(root, file).replaceAll('\\', '/');
write(
  'datapackage.json',
  dataPackage(tableDefinitions, project.version, (table) => pathOf(tableFile(table))),
);
cpSync(join(root, 'src', 'library', 'README.md'), join(folder, 'README.md'));
console.log(`${relative(root, folder) || folder}: ${project.name} ${project.version}`);
