import { projectOffer } from '../../src/command/project-commands.ts';
import { run } from '../../src/command/run.ts';

/** Run the command line in this process and gather what it writes. */
export async function kerf(...args: string[]): Promise<{ code: number; out: string; err: string }> {
  let out = '';
  let err = '';
  const output = {
    out: (text: string) => {
      out += text;
    },
    err: (text: string) => {
      err += text;
    },
  };
  const code = await run(args, output, projectOffer);
  return { code, out, err };
}
