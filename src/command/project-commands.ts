import { type Commands, commands } from './commands.ts';
import type { Offer } from './run.ts';

const all: Commands = {
  ...commands,
  validate: {
    about: 'validate                             check records and tables against the schemas, read methods',
    load: async () => (await import('./validate.ts')).validate,
  },
};

/** What is offered in the folder of the project: all that runs anywhere, and the check of the project's own files. */
export const projectOffer: Offer = { commands: all, how: 'In the project folder: npm run -s kerf -- <command>.' };
