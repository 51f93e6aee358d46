import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { licencesText } from '../../src/site/built/licences.ts';
import { isAllowed, lockedPackages, packagesOfSite, refusedAmong } from '../../src/site/built/packages.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const own = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as Record<string, Record<string, string>>;

describe('the lock', () => {
  const packages = [...lockedPackages(root)];

  test('holds a hash of every package, and no host or repository that one comes from', () => {
    expect(packages.length).toBeGreaterThan(500);
    expect(
      packages
        .filter(([, { integrity }]) => !/^sha512-[A-Za-z0-9+/]{86}==$/.test(integrity ?? ''))
        .map(([path]) => path),
    ).toEqual([]);
    expect(packages.filter(([, { resolved, link }]) => resolved !== undefined || link).map(([path]) => path)).toEqual(
      [],
    );
    expect(readFileSync(join(root, 'package-lock.json'), 'utf8')).not.toMatch(/git\+|git:\/\/|"file:/);
  });

  test('every package that is asked for is asked for in one version alone', () => {
    for (const [name, version] of Object.entries({ ...own['dependencies'], ...own['devDependencies'] }))
      expect(version, name).toMatch(/^\d+\.\d+\.\d+$/);
  });

  test('packages that would run a program when they are installed are known, and none is let', () => {
    const named = packages
      .filter(([, { hasInstallScript }]) => hasInstallScript)
      .map(([path]) => path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length));
    expect(Object.keys(own['allowScripts'] ?? {}).sort()).toEqual([...new Set(named)].sort());
    expect(Object.values(own['allowScripts'] ?? {})).not.toContain(true);
    expect(readFileSync(join(root, '.npmrc'), 'utf8')).toMatch(/^ignore-scripts=true$/m);
  });
});

describe('licences', () => {
  test.each([
    ['MIT', true],
    ['(WTFPL OR MIT)', true],
    ['(MIT AND Zlib)', true],
    ['MIT AND GPL-3.0-only', false],
    ['GPL-3.0-only', false],
    ['UNLICENSED', false],
    ['SEE LICENSE IN LICENSE', false],
  ])('%s: %s', (expression, expected) => {
    expect(isAllowed(expression)).toBe(expected);
  });

  test('every package that the site is made with may be given on', () => {
    const packages = packagesOfSite(root);
    expect(packages.length).toBeGreaterThan(300);
    expect(refusedAmong(packages)).toEqual([]);
    expect(refusedAmong([{ name: 'other', version: '1.0.0', licence: 'MPL-2.0' }])).toHaveLength(1);
    // What is served holds React, so the list names it and prints its licence.
    expect(licencesText(packages)).toMatch(/^react \d[\d.]* \(MIT\)$[\s\S]*Permission is hereby granted/m);
  });
});

// CycloneDX 1.5, JSON: the required parts of the bill, and of each component.
test('the bill of materials is whole in form and names every package of the lock', { timeout: 120_000 }, () => {
  const folder = mkdtempSync(join(tmpdir(), 'sbom-'));
  try {
    const file = join(folder, 'sbom.json');
    execFileSync(process.execPath, [join(root, 'node_modules/tsx/dist/cli.mjs'), join(root, 'scripts/sbom.ts'), file], {
      cwd: root,
    });
    const bill = JSON.parse(readFileSync(file, 'utf8'));
    expect(bill).toMatchObject({ bomFormat: 'CycloneDX', specVersion: '1.5', version: 1 });
    expect(bill.serialNumber).toMatch(/^urn:uuid:[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/);
    expect(bill.metadata.component).toMatchObject({
      name: 'kerf-and-cure',
      purl: expect.stringMatching(/^pkg:npm\/kerf-and-cure@/),
    });
    const refs = new Set<string>();
    for (const one of bill.components) {
      expect(['library', 'application', 'framework'], one.name).toContain(one.type);
      expect(one.purl, one.name).toMatch(/^pkg:npm\/(%40[^/]+\/)?[^/@]+@\d/);
      expect(refs.has(one['bom-ref']), one['bom-ref']).toBe(false);
      refs.add(one['bom-ref']);
      for (const { alg, content } of one.hashes) expect([alg, content.length]).toEqual(['SHA-512', 128]);
    }
    for (const { ref } of bill.dependencies)
      expect(refs.has(ref) || ref === bill.metadata.component['bom-ref'], ref).toBe(true);
    for (const name of Object.keys(own['dependencies'] ?? {}))
      expect(
        bill.components.some((one: { name: string }) => one.name === name),
        name,
      ).toBe(true);
  } finally {
    rmSync(folder, { recursive: true });
  }
});
