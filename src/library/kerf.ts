#!/usr/bin/env node
// The command of the package: all that runs outside the folder of the project.
import { commands } from '../command/commands.ts';
import { run } from '../command/run.ts';
import { toTheTerminal } from '../command/usage.ts';

process.exitCode = await run(process.argv.slice(2), toTheTerminal, {
  commands,
  how: 'Files are named from the folder in which you stand.',
});
