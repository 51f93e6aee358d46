import { type ChildProcess, execFileSync, spawn } from 'node:child_process';
import { cpSync, mkdirSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** How many pages the sites have that are built to see how the work grows. */
export const sizes: readonly number[] = [350, 1000, 5000];

/** What a build took. */
export interface Built {
  pages: number;
  seconds: number;
  /** Seconds of processor that all its processes took together: another program at work does not count in it. */
  work: number;
  /** Most memory that all its processes held at one moment, MB. */
  memory: number;
}

const records = join('src', 'model', 'species', 'records');

/** The files of the project in a folder of their own, with the packages that are installed here. */
function copyOfSite(root: string, folder: string): void {
  rmSync(folder, { recursive: true, force: true });
  const files = execFileSync('git', ['ls-files', '-z'], { cwd: root, encoding: 'utf8' }).split('\0').filter(Boolean);
  for (const file of files) {
    if (file.startsWith('tests/')) continue;
    mkdirSync(dirname(join(folder, file)), { recursive: true });
    cpSync(join(root, file), join(folder, file));
  }
  symlinkSync(join(root, 'node_modules'), join(folder, 'node_modules'));
}

/** Woods that something else than their own record names, and so cannot be taken away. */
function namedElsewhere(folder: string, ids: readonly string[]): Set<string> {
  const texts = ['src', 'docs', 'methods']
    .flatMap((top) =>
      readdirSync(join(folder, top), { recursive: true, encoding: 'utf8' }).map((name) => join(top, name)),
    )
    .filter((name) => /\.(tsx?|mdx|yaml|json)$/.test(name) && !name.startsWith(records))
    .map((name) => readFileSync(join(folder, name), 'utf8'));
  const words = new Set(texts.flatMap((text) => text.match(/[a-z]+(?:-[a-z]+)*/g) ?? []));
  return new Set(ids.filter((id) => words.has(id)));
}

/** Woods of the copy made fewer or more until the site has so many pages: those added are of ours, under other names. */
function giveWoods(folder: string, pages: number, pagesNow: number): number {
  const ids = readdirSync(join(folder, records)).map((name) => name.replace(/\.yaml$/, ''));
  if (pages < pagesNow) {
    const named = namedElsewhere(folder, ids);
    const spare = ids.filter((id) => !named.has(id)).slice(0, pagesNow - pages);
    for (const id of spare) rmSync(join(folder, records, `${id}.yaml`));
    return pagesNow - spare.length;
  }
  for (let at = 0; at < pages - pagesNow; at += 1) {
    const id = ids[at % ids.length] as string;
    const lot = `lot-${String.fromCharCode(97 + Math.floor(at / ids.length))}`;
    const text = readFileSync(join(folder, records, `${id}.yaml`), 'utf8')
      .replace(/^id: .*$/m, `id: ${id}-${lot}`)
      .replace(/^name: (.*)$/m, (_, name: string) => `name: ${name.replace(/^["']|["']$/g, '')} ${lot}`)
      .replace(/^tradeNames:.*\n(?:[ -].*\n)*/m, 'tradeNames: []\n');
    writeFileSync(join(folder, records, `${id}-${lot}.yaml`), text);
  }
  return pages;
}

/** A process and all that it started, by their ids. */
function familyOf(pid: number): number[] {
  const parents = new Map<number, number[]>();
  for (const name of readdirSync('/proc')) {
    if (!/^\d+$/.test(name)) continue;
    try {
      const parent = Number(readFileSync(`/proc/${name}/stat`, 'utf8').split(') ').at(-1)?.split(' ')[1]);
      parents.set(parent, [...(parents.get(parent) ?? []), Number(name)]);
    } catch {
      // It ended while the list was read.
    }
  }
  const family = [pid];
  for (const one of family) family.push(...(parents.get(one) ?? []));
  return family;
}

/** Seconds of processor that a process took until now, with those of its ended children; a tick is a hundredth of a second. */
function workOf(pid: number): number {
  const fields = readFileSync(`/proc/${pid}/stat`, 'utf8').split(') ').at(-1)?.split(' ') ?? [];
  return fields.slice(11, 15).reduce((sum, ticks) => sum + Number(ticks) / 100, 0);
}

/** Memory that processes hold now, KB. */
function heldBy(family: readonly number[]): number {
  return family.reduce((sum, one) => {
    try {
      return sum + Number(/^VmRSS:\s+(\d+)/m.exec(readFileSync(`/proc/${one}/status`, 'utf8'))?.[1] ?? 0);
    } catch {
      return sum;
    }
  }, 0);
}

/** Wait for the end of a process; most memory held meanwhile, KB, and seconds of processor taken. */
function taken(child: ChildProcess): Promise<{ most: number; work: number }> {
  let most = 0;
  let work = 0;
  const clock = setInterval(() => {
    if (child.pid === undefined) return;
    const family = familyOf(child.pid);
    most = Math.max(most, heldBy(family));
    const works = family.map((one) => {
      try {
        return workOf(one);
      } catch {
        return 0;
      }
    });
    work = Math.max(
      work,
      works.reduce((sum, one) => sum + one, 0),
    );
  }, 250);
  return new Promise((resolve, reject) => {
    child.on('exit', (code) => {
      clearInterval(clock);
      if (code === 0) resolve({ most, work });
      else reject(new Error(`The build ended with exit code ${code}.`));
    });
  });
}

/** How many pages a built site has. */
export const pagesOf = (out: string) => (readFileSync(join(out, 'sitemap.xml'), 'utf8').match(/<loc>/g) ?? []).length;

/** Build sites of several sizes, of our own kinds of pages, each with an empty cache. */
export async function buildAtScale(root: string, wanted: readonly number[], pagesNow: number): Promise<Built[]> {
  const built: Built[] = [];
  for (const pages of wanted) {
    // Beside the project, not in it: the bundler looks for its own folder above a file.
    const folder = join(dirname(root), `.kerf-scale-${pages}`);
    try {
      copyOfSite(root, folder);
      giveWoods(folder, pages, pagesNow);
      execFileSync(process.execPath, [join('node_modules', 'tsx', 'dist', 'cli.mjs'), 'scripts/generate.ts'], {
        cwd: folder,
        stdio: ['ignore', 'ignore', 'inherit'],
      });
      const begun = performance.now();
      const child = spawn(
        process.execPath,
        [join('node_modules', '@docusaurus', 'core', 'bin', 'docusaurus.mjs'), 'build'],
        {
          cwd: folder,
          stdio: ['ignore', 'ignore', 'inherit'],
          env: { ...process.env, NODE_ENV: 'production' },
        },
      );
      const { most, work } = await taken(child);
      const seconds = (performance.now() - begun) / 1000;
      built.push({ pages: pagesOf(join(folder, 'build')), seconds, work, memory: most / 1024 });
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  }
  return built;
}

/** A table of builds, and between each and the next what a page more costs. */
export function printScale(built: readonly Built[]): void {
  console.log('\nBuild by pages, from an empty cache; behind it what each page more than in the line before costs');
  for (const [at, { pages, seconds, work, memory }] of built.entries()) {
    const before = built[at - 1];
    const more = before && pages - before.pages;
    const cost = more
      ? `   ${((1000 * (work - (before as Built).work)) / more).toFixed(1)} ms of processor, ${((memory - (before as Built).memory) / more).toFixed(2)} MB a page`
      : '';
    console.log(
      `${String(pages).padStart(6)} pages ${seconds.toFixed(0).padStart(5)} s ${work.toFixed(0).padStart(6)} s of processor ${memory.toFixed(0).padStart(6)} MB${cost}`,
    );
  }
}

// `tsx bench/scale.ts [pages with commas]`; counts the pages of the site that was built last.
if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const root = fileURLToPath(new URL('..', import.meta.url));
  const wanted = process.argv[2]?.split(',').map(Number) ?? sizes;
  printScale(await buildAtScale(root, wanted, pagesOf(join(root, 'build'))));
}
