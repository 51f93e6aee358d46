import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

// `tsx scripts/sbom.ts [file]`: the bill of materials of program and site (CycloneDX), as npm makes it from the lock; nothing is fetched.
// npm is shown the project without its tools for tests and checks: told to leave them out, it leaves out too what both ask for.

const root = fileURLToPath(new URL('..', import.meta.url));
const file = resolve(process.argv[2] ?? join(root, '.kerf', 'sbom.cdx.json'));

const read = (name: string) => JSON.parse(readFileSync(join(root, name), 'utf8'));
const { devDependencies, scripts, allowScripts, ...project } = read('package.json');
const lock = read('package-lock.json');
const packages = Object.entries(lock.packages as Record<string, { dev?: boolean; devOptional?: boolean }>).filter(
  ([path, { dev, devOptional }]) => path !== '' && !dev && !devOptional,
);
delete lock.packages[''].devDependencies;

const folder = mkdtempSync(join(tmpdir(), 'sbom-'));
try {
  writeFileSync(join(folder, 'package.json'), JSON.stringify(project));
  writeFileSync(
    join(folder, 'package-lock.json'),
    JSON.stringify({ ...lock, packages: { '': lock.packages[''], ...Object.fromEntries(packages) } }),
  );
  const made = JSON.parse(
    execFileSync('npm', ['sbom', '--sbom-format', 'cyclonedx', '--package-lock-only'], {
      cwd: folder,
      encoding: 'utf8',
      maxBuffer: 100_000_000,
    }),
  );
  // npm names the project after its folder.
  made.metadata.component.name = project.name;
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, `${JSON.stringify(made, null, 2)}\n`);
  console.log(`${file}: ${made.components.length} components`);
} finally {
  rmSync(folder, { recursive: true });
}
