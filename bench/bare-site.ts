import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
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

/** Write a bare site of the classic preset, the floor that our pages are compared with; returns its folder. */
export function writeBareSite(root: string): string {
  const folder = join(root, '.kerf', 'bench', 'bare');
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(join(folder, 'docs'), { recursive: true });
  writeFileSync(join(folder, 'docusaurus.config.mjs'), config);
  writeFileSync(join(folder, 'package.json'), '{ "name": "bare", "private": true }\n');
  writeFileSync(
    join(folder, 'docs', 'plain.md'),
    page.replace('title: A plain page', 'title: A plain page\nslug: /plain'),
  );
  writeFileSync(join(folder, 'docs', 'index.md'), '---\ntitle: Start\nslug: /\n---\n\nThe start page.\n');
  return folder;
}
