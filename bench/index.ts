import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { calculators } from '../src/calculators/index.ts';
import { buildSite, writeBareSite } from './bare-site.ts';
import { barePage, budgets } from './budgets.ts';
import { benchCompute, benchStart } from './compute.ts';
import { benchCure } from './cure.ts';
import { benchFinish } from './finish.ts';
import { interaction, printWaits } from './interaction.ts';
import { kinds, lookAt, printLooks } from './lighthouse.ts';
import { benchMethods } from './methods.ts';
import { benchOutline } from './outline.ts';
import { printRecomputed, printWorkerWork, recompute, workerWork } from './recompute.ts';
import { benchResin } from './resin.ts';
import { buildAtScale, pagesOf, printScale, sizes } from './scale.ts';
import { benchSchedule } from './schedule.ts';
import { serve } from './serve.ts';
import { benchStock } from './stock.ts';
import { type Weight, weigh, withoutFaces } from './weigh.ts';

const root = fileURLToPath(new URL('..', import.meta.url));

const kb = (bytes: number) => (bytes / 1024).toFixed(1).padStart(7);

function line(name: string, weight: Weight, floor: Weight): string {
  const { html, css, js, other, faces, total } = weight;
  const ratios = [withoutFaces(weight), total].map((bytes) => (bytes / floor.total).toFixed(2).padStart(7));
  return `${name.padEnd(34)}${[html, css, js, other, faces, total].map(kb).join('')}${ratios.join('')}`;
}

async function main(): Promise<void> {
  benchCompute();
  benchStock();
  benchOutline();
  benchFinish();
  benchResin();
  benchCure();
  benchSchedule();
  await benchMethods(root);
  benchStart();

  const bare = writeBareSite(root);
  const bareOut = join(bare, 'build');
  const bareSeconds = buildSite(root, bare, bareOut);
  const siteOut = join(root, 'build');
  const siteSeconds = buildSite(root, root, siteOut);

  const bareServer = await serve(bareOut);
  const bareWeight = (await weigh(bareServer.origin, ['/plain'])).get('/plain') as Weight;

  const siteServer = await serve(siteOut);
  const weights = await weigh(
    siteServer.origin,
    budgets.map(({ path }) => path),
  );
  const waits = await interaction(
    bareServer.origin,
    siteServer.origin,
    calculators.map(({ id }) => id),
  );
  const recomputed = await recompute(siteServer.origin);
  siteServer.close();
  bareServer.close();

  console.log('\nPages, gzipped KB until the network is quiet, and as a ratio to a bare page of the classic theme');
  console.log(`${''.padEnd(34)}   html    css     js  other  faces  total   without faces, all`);
  console.log(line('bare page', bareWeight, bareWeight));
  for (const { kind, path, most, mostInAll, goal } of budgets) {
    const held = `at most ${most.toFixed(2)} and ${mostInAll.toFixed(2)}${most > goal ? `, to come to ${goal.toFixed(2)}` : ''}`;
    console.log(`${line(kind, weights.get(path) as Weight, bareWeight)}   ${held}`);
  }
  const apart = bareWeight.total - barePage.total;
  console.log(
    `The bare page that budgets are held against has ${kb(barePage.total).trim()} KB${apart === 0 ? '' : `; this one differs by ${apart} bytes: write its figures into bench/budgets.ts`}.`,
  );

  printWaits(waits);
  printWorkerWork(await workerWork(root));
  printRecomputed(recomputed);
  printScale(await buildAtScale(root, sizes, pagesOf(siteOut)));
  printLooks(await lookAt(bareOut, siteOut, kinds, 5), 5);

  console.log('\nBuild from an empty cache');
  console.log(
    `bare site ${bareSeconds.toFixed(1)} s, this site ${siteSeconds.toFixed(1)} s: ratio ${(siteSeconds / bareSeconds).toFixed(2)}`,
  );
}

await main();
