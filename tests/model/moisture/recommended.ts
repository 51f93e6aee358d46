import { basisOfSeen, type Figure, type Seen, type Table } from '../../../src/model/evidence/index.ts';

/** A region of the handbook's table, the use, and what it recommends. */
export interface RecommendedMoisture {
  area: string;
  use: string;
  /** Average of a lot, with the range of single pieces as its band. */
  figure: Figure;
}

/**
 * The handbook's recommended moisture contents as figures, with the basis that each row is marked with.
 *
 * @param table `recommended-moisture-content`, as read
 */
export function recommendedMoisture(table: Table): RecommendedMoisture[] {
  return table.rows.map(({ cells }) => {
    const seen = cells.seen as Seen;
    return {
      area: String(cells.area),
      use: String(cells.use),
      figure: {
        label: 'Recommended moisture content',
        value: Number(cells.average_pct),
        low: Number(cells.individual_low_pct),
        high: Number(cells.individual_high_pct),
        band: 'The value is the average of a lot; single pieces may lie within the band.',
        unit: '%',
        basis: basisOfSeen(seen),
        citation: { source: 'fpl-gtr-190', locator: 'Table 13-2 and Figure 13-1', seen },
        note: String(cells.evidence),
        digits: 2,
      },
    };
  });
}
