import type { Verdict } from '../../model/evidence/index.ts';
import { amount, listed } from '../../model/quantity/index.ts';
import type { Found } from './found.ts';

const mm = (value: number, digits = 2) => amount(value, 'mm', digits);
const places = (count: number) => (count === 1 ? '1 place' : `${count} places`);

/** Whether the bit reaches every hollow, in words; nothing where no bit was given. */
function bitWords({ given, pockets, widestBit }: Found): { stops: boolean; words: string } {
  if (given.bitDiameter === undefined) return { stops: false, words: '' };
  const corners = pockets.filter(({ kind }) => kind === 'corner');
  const holes = pockets.length - corners.length;
  const bore = holes > 0 ? `Bore the ${holes === 1 ? 'hole' : 'holes'} that it does not enter.` : '';
  if (corners.length === 0) return { stops: false, words: ['The bit fits.', bore].filter(Boolean).join(' ') };
  const deepest = Math.max(...corners.map(({ depth }) => depth ?? 0));
  const way =
    widestBit !== undefined && widestBit > 0
      ? `largest bit ${mm(widestBit, 3)}`
      : 'no bit reaches a sharp corner: round it, or finish it with a saw and a file';
  return {
    stops: true,
    words: [
      `The bit does not fit: ${corners.length} ${corners.length === 1 ? 'corner keeps' : 'corners keep'} ${mm(deepest)}; ${way}.`,
      bore,
    ]
      .filter(Boolean)
      .join(' '),
  };
}

/** Whether the outline lies on the board, in words; nothing where no board was given. */
function boardWords({ fit }: Found): { stops: boolean; words: string } {
  if (!fit) return { stops: false, words: '' };
  if (fit.fits) {
    return {
      stops: false,
      words:
        fit.swing === 0
          ? 'The outline lies on the board along the grain.'
          : `The outline lies on the board swung ${amount(Math.abs(fit.swing), 'deg', 3)} off the grain.`,
    };
  }
  const short = [
    fit.spareLength < 0 ? `${mm(-fit.spareLength)} too short` : '',
    fit.spareWidth < 0 ? `${mm(-fit.spareWidth)} too narrow` : '',
  ].filter(Boolean);
  return { stops: true, words: `The board is ${listed(short)} for the outline.` };
}

/** What the answer comes to: whether the bit fits, whether the board does, and where it tears or breaks. */
export function verdictOf(found: Found): Verdict {
  const [bit, board] = [bitWords(found), boardWords(found)];
  const { tears, necks } = found;
  const uphill = tears.arcs.filter(({ meeting }) => meeting === 'uphill');
  const steep = uphill.filter(({ steepness }) => steepness !== 'slight').length;
  const minded = [
    necks.shortGrain[0] ? `A part of ${mm(necks.shortGrain[0].length)} has its grain across and may split off.` : '',
    steep > 0
      ? `The grain tears in ${places(steep)}: turn the board over for ${steep === 1 ? 'it' : 'them'}.`
      : uphill.length > 0
        ? `The grain may tear in ${places(uphill.length)}: cut ${uphill.length === 1 ? 'it' : 'them'} in small steps.`
        : '',
    found.given.template !== undefined && found.cut && !found.cut.steadyFirstPass
      ? found.cut.passes.length > 0
        ? `With the bearing by the shank the first pass is at least ${mm(found.cut.leastFirstPass ?? 0, 3)} deep.`
        : 'With a bearing by the shank this template is too thin for this bit.'
      : '',
  ].filter(Boolean);
  const said = [...[bit, board].filter(({ stops }) => stops), ...[bit, board].filter(({ stops }) => !stops)].map(
    ({ words }) => words,
  );
  return {
    level: bit.stops || board.stops ? 'stop' : minded.length > 0 ? 'care' : 'good',
    text: [...said, ...minded].filter(Boolean).join(' ') || 'Nothing stands in the way of this outline.',
  };
}
