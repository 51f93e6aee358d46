import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import { howTo } from '../docs/how-to.ts';

const workflow = parse(readFileSync('hosting/publish.yaml', 'utf8')) as {
  jobs: Record<string, { needs?: string; steps: { run?: string; with?: Record<string, unknown> }[] }>;
};
const { scripts, engines } = JSON.parse(readFileSync('package.json', 'utf8')) as {
  scripts: Record<string, string>;
  engines: { node: string };
};

/** Commands of npm that a text names, by the script that each runs. */
const scriptsIn = (text: string) => [...text.matchAll(/\bnpm run (?:-s )?([a-z:]+)/g)].map(([, name = '']) => name);

test('the workflow file checks, builds, and publishes what was built', () => {
  const steps = workflow.jobs['build']?.steps ?? [];
  const runs = steps.flatMap(({ run }) => run ?? []);
  expect(runs.map((run) => scriptsIn(run)[0] ?? run.split(' ')[1])).toEqual(['ci', 'kerf', 'build']);
  expect(steps.at(-1)?.with).toEqual({ path: 'build' });
  expect(workflow.jobs['publish']?.needs).toBe('build');
  expect(String(steps.find((step) => step.with?.['node-version'])?.with?.['node-version'])).toBe(
    /\d+/.exec(engines.node)?.[0],
  );
});

test('the job file checks, builds, and publishes what was built', () => {
  const job = parse(readFileSync('hosting/publish-job.yaml', 'utf8')) as Record<string, { script?: string[] }> & {
    image: string;
    before_script: string[];
    pages: { script: string[]; artifacts: { paths: string[] } };
  };
  expect(job.image).toBe(`node:${/\d+/.exec(engines.node)?.[0]}`);
  expect(job.before_script.join()).toMatch(/^npm ci /);
  expect(job['check']?.script?.flatMap(scriptsIn)).toEqual(['kerf']);
  expect(job.pages.script).toEqual(['npm run build', 'mv build public']);
  expect(job.pages.artifacts.paths).toEqual(['public']);
});

const nginx = readFileSync('hosting/nginx.conf', 'utf8');
const apache = readFileSync('hosting/apache.conf', 'utf8');

test('both servers compress the same kinds of files, and keep the same ones for long', () => {
  const kinds = (line: string | undefined) =>
    (line ?? '').split(/\s+/).filter((kind) => kind !== '' && !/^text\/html$|javascript$/.test(kind));
  const ofNginx = kinds(/gzip_types ([^;]+);/.exec(nginx)?.[1]);
  expect(ofNginx.length).toBeGreaterThan(6);
  for (const [, list] of apache.matchAll(/AddOutputFilterByType \S+ (.+)/g)) expect(kinds(list)).toEqual(ofNginx);
  for (const text of [nginx, apache]) {
    expect(text).toContain('public, max-age=31536000, immutable');
    expect(text).toContain('no-cache');
  }
  const [, ofOne = ''] = /~(\S+)\s+"public/.exec(nginx) ?? [];
  const [, ofOther = ''] = /m#(\S+)#"$/m.exec(apache) ?? [];
  for (const [path, long] of [
    ['/assets/js/main.4c4647d4.js', true],
    ['/boards/assets/css/styles.2f672654.css', true],
    ['/assets/fonts/KaTeX_AMS-Regular-73ea273a72f4aca30ca528cf9117470a.woff2', true],
    ['/fonts/kerf-book.woff2', false],
    ['/index.html', false],
    ['/offline-worker.js', false],
    ['/assets/js/plain.js', false],
  ] as const) {
    expect(new RegExp(ofOne).test(path), `nginx ${path}`).toBe(long);
    expect(new RegExp(ofOther).test(path), `Apache ${path}`).toBe(long);
  }
});

test('the page on publishing leads to every file for hosts', () => {
  const page = howTo('publishing-your-own-site').source;
  for (const name of readdirSync('hosting')) expect(page).toContain(`hosting/${name}`);
});

test('every command that it or the page on publishing names is there', () => {
  const page = howTo('publishing-your-own-site').source;
  const named = [
    ...scriptsIn(page),
    ...Object.values(workflow.jobs).flatMap(({ steps }) => steps.flatMap(({ run = '' }) => scriptsIn(run))),
  ];
  expect(named.length).toBeGreaterThan(4);
  for (const name of named) expect(Object.keys(scripts)).toContain(name);
  for (const [, file = ''] of page.matchAll(/`((?:scripts|hosting|methods)\/[\w.-]+|LICENSE|[A-Z]+\.md|site\.yaml)`/g))
    expect(readFileSync(file, 'utf8').length, file).toBeGreaterThan(0);
});
