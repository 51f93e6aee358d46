import { answer, type EvidenceNote, refuse, weakestBasis } from '../../model/evidence/index.ts';
import { type Finish, finishById, planCoats } from '../../model/finish/index.ts';
import { calculator } from '../kit/calculator.ts';
import { areaOf } from './area.ts';
import { cautionsOf } from './cautions.ts';
import { figures, figuresOf, timelineOf, usesOf } from './figures.ts';
import { alternatives, example, type Inputs, inputs, usual } from './inputs.ts';
import { coatTable, soakTable } from './tables.ts';
import { verdictOf } from './verdict.ts';

export const finishCoatsCalculator = calculator({
  id: 'finish-coats',
  title: 'Coats of finish',
  question: 'How much of this finish do I need, and when is each coat due?',
  summary:
    'From a board’s size, the finish and the coats: how much of each, when it goes on, and when the board may be used.',
  inputs,
  alternatives,
  taken: () => ({ sides: 'all', boards: '1', spare: '10 %' }),
  example,
  figures,
  compute(given) {
    const finish = finishById(given.finish);
    if (!finish) return refuse('finish', `There is no finish ${given.finish}`, 'Pick one of the list.');
    const boards = given.boards ?? usual.boards;
    const one = areaOf(given);
    if (!one.ok) return one;
    const planned = planCoats({
      finish,
      area: one.value.area * boards,
      coats: given.coats ?? finish.figures.coats.value,
      spare: (given.spare ?? usual.spare) / 100,
      ...(given.spreadingFirst === undefined ? {} : { spreadingFirst: given.spreadingFirst }),
      ...(given.spreadingNext === undefined ? {} : { spreadingNext: given.spreadingNext }),
    });
    if (!planned.ok) return planned;
    return answer({
      verdict: verdictOf(finish, planned.value, given.resin),
      figures: figuresOf(given, finish, planned.value, one.value.area * boards),
      tables: [coatTable(given, finish, planned.value), ...soakTable(finish)],
      timeline: timelineOf(given, finish, planned.value),
      uses: usesOf(given, finish, planned.value),
      cautions: cautionsOf(given, finish, planned.value),
      evidence: evidenceOf(given, finish, one.value.notes),
    });
  },
});

function evidenceOf(given: Inputs, finish: Finish, notes: readonly string[]): EvidenceNote[] {
  const known = finish.figures;
  const rates = [known.spreadingFirst, known.spreadingNext];
  return [
    {
      text: `${finish.name}: coats, soak, waits and cure are common practice. The sheet of the finish at hand wins over every one of them; cold and damp lengthen them.`,
      basis: 'shop-practice',
    },
    {
      text: `Amounts: area by spreading rate, ${known.spreadingFirst.low} to ${known.spreadingFirst.high} m² from a litre for the first coat and ${known.spreadingNext.low} to ${known.spreadingNext.high} for the next, and the spare.`,
      basis: weakestBasis(rates.map(({ basis }) => basis)),
    },
    {
      text: 'Nearest published spreading rate: penetrating oil-based stain on smooth wood, 4.9 to 9.8 m² from a litre. Clear oil on planed hardwood goes further.',
      basis: 'published',
      citation: { source: 'fpl-gtr-190', locator: 'Chapter 16', seen: 'source-text' },
    },
    {
      text: `Density: ${known.density.low} to ${known.density.high} g/ml.`,
      basis: known.density.basis,
      ...(known.density.citation ? { citation: known.density.citation } : {}),
    },
    ...(given.spreadingFirst === undefined && given.spreadingNext === undefined
      ? []
      : [{ text: 'Spreading rates given by the reader stand in place of these.', basis: 'supplier-sheet' as const }]),
    ...notes.map((text): EvidenceNote => ({ text, basis: 'derived' })),
  ];
}
