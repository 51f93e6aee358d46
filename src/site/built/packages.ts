import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** A package as the lock names it. */
export interface LockedPackage {
  version?: string;
  /** Where it was fetched from; left out of our lock, so that each machine asks its own registry. */
  resolved?: string;
  integrity?: string;
  dev?: boolean;
  devOptional?: boolean;
  optional?: boolean;
  link?: boolean;
  hasInstallScript?: boolean;
}

/** A package that the site is built with, as it lies on the disk. */
export interface Package {
  name: string;
  version: string;
  /** An SPDX expression. */
  licence: string;
  /** The text of its licence; undefined where it brings none. */
  text?: string;
}

/** The packages of a lock by their path, `node_modules/…`; the project itself is none. */
export function lockedPackages(root: string): Map<string, LockedPackage> {
  const lock = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')) as {
    packages: Record<string, LockedPackage>;
  };
  return new Map(Object.entries(lock.packages).filter(([path]) => path !== ''));
}

/** Packages whose own file names no licence; each says it in the file named here, in these words. */
const stated: Readonly<Record<string, { licence: string; file: string; words: string }>> = {
  eval: { licence: 'MIT', file: 'LICENSE', words: 'Permission is hereby granted, free of charge' },
  format: { licence: 'MIT', file: 'Readme.md', words: 'MIT license' },
  'png-js': { licence: 'MIT', file: 'LICENSE', words: 'MIT License' },
  'require-like': { licence: 'MIT', file: 'Readme.md', words: 'under the MIT license' },
};

/** The SPDX expression of a package, from its own file or what it says elsewhere; undefined where it says nothing. */
function licenceOf(folder: string, name: string, own: unknown): string | undefined {
  if (typeof own === 'string') return own;
  // The forms of old: one that is named within, and a list of them.
  const named = [own].flat().map((one) => (one as { type?: unknown } | undefined)?.type);
  if (named.every((one) => typeof one === 'string')) return named.join(' OR ');
  const known = stated[name];
  if (!known) return undefined;
  return readFileSync(join(folder, known.file), 'utf8').includes(known.words) ? known.licence : undefined;
}

/**
 * The packages that the site is made with, in the order of their names; tools for tests and checks are none of them. One that was not
 * installed, as a program for another machine, is left out.
 *
 * @throws Error that names the packages whose licence is not known
 */
export function packagesOfSite(root: string): Package[] {
  const found = new Map<string, Package>();
  const unknown: string[] = [];
  for (const [path, { dev, link, devOptional }] of lockedPackages(root)) {
    const folder = join(root, path);
    if (dev || devOptional || link || !existsSync(join(folder, 'package.json'))) continue;
    const own = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')) as Record<string, unknown>;
    const name = String(own['name'] ?? path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length));
    const version = String(own['version'] ?? '');
    const licence = licenceOf(folder, name, own['license'] ?? own['licenses']);
    if (licence === undefined) {
      unknown.push(`${name} ${version}`);
      continue;
    }
    const text = licenceText(folder);
    found.set(`${name}@${version}`, { name, version, licence, ...(text === undefined ? {} : { text }) });
  }
  if (unknown.length > 0)
    throw new Error(
      `These packages do not say under which licence they are: ${unknown.join(', ')}. Read them, and name it in packages.ts.`,
    );
  return [...found.values()].sort((a, b) => (`${a.name}@${a.version}` < `${b.name}@${b.version}` ? -1 : 1));
}

function licenceText(folder: string): string | undefined {
  const file = readdirSync(folder).find((name) => /^(licen[cs]e|copying)([.-].*)?$/i.test(name));
  if (file === undefined) return undefined;
  try {
    return readFileSync(join(folder, file), 'utf8').replaceAll('\r\n', '\n').trim();
  } catch {
    // A folder of that name.
    return undefined;
  }
}

/** Licences under which a part may be given on with the site, and what they ask is met by the list that goes with it. */
const allowed = new Set([
  '0BSD',
  'Apache-2.0',
  'BlueOak-1.0.0',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'BSL-1.0',
  'CC-BY-4.0',
  'CC0-1.0',
  'ISC',
  'MIT',
  'MIT-0',
  'Python-2.0',
  'Unlicense',
  'Zlib',
]);

/**
 * Packages under a licence that asks for more, and why they may be used so: they are tools of the build, unchanged, and no part of what is
 * served.
 */
const toolsUnder: Readonly<Record<string, string>> = { 'MPL-2.0': 'lightningcss' };

/** Whether an SPDX expression is met: with `OR` by one side, with `AND` by both. */
export function isAllowed(expression: string): boolean {
  const plain = expression.trim().replace(/^\((.*)\)$/, '$1');
  if (/\sOR\s/.test(plain)) return plain.split(/\sOR\s/).some(isAllowed);
  if (/\sAND\s/.test(plain)) return plain.split(/\sAND\s/).every(isAllowed);
  return allowed.has(plain);
}

/** Packages that may not be used, each with its licence. */
export const refusedAmong = (packages: readonly Package[]): string[] =>
  packages
    .filter(({ name, licence }) => !isAllowed(licence) && !name.startsWith(toolsUnder[licence] ?? '\0'))
    .map(({ name, version, licence }) => `${name} ${version}: ${licence}`);
