import type { Command } from './usage.ts';

/** Commands by name: what the help says of each, and how it is loaded. */
export type Commands = Readonly<Record<string, { about: string; load: () => Promise<Command> }>>;

/** The commands that run anywhere, by name. Each is loaded when asked for, so that none waits for what another needs. */
export const commands: Commands = {
  calc: {
    about: "calc <calculator> --json '<inputs>'  answer a calculation as JSON",
    load: async () => (await import('./calc.ts')).calc,
  },
  check: {
    about: 'check <files…>                       check methods against the rules',
    load: async () => (await import('./check.ts')).check,
  },
  new: {
    about: 'new <file>                           write a small method to begin from',
    load: async () => (await import('./new.ts')).newMethod,
  },
  plan: {
    about: 'plan <file>                          plan a method: times, sessions, what to buy',
    load: async () => (await import('./plan.ts')).plan,
  },
  sheet: {
    about: 'sheet <file> -o packet.pdf           write what is printed of a method',
    load: async () => (await import('./sheet.ts')).sheet,
  },
  species: {
    about: 'species [query] [--json]             list woods and their figures',
    load: async () => (await import('./species.ts')).species,
  },
  checks: {
    about: 'checks                               compare our figures with published ones',
    load: async () => (await import('./checks.ts')).checks,
  },
};
