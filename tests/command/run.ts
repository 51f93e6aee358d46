import { run } from '../../src/command/run.ts';

/** Run the command line in this process and gather what it writes. */
export async function kerf(...args: string[]): Promise<{ code: number; out: string; err: string }> {
  let out = '';
  let err = '';
  const code = await run(args, {
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
  });
  return { code, out, err };
}
