import type { SourceId } from '../evidence/index.ts';

/** Openings of the names under which table rows cite a document, with its key in the source list. The first that fits counts. */
const openings: readonly (readonly [string, SourceId])[] = [
  ['FPL Wood Technical Fact Sheet', 'fpl-fact-sheets'],
  ['FPL species sheet in the series of FPL-GTR-83', 'fpl-gtr-83'],
  ['FPL-GTR-83', 'fpl-gtr-83'],
  ['FPL-GTR-190', 'fpl-gtr-190'],
  ['FPL-RN-0268', 'fpl-rn-0268'],
  ['FPL Research Note FPL-0153', 'fpl-0153'],
  ['Wood Handbook', 'fpl-gtr-190'],
  ['Record', 'record-1914'],
  ['Browne 1942', 'browne-1942'],
  ['Hoadley', 'hoadley-1998'],
  ['National Design Specification', 'nds-2018'],
  ['Forest Research Institute Malaysia', 'frim'],
  ['Guyana Forestry Commission', 'guyana-forestry'],
  ['Queensland Government', 'queensland-timber'],
  ['Bryce', 'bryce-1967'],
  ['Slavonian oak 1957', 'slavonian-oak-1957'],
  ['Pollet', 'pollet-2012'],
  ['Heräjärvi', 'herajarvi-2004'],
  ['Brinell hardness of Betula pendula', 'birch-hardness-2004'],
  ['Lachowicz', 'lachowicz-2021'],
  ['Govorčin', 'govorcin-2010'],
  ['Shrinkage of grand fir', 'grand-fir-2012'],
  ['CEN, EN 350 (2016)', 'en-350'],
  ['CEN, EN 350-2', 'en-350-2'],
  ['WoodSolutions', 'woodsolutions'],
  ['Timber Queensland', 'timber-queensland'],
  ['Australian Hardwood Species Guide', 'hardwood-guide'],
  ['TM 5-852-4', 'ufc-3-130-04'],
  ['CAMEO', 'cameo'],
  ['NWFA', 'nwfa-a200'],
  ['Miles and Smith', 'nrs-38'],
  ['Zanne', 'zanne-2009'],
  ['CIRAD, Tropix', 'tropix'],
  ['Forest Products Commission, Western Australia', 'fpc-wa'],
  ['Laboratório de Produtos Florestais', 'lpf-brazil'],
  ['Instituto de Pesquisas Tecnológicas', 'ipt'],
  ['Roth', 'roth-1895'],
  ['Alden, Wood and charcoal', 'alden-charcoal'],
];

/**
 * The source that a row means by the name of its document.
 *
 * @param document text of the row's `document` or `source` column
 * @returns the source's key, or undefined for a document that nothing here names: a test holds that no row has one
 */
export function sourceOfDocument(document: string): SourceId | undefined {
  return openings.find(([opening]) => document.startsWith(opening))?.[1];
}
