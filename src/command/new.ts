import { existsSync, writeFileSync } from 'node:fs';
import { starterFile } from '../method/record/starter.ts';
import { readOptions } from './options.ts';
import { type Command, UsageError } from './usage.ts';

const usage = `new <file>

Writes a small whole method to begin from. A file that is there already is left as it is.
`;

/** Write a method to begin from. */
export const newMethod: Command = (args, output) => {
  const { values, positionals } = readOptions('new', {
    args: [...args],
    allowPositionals: true,
    options: { help: { type: 'boolean', short: 'h' } },
  });
  if (values.help) {
    output.out(`kerf ${usage}`);
    return 0;
  }
  const [file, more] = positionals;
  if (file === undefined || more !== undefined)
    throw new UsageError('new: name one file, such as kerf new methods/my-board.yaml.');
  if (!/\.ya?ml$/.test(file))
    throw new UsageError(`new: “${file}” does not end in .yaml. Write kerf new ${file}.yaml.`);
  if (existsSync(file))
    throw new UsageError(
      `new: ${file} is there already, and is left as it is. Name another file, or move that one away.`,
    );
  try {
    writeFileSync(file, starterFile, { flag: 'wx' });
  } catch (error) {
    throw new UsageError(
      `new: ${file} cannot be written: ${(error as Error).message}. Name a file in a folder that is there.`,
    );
  }
  output.out(`${file} is written. Next: kerf check ${file}\n`);
  return 0;
};
