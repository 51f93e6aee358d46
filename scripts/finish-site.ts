import { resolve } from 'node:path';
import { finishSite } from '../src/site/built/finish.ts';

// `tsx scripts/finish-site.ts [folder]`: what is done to the folder of a built site before it is published.
await finishSite(resolve(process.argv[2] ?? 'build'));
