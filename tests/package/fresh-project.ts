import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { root } from '../../src/store/index.ts';

/** Run a program to its end. @throws Error with all that it wrote, where it fails */
export function run(program: string, args: readonly string[], cwd: string): string {
  const done = spawnSync(program, args, { cwd, encoding: 'utf8' });
  if (done.status !== 0)
    throw new Error(`${program} ${args.join(' ')}\n${done.stdout}\n${done.stderr}${done.error ?? ''}`);
  return done.stdout;
}

/** A project elsewhere that has installed the package and nothing else. */
export interface FreshProject {
  folder: string;
  /** The package as it was packed. */
  tarball: string;
  /** Where it lies unpacked. */
  installed: string;
  manifest: { exports: Record<string, unknown>; dependencies: Record<string, string>; bin: { kerf: string } };
  remove(): void;
}

/**
 * Make the package, pack it, and lay it into a new project as an installation would: unpacked, beside those dependencies alone that it
 * names, which are the project's own copies. No network is asked.
 */
export function freshProject(): FreshProject {
  const workshop = mkdtempSync(join(tmpdir(), 'kerf-package-'));
  const made = join(workshop, 'made');
  run(process.execPath, ['--import', 'tsx', join('scripts', 'package.ts'), made], root);
  const [{ filename }] = JSON.parse(
    run('npm', ['pack', made, '--json', '--ignore-scripts', '--offline', '--pack-destination', workshop], workshop),
  );
  const tarball = join(workshop, filename);
  const folder = join(workshop, 'project');
  const modules = join(folder, 'node_modules');
  const installed = join(modules, 'kerf-and-cure');
  mkdirSync(installed, { recursive: true });
  run('tar', ['-xzf', tarball, '-C', installed, '--strip-components', '1'], workshop);
  const manifest = JSON.parse(readFileSync(join(installed, 'package.json'), 'utf8'));
  for (const name of Object.keys(manifest.dependencies)) {
    mkdirSync(dirname(join(modules, name)), { recursive: true });
    symlinkSync(join(root, 'node_modules', name), join(modules, name));
  }
  mkdirSync(join(modules, '.bin'));
  symlinkSync(join('..', 'kerf-and-cure', manifest.bin.kerf), join(modules, '.bin', 'kerf'));
  run('chmod', ['+x', join(installed, manifest.bin.kerf)], workshop);
  writeFileSync(join(folder, 'package.json'), JSON.stringify({ name: 'fresh', private: true, type: 'module' }));
  return {
    folder,
    tarball,
    installed,
    manifest,
    remove: () => rmSync(workshop, { recursive: true, force: true }),
  };
}

/** A stretch of code in a Markdown text, with what stands below it as its output. */
export interface Example {
  line: number;
  language: string;
  code: string;
  output: string | undefined;
}

/** The stretches of code of a Markdown text in these languages. */
export function examplesIn(markdown: string, ...languages: readonly string[]): Example[] {
  const blocks = [...markdown.matchAll(/^```(\w+)\n([\s\S]*?)^```$/gm)].map(
    ({ 1: language = '', 2: code = '', index }) => ({
      line: markdown.slice(0, index).split('\n').length,
      language,
      code,
    }),
  );
  return blocks.flatMap((block, at) => {
    const next = blocks[at + 1];
    if (!languages.includes(block.language)) return [];
    return [{ ...block, output: next?.language === 'text' ? next.code : undefined }];
  });
}
