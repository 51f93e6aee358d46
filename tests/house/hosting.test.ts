import { readFileSync } from 'node:fs';
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
