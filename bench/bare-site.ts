import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

const page = `---
title: A plain page
---

A plain page of the classic theme with an ordinary amount of text.

## First part

${'A board of wood takes up moisture in damp air and gives it off in dry air, and its width follows. '.repeat(8)}

## Second part

| one | two |
| --- | --- |
| 1 | 2 |

${'Measure the board, note the air, and come back in another season to see what has changed. '.repeat(8)}
`;

/** Six fields and six folds of the framework alone, each field shown again as it is typed. */
const form = `---
title: Start
slug: /
---

import { useState } from 'react';

export function Field({ name }) {
  const [text, setText] = useState('4');
  return (
    <p data-field={name}>
      <label>{name} <input type="text" value={text} onChange={(event) => setText(event.target.value)} /></label>{' '}
      <output>{text}</output>
    </p>
  );
}

<div data-calculator="bare">
${[1, 2, 3, 4, 5, 6].map((at) => `<Field name="Field ${at}" />\n<details><summary>Fold ${at}</summary>Some words.</details>`).join('\n')}
</div>
`;

const config = `export default {
  title: 'Bare site',
  url: 'https://bare.example',
  baseUrl: '/',
  baseUrlIssueBanner: false,
  future: { v4: true, faster: true },
  presets: [['classic', { docs: { routeBasePath: '/' }, blog: false }]],
  themeConfig: { navbar: { title: 'Bare site' } },
};
`;

/**
 * Write a bare site of the classic preset, the floor that our pages are compared with; returns its folder.
 *
 * @param again false leaves one that stands as it is, with what was built of it
 */
export function writeBareSite(root: string, { again = true } = {}): string {
  const folder = join(root, '.kerf', 'bench', 'bare');
  if (!again && existsSync(folder)) return folder;
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(join(folder, 'docs'), { recursive: true });
  writeFileSync(join(folder, 'docusaurus.config.mjs'), config);
  writeFileSync(join(folder, 'package.json'), '{ "name": "bare", "private": true }\n');
  writeFileSync(
    join(folder, 'docs', 'plain.md'),
    page.replace('title: A plain page', 'title: A plain page\nslug: /plain'),
  );
  writeFileSync(join(folder, 'docs', 'index.mdx'), form);
  return folder;
}

/** The folder of the bare site as it was built last, or is built now. */
export function builtBareSite(root: string): string {
  const out = join(writeBareSite(root, { again: false }), 'build');
  if (!existsSync(out)) buildSite(root, join(out, '..'), out);
  return out;
}

/** Build the site of a folder with an empty cache; returns seconds. */
export function buildSite(root: string, folder: string, out: string): number {
  rmSync(join(folder, 'node_modules', '.cache', 'docusaurus'), { recursive: true, force: true });
  rmSync(join(root, 'node_modules', '.cache', 'docusaurus'), { recursive: true, force: true });
  rmSync(join(folder, '.docusaurus'), { recursive: true, force: true });
  const start = performance.now();
  execFileSync(join(root, 'node_modules', '.bin', 'docusaurus'), ['build', folder, '--out-dir', out], {
    stdio: ['ignore', 'ignore', 'inherit'],
    env: { ...process.env, NODE_ENV: 'production' },
  });
  return (performance.now() - start) / 1000;
}
