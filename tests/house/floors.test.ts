import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, relative, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, test } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));
const biome = join(root, 'node_modules', '.bin', 'biome');

/** Rooms of the model from the ground up: each may import from those before it. */
const rooms = [
  'evidence',
  'quantity',
  'food',
  'species',
  'moisture',
  'movement',
  'stock',
  'outline',
  'abrasive',
  'resin',
  'finish',
  'method',
].map((room) => `model/${room}`);

/** Rooms and floors; a file imports from its own and from those named here, and from nowhere else. */
const below: Readonly<Record<string, readonly string[]>> = {
  ...Object.fromEntries(rooms.map((room, at) => [room, rooms.slice(0, at)])),
  model: rooms,
  calculators: ['model'],
  store: ['model'],
  command: ['model', 'calculators', 'store'],
  site: ['model', 'calculators', 'store'],
  theme: ['model', 'calculators', 'site'],
};

function sourceFiles(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return sourceFiles(path);
    return /\.tsx?$/.test(entry.name) ? [path] : [];
  });
}

/** Specifiers of static and dynamic imports and of re-exports. */
function importsOf(text: string): string[] {
  const code = text.replace(/\/\*[\s\S]*?\*\//g, '').replace(/^\s*\/\/.*$/gm, '');
  const found = code.matchAll(/(?:\bfrom\s*|\bimport\s*\(?\s*)(['"])([^'"]+)\1/g);
  return [...found].map((match) => match[2] as string);
}

/** The floor of a file, or its room where it stands in the model: `model/species`; a file right under `model` is of the floor itself. */
function roomOf(file: string): string {
  const [floor = '', room = '', ...inside] = relative(join(root, 'src'), file).split(/[\\/]/);
  return floor === 'model' && inside.length > 0 ? `model/${room}` : floor;
}

const files = sourceFiles(join(root, 'src'));

describe('the import graph', () => {
  test('every folder of src is a floor that is known here', () => {
    expect(files.map(roomOf).filter((room) => !(room in below))).toEqual([]);
  });

  test('arrows only run down', () => {
    const wrong = files.flatMap((file) =>
      importsOf(readFileSync(file, 'utf8'))
        .filter((specifier) => specifier.startsWith('.') || specifier.startsWith('@site/src/'))
        .map((specifier) =>
          specifier.startsWith('.') ? resolve(dirname(file), specifier) : join(root, specifier.slice('@site/'.length)),
        )
        .filter((target) => relative(join(root, 'src'), target).split(/[\\/]/)[0] !== '..')
        .filter((target) => {
          const [from, to] = [roomOf(file), roomOf(target)];
          const allowed = below[from] ?? [];
          return from !== to && !allowed.includes(to) && !(to.startsWith('model/') && allowed.includes('model'));
        })
        .map((target) => `${relative(root, file)} imports ${relative(root, target)}`),
    );
    expect(wrong).toEqual([]);
  });

  test('the model and every calculator.ts know no React, no Docusaurus and no Node', () => {
    const pure = files.filter((file) => /[\\/]src[\\/]model[\\/]|[\\/]calculator\.ts$/.test(file));
    const wrong = pure.flatMap((file) =>
      importsOf(readFileSync(file, 'utf8'))
        .filter((specifier) => /^(react|react-dom|node:.*|@docusaurus|@theme)(\/|$)/.test(specifier))
        .map((specifier) => `${relative(root, file)} imports ${specifier}`),
    );
    expect(pure.length).toBeGreaterThan(10);
    expect(wrong).toEqual([]);
  });

  test('no import leads back to its own file', () => {
    const graph = new Map(
      files.map((file) => [
        file,
        // Types vanish when the code is translated, so a circle of types is none when it runs.
        importsOf(readFileSync(file, 'utf8').replace(/\b(import|export)\s+type\b[^;]*;/g, ''))
          .filter((specifier) => specifier.startsWith('.'))
          .map((specifier) => resolve(dirname(file), specifier))
          .filter((target) => existsSync(target) && /\.tsx?$/.test(target)),
      ]),
    );
    const finished = new Set<string>();
    const circles: string[] = [];
    const walk = (file: string, trail: readonly string[]): void => {
      if (finished.has(file)) return;
      if (trail.includes(file)) {
        circles.push([...trail.slice(trail.indexOf(file)), file].map((each) => relative(root, each)).join(' → '));
        return;
      }
      for (const target of graph.get(file) ?? []) walk(target, [...trail, file]);
      finished.add(file);
    };
    for (const file of files) walk(file, []);
    expect(circles).toEqual([]);
  });
});

describe('the linter refuses', () => {
  const workshop = mkdtempSync(join(tmpdir(), 'kerf-floors-'));
  afterAll(() => rmSync(workshop, { recursive: true, force: true }));
  // Without the part on git: a bare machine has none.
  const { vcs: _vcs, ...settings } = JSON.parse(readFileSync(join(root, 'biome.json'), 'utf8'));
  writeFileSync(join(workshop, 'biome.json'), JSON.stringify(settings));

  /** What the linter finds in files of this text, one line a fault: rule and file. One run for all: to start it takes longest. */
  function faults(written: Readonly<Record<string, string>>): string[] {
    rmSync(join(workshop, 'src'), { recursive: true, force: true });
    for (const [place, text] of Object.entries(written)) {
      mkdirSync(dirname(join(workshop, place)), { recursive: true });
      writeFileSync(join(workshop, place), text);
    }
    const run = spawnSync(biome, ['lint', '--reporter=github', '--max-diagnostics=none', 'src'], {
      cwd: workshop,
      encoding: 'utf8',
    });
    const lines = `${run.stdout}${run.stderr}`.matchAll(/title=[\w/]*\/(\w+),file=[^,]*?(src\/[^,]+),/g);
    return [...lines].map(([, rule, file]) => `${rule} ${file}`);
  }

  /** Imports, each in a file of its own: the same place, in a folder or under a name with a number. */
  const numbered = (imports: readonly (readonly [place: string, specifier: string])[]) =>
    imports.map(([place, specifier], at) => {
      const file = place.endsWith('/a.ts')
        ? place.replace('/a.ts', `/a${at}.ts`)
        : place.replace('/one/', `/one${at}/`);
      return { file, specifier, text: `import '${specifier}';\n` };
    });

  const upwards = numbered([
    ['src/model/species/a.ts', 'react'],
    ['src/model/species/a.ts', 'react/jsx-runtime'],
    ['src/model/species/a.ts', '@docusaurus/Link'],
    ['src/model/species/a.ts', 'node:fs'],
    ['src/model/species/a.ts', '../../calculators/kit/fields.ts'],
    ['src/model/species/a.ts', '../../store/index.ts'],
    ['src/model/species/a.ts', '../moisture/index.ts'],
    ['src/model/quantity/a.ts', '../species/index.ts'],
    ['src/model/evidence/a.ts', '../quantity/index.ts'],
    ['src/model/moisture/a.ts', '../movement/index.ts'],
    ['src/model/movement/a.ts', '../stock/index.ts'],
    ['src/model/stock/a.ts', '../outline/index.ts'],
    ['src/model/finish/a.ts', '../method/index.ts'],
    ['src/model/a.ts', 'node:fs'],
    ['src/calculators/one/calculator.ts', 'react'],
    ['src/calculators/one/calculator.ts', './View.tsx'],
    ['src/calculators/kit/a.ts', '../../store/index.ts'],
    ['src/calculators/kit/a.ts', '../../site/parts/a.ts'],
    ['src/store/a.ts', '../calculators/index.ts'],
    ['src/command/a.ts', '../site/plugin/index.ts'],
    ['src/command/a.ts', 'react'],
    ['src/site/a.ts', '../command/run.ts'],
  ]);
  const downwards = numbered([
    ['src/model/movement/a.ts', '../species/index.ts'],
    ['src/model/species/a.ts', '../evidence/index.ts'],
    ['src/model/method/a.ts', '../resin/index.ts'],
    ['src/calculators/one/View.tsx', 'react'],
    ['src/command/a.ts', '../store/index.ts'],
    ['src/site/a.ts', '../calculators/index.ts'],
  ]);

  test('every import that runs upwards, and none that runs down', () => {
    const found = faults(Object.fromEntries(upwards.map(({ file, text }) => [file, text])));
    const refused = upwards.filter(({ file }) => found.includes(`noRestrictedImports ${file}`));
    expect(refused).toEqual(upwards);
    const others = faults(Object.fromEntries(downwards.map(({ file, text }) => [file, text])));
    expect(others.filter((fault) => fault.startsWith('noRestrictedImports'))).toEqual([]);
  });

  test('a circle', () => {
    const circle = {
      'src/model/species/a.ts': "import { b } from './b.ts';\nexport const a = b;\n",
      'src/model/species/b.ts': "import { a } from './a.ts';\nexport const b = a;\n",
    };
    const rules = (written: Readonly<Record<string, string>>) => faults(written).map((fault) => fault.split(' ')[0]);
    expect(rules(circle)).toContain('noImportCycles');
    expect(rules({ ...circle, 'src/model/species/b.ts': 'export const b = 1;\n' })).not.toContain('noImportCycles');
  });
});
