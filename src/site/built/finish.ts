import { bothUnits } from './both-units.ts';
import { codeAfterPaint } from './code-after-paint.ts';
import { hosts } from './hosts.ts';
import { licences } from './licences.ts';
import { offlineStep } from './offline.ts';
import { pageData } from './page-data.ts';
import { policy } from './policy.ts';
import { shortRegistry } from './short-registry.ts';
import { styleClasses } from './style-classes.ts';
import { stylesInUse } from './styles-in-use.ts';

/**
 * One step on the folder of a built site, after the framework has written it. Steps run one after the other, as what one writes
 * is what the next one reads: hashes are taken of bytes that nobody changes any more.
 */
export interface Step {
  /** What it does, in words for the terminal. */
  does: string;
  /**
   * @param folder the built site
   * @returns what was done, in a short line with its numbers
   * @throws Error that names the file and what is wrong with it; the build fails
   */
  run(folder: string): string | Promise<string>;
}

/** The steps, in their order. */
export const steps: readonly Step[] = [
  styleClasses,
  stylesInUse,
  licences,
  shortRegistry,
  pageData,
  bothUnits,
  codeAfterPaint,
  policy,
  hosts,
  offlineStep,
];

/** Finish a built site: every step on its folder, with a line about each. */
export async function finishSite(folder: string, say: (line: string) => void = console.log): Promise<void> {
  for (const { does, run } of steps) say(`${does}: ${await run(folder)}`);
}
