import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from '../../store/index.ts';
import type { Step } from './finish.ts';
import { type Package, packagesOfSite, refusedAmong } from './packages.ts';

/** Name of the list in the built site. */
export const licencesFile = 'THIRD-PARTY-LICENCES.txt';

/** What the licences of others ask of whoever gives their work on: a list of them goes with the site. */
export const licences: Step = {
  does: 'Licences of others',
  run(folder) {
    const packages = packagesOfSite(root);
    const refused = refusedAmong(packages);
    if (refused.length > 0)
      throw new Error(`These packages may not be used under their licences: ${refused.join('; ')}`);
    const text = licencesText(packages);
    writeFileSync(join(folder, licencesFile), text);
    return `${packages.length} packages, ${text.length} bytes`;
  },
};

/** The list: each text once, with the packages that it holds for. */
export function licencesText(packages: readonly Package[]): string {
  const byText = new Map<string, Package[]>();
  for (const one of packages) {
    const text = one.text ?? `(It brings no text of its own; it names its licence: ${one.licence}.)`;
    byText.set(text, [...(byText.get(text) ?? []), one]);
  }
  const parts = [...byText].map(
    ([text, ones]) =>
      `${ones.map(({ name, version, licence }) => `${name} ${version} (${licence})`).join('\n')}\n\n${text}\n`,
  );
  return [
    'Works of others with which this site is made, each under its own licence. Not all of each is part of what is served.\n',
    ...parts,
  ].join(`\n${'-'.repeat(78)}\n\n`);
}
