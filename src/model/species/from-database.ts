import type { Figure } from '../evidence/index.ts';
import { rungs } from './authority.ts';
import type { Candidate } from './candidates.ts';
import { figureKinds } from './labels.ts';
import { tidy } from './printed.ts';
import { type JoinedRow, number, seenOf, text } from './rows.ts';

/**
 * Specific gravity of a wood, ovendry mass and green volume, from a database of published figures.
 *
 * Figures from where the tree grows by nature stand for the wood; their mean with the lowest and highest where there are
 * several. Where there are none the others do, on the lowest rung, for planted wood often differs.
 *
 * @param rows joined rows of the database
 */
export function fromDensityDatabase(rows: readonly JoinedRow[]): Candidate[] {
  return [false, true].flatMap((group) => {
    const mine = rows.filter((row) => row.group === group);
    const home = mine.filter((row) => text(row, 'at_home') === 'yes');
    const used = home.length > 0 ? home : mine;
    const values = used.flatMap((row) => number(row, 'specific_gravity') ?? []);
    const [first] = used;
    if (!first || values.length === 0) return [];
    const { label, unit } = figureKinds.specificGravityGreen;
    const regions = [...new Set(used.map((row) => text(row, 'region')))].join(', ');
    const away = home.length > 0 ? '' : ', not where the tree grows by nature';
    const [low, high] = [Math.min(...values), Math.max(...values)];
    const differ = low < high;
    const count =
      values.length === 1
        ? 'One published figure'
        : differ
          ? `Mean of ${values.length} published figures`
          : `${values.length} published figures alike`;
    const figure: Figure = {
      label: group ? `${label} (of the group)` : label,
      value: differ ? tidy(values.reduce((sum, value) => sum + value, 0) / values.length) : low,
      ...(differ ? { low, high, band: 'Lowest and highest published figure.' } : {}),
      unit,
      basis: differ ? 'derived' : 'published',
      citation: {
        source: 'zanne-2009',
        locator: [...new Set(used.map((row) => row.label))].join(', '),
        seen: seenOf(first),
      },
      note: `${count} (${regions}${away}).`,
    };
    return [
      {
        name: 'specificGravityGreen' as const,
        figure,
        rung: home.length === 0 ? rungs.singleLot : differ ? rungs.derived : rungs.document,
        group,
      },
    ];
  });
}
