import type { AtRule, Declaration, Root } from 'postcss';

const unquoted = (name: string) => name.trim().replace(/^["']|["']$/g, '');

const partOf = (face: AtRule, name: string): Declaration | undefined =>
  face.nodes?.find((node): node is Declaration => node.type === 'decl' && node.prop === name);

/**
 * Keep of the faces of letters what a page may ask for: those whose family a rule names, each in the one form that every browser reads which
 * can run the site.
 *
 * @returns how many faces and forms were taken away
 */
export function keepFacesInUse(sheets: readonly Root[]): number {
  const named: string[] = [];
  const faces: AtRule[] = [];
  for (const sheet of sheets) {
    sheet.walkAtRules('font-face', (face) => {
      faces.push(face);
    });
    sheet.walkDecls(({ parent, value }) => {
      if ((parent as AtRule | undefined)?.name !== 'font-face') named.push(value);
    });
  }
  const all = named.join('\n');
  let left = 0;
  for (const face of faces) {
    const family = unquoted(partOf(face, 'font-family')?.value ?? '');
    if (!all.includes(family)) {
      face.remove();
      left += 1;
      continue;
    }
    const source = partOf(face, 'src');
    const forms = source?.value.split(/,(?=\s*(?:url|local)\()/) ?? [];
    const best = forms.filter((form) => /format\((["'])woff2\1\)/.test(form));
    if (!source || best.length === 0 || best.length === forms.length) continue;
    source.value = best.join(',').trim();
    left += forms.length - best.length;
  }
  return left;
}
