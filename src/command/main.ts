import { projectOffer } from './project-commands.ts';
import { run } from './run.ts';
import { toTheTerminal } from './usage.ts';

process.exitCode = await run(process.argv.slice(2), toTheTerminal, projectOffer);
