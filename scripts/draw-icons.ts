import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from '@playwright/test';
import { icons } from '../src/site/offline/app-manifest.ts';
import { root } from '../src/store/index.ts';
import { browserArguments, browserPath } from './browser.ts';

// `npx tsx scripts/draw-icons.ts [folder]`: draws the site's mark, static/img/favicon.svg, in the sizes that devices ask for. The pictures
// are committed: a build needs no browser.
const folder = process.argv[2] ?? join(root, 'static/img');
const mark = readFileSync(join(root, 'static/img/favicon.svg'), 'utf8');
const paper = /fill="(#[0-9a-f]{6})" d="M0 0h32v32H0z"/.exec(mark)?.[1];
if (!paper)
  throw new Error('static/img/favicon.svg no longer begins with its paper: <path fill="#rrggbb" d="M0 0h32v32H0z"/>.');
/** A device may cut all but the circle in the middle, four fifths wide (W3C, Web Application Manifest, 5.6.1); the mark's corners stay in it. */
const withinCircle = 0.62;

mkdirSync(folder, { recursive: true });
const browser = await chromium.launch({ executablePath: browserPath(), args: browserArguments });
const page = await browser.newPage();
for (const { file, size, maskable } of icons) {
  const drawn = maskable ? Math.round(size * withinCircle) : size;
  await page.setViewportSize({ width: size, height: size });
  await page.setContent(
    `<body style="margin:0;display:grid;place-items:center;height:100vh;background:${paper}"><div style="width:${drawn}px;height:${drawn}px">${mark}</div></body>`,
  );
  writeFileSync(join(folder, file), await page.screenshot({ clip: { x: 0, y: 0, width: size, height: size } }));
}
await browser.close();
