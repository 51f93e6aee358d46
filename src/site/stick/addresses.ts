/**
 * On a stick there is no server that makes `/woods/` of `woods/index.html`: every address within the site is written as the file that it
 * means. Pure, so that the build and the pages say the same.
 */

/**
 * The file that a path of the site means, from the site's own folder.
 *
 * @param path as the site writes it, with or without `?…` and `#…`
 * @param base the folder for which the site was built: `/`, or `/boards/`
 * @returns undefined where the path is none of this site
 */
export function fileOf(path: string, base: string): string | undefined {
  const [, place = '', rest = ''] = /^([^?#]*)(.*)$/s.exec(path) ?? [];
  const isOurs = place.startsWith(base) && !place.startsWith('//');
  const within = place !== '' && `${place}/` === base ? '' : isOurs ? place.slice(base.length) : undefined;
  if (within === undefined) return undefined;
  const last = within.slice(within.lastIndexOf('/') + 1);
  if (last === '') return `${within}index.html${rest}`;
  return last.includes('.') ? within + rest : `${within}/index.html${rest}`;
}

/** The path of the site that a file of its folder stands for. */
export const pathOf = (file: string, base: string): string => base + file.replace(/(^|\/)index\.html$/, '$1');

/** A file as another one refers to it; both from the site's own folder. */
export function fromFile(from: string, to: string): string {
  const up = from.split('/').slice(0, -1);
  const down = to.split('/');
  let same = 0;
  while (same < up.length && same < down.length - 1 && up[same] === down[same]) same++;
  return [...up.slice(same).map(() => '..'), ...down.slice(same)].join('/');
}
