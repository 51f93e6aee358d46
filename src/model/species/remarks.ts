import type { Figure } from '../evidence/index.ts';
import { volumeFromShrinkage } from './equations.ts';
import { placeAlone } from './from-documents.ts';
import { documentOf, isOfDocument, type JoinedRow, text } from './rows.ts';
import type { Species } from './types.ts';

/** Points by which printed volume and the volume from radial and tangential shrinkage may differ before we say so. */
const volumeTolerance = 1.5;

function volumeRemark({ radialShrinkage, tangentialShrinkage, volumetricShrinkage }: Species['figures']): string[] {
  if (!radialShrinkage || !tangentialShrinkage || !volumetricShrinkage) return [];
  const expected = volumeFromShrinkage(radialShrinkage.value, tangentialShrinkage.value);
  const points = volumetricShrinkage.value - expected;
  if (Math.abs(points) <= volumeTolerance) return [];
  const side = points > 0 ? 'more' : 'less';
  return [
    `Volumetric shrinkage is ${Math.abs(points).toFixed(1)} points ${side} than radial and tangential shrinkage give together.`,
  ];
}

const tableNames: Partial<Record<JoinedRow['table'], string>> = {
  'shrinkage-imported': 'Table 4-4',
  'hardness-domestic': 'Table 5-3',
  'hardness-imported': 'Table 5-5',
  'decay-resistance': 'the decay list',
};

/** What the last column of a row adds: further texts that give the same figure or another. */
function alsoRemarks(rows: readonly JoinedRow[]): string[] {
  return rows.flatMap((row) => {
    const also = text(row, 'also');
    const table = tableNames[row.table];
    return row.group || also === null || table === undefined ? [] : [`Beside ${table}: ${also}.`];
  });
}

function labelRemarks(rows: readonly JoinedRow[]): string[] {
  const assigned = rows.some((row) => !row.group && text(row, 'label') === 'assigned');
  if (!assigned) return [];
  return [
    'The values of its row in Table 4-4 were read; the name lay past the cut of the text and was assigned in the printed order.',
  ];
}

function decayRemarks(passedOver: readonly NonNullable<Species['decay']>[]): string[] {
  return passedOver.map((each) => {
    const mark = each.basis === 'memory' ? ' (from memory)' : '';
    return `Another row on decay, ${each.citation?.locator ?? 'place not named'}: ${each.text}${mark}.`;
  });
}

function documentRemarks(rows: readonly JoinedRow[]): string[] {
  return rows.flatMap((row) => {
    if (row.table === 'species-toxicity' && text(row, 'kind') === 'none read') {
      return [`Dust and skin: ${text(row, 'effect')} (${text(row, 'page')}).`];
    }
    if (!isOfDocument(row) || row.group) return [];
    const page = text(row, 'page') ?? '';
    const place = placeAlone(page);
    const copy = page === place ? [] : [`About the copy read, ${place}: ${page.slice(place.length + 2)}.`];
    if (text(row, 'property') !== 'durability') return copy;
    return [`Durability, ${text(row, 'condition')}: ${text(row, 'value')} (${documentOf(row)}).`, ...copy];
  });
}

/**
 * Remarks that follow from the joined rows and the resolved figures, each once.
 *
 * @param passedOver statements on decay that lost to a firmer one
 */
export function remarksOf(
  rows: readonly JoinedRow[],
  figures: Readonly<Record<keyof Species['figures'], Figure | null>>,
  passedOver: readonly NonNullable<Species['decay']>[],
): string[] {
  return [
    ...new Set([
      ...volumeRemark(figures),
      ...labelRemarks(rows),
      ...decayRemarks(passedOver),
      ...alsoRemarks(rows),
      ...documentRemarks(rows),
    ]),
  ];
}
