import { type Caution, cite, type EvidenceNote } from '../../model/evidence/index.ts';
import { moistureExcluding } from '../../model/finish/excluding-fit.ts';
import { slabResponse } from '../../model/finish/slab.ts';
import { fickMean } from '../../model/moisture/index.ts';
import { bandNote, cappedCaution, cutCaution } from '../../model/movement/board-evidence.ts';
import { swingLeft } from './figures.ts';
import type { Found } from './found.ts';
import type { Widths } from './widths.ts';

/** Above this share of the bare board’s swing a finish hardly slows the board, %. */
export const hardly = 95;

const onlySlows: Caution = {
  id: 'finish-only-slows',
  level: 'note',
  text: 'No finish changes what the wood comes to in the end, it only slows it. Air that stays dry or damp for longer than a season gets through every one of them.',
  basis: 'published',
  citation: { source: 'fpl-gtr-190', locator: 'Chapter 16', seen: 'source-text' },
};

const film: Caution = {
  id: 'film-must-be-whole',
  level: 'warning',
  text: 'This holds for a whole film on every face, edge and end. A scratch, a drilled hole, a sharp edge where the film is thin, and age all let moisture through, and the ends of a board most of all.',
  basis: 'shop-practice',
};

/** What to beware of. */
export function cautionsOf(found: Found, widths: Widths): Caution[] {
  const left = swingLeft(found);
  const { finish, both, coated, balance } = found;
  const capped = Math.max(...balance, found.bare.value.mean) > widths.shrinkageStart;
  return [
    ...(left.value > hardly
      ? [
          {
            id: 'finish-hardly-slows',
            level: 'warning' as const,
            text: `Finished so, the board still makes ${left.value > 99.5 ? 'practically all' : `${Math.round(left.value)} %`} of its yearly swing: build as if it were bare, with room for the whole of it.`,
            basis: 'derived' as const,
          },
        ]
      : both
        ? [film]
        : []),
    ...(both
      ? []
      : [
          {
            id: 'one-face-coated',
            level: 'warning' as const,
            text: `The bare face follows the air and the coated one lags: they differ by up to ${coated.value.faceDifference.toFixed(1)} percentage points, and the board cups. Finish both faces alike.`,
            basis: 'derived' as const,
          },
        ]),
    ...(finish.excluding.note && found.given.coating === undefined
      ? [
          {
            id: 'finish-not-measured',
            level: 'note' as const,
            text: finish.excluding.note,
            basis: 'shop-practice' as const,
          },
        ]
      : []),
    onlySlows,
    ...(capped ? [cappedCaution(widths.shrinkageStart)] : []),
    cutCaution,
  ];
}

/** What the answer rests on, but for the air and the wood’s shrinkage. */
export function evidenceOf(found: Found): EvidenceNote[] {
  const { given, coating, finish, coefficients, spell } = found;
  return [
    cite(slabResponse, 'Gives the board’s year from that of the air, which runs straight between the points given.'),
    ...(coating ? [cite(moistureExcluding, `The resistance of ${finish.name.toLowerCase()}: ${coating.how}.`)] : []),
    ...(given.coating === undefined
      ? []
      : [{ text: 'The resistance of the coating is the reader’s own.', basis: 'supplier-sheet' as const }]),
    ...(spell ? [cite(fickMean, 'Gives what a week of other air does, and the time to half-way.')] : []),
    ...coefficients.evidence,
    {
      text: 'D is held at its value for the mean moisture and temperature of the year. Let rise with moisture, it would change the swing by 3 % at most in boards of 20 and 40 mm; a shed that freezes in winter is the rougher case.',
      basis: 'derived',
      citation: { source: 'kerf-and-cure', locator: 'finite volumes with D rising' },
    },
    bandNote,
  ];
}
