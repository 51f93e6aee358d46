import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));

/**
 * Rooms and floors; a file imports from its own and from those to the right of it here, and from nowhere else. Stated once, here.
 *
 * `model` alone stands for all its rooms, which are listed from the top down: each imports those behind it.
 */
const rooms = [
  'finish',
  'resin',
  'abrasive',
  'outline',
  'stock',
  'movement',
  'moisture',
  'species',
  'food',
  'data',
  'quantity',
  'evidence',
];
const below: Readonly<Record<string, readonly string[]>> = {
  theme: ['site', 'view', 'calculators', 'model'],
  site: ['view', 'library', 'method', 'calculators', 'store', 'model'],
  library: ['command', 'method', 'calculators', 'store', 'model'],
  command: ['method', 'calculators', 'store', 'model'],
  view: ['calculators', 'model'],
  method: ['calculators', 'model'],
  calculators: ['model'],
  store: ['model'],
  model: rooms.map((room) => `model/${room}`),
  ...Object.fromEntries(
    rooms.map((room, at) => [`model/${room}`, rooms.slice(at + 1).map((under) => `model/${under}`)]),
  ),
};

/** Floors that run in a browser, a worker and Node alike. */
const pure = ['model', 'calculators', 'method'];

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

/**
 * The floor of a file, or its room where it stands in the model: `model/species`; a file right under `model` is of the floor itself.
 * Of a calculator's folder what is drawn belongs to the views, as all of `calculators/view` does.
 */
function roomOf(file: string): string {
  const [floor = '', room = '', ...inside] = relative(join(root, 'src'), file).split(/[\\/]/);
  if (floor === 'calculators' && (room === 'view' || file.endsWith('.tsx'))) return 'view';
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

  test('the model, the pure half of the calculators and the methods know no React, no Docusaurus and no Node', () => {
    const free = files.filter((file) => pure.includes(roomOf(file).split('/')[0] as string));
    const wrong = free.flatMap((file) =>
      importsOf(readFileSync(file, 'utf8'))
        .filter((specifier) => /^(react|react-dom|node:.*|@docusaurus|@theme)(\/|$)/.test(specifier))
        .map((specifier) => `${relative(root, file)} imports ${specifier}`),
    );
    expect(free.length).toBeGreaterThan(300);
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
