import { answer, derivedBasis, weakestBasis } from '../../model/evidence/index.ts';
import { yearOfAir } from '../../model/moisture/year-of-air.ts';
import { calculator } from '../kit/calculator.ts';
import { cautionsOf, evidenceOf } from './cautions.ts';
import { figures, figuresOf, finishTable } from './figures.ts';
import { find } from './found.ts';
import { alternatives, example, inputs, together } from './inputs.ts';
import { seriesOf } from './series.ts';
import { verdictOf } from './verdict.ts';
import { widthsOf } from './widths.ts';

export const finishAndMoistureCalculator = calculator({
  id: 'finish-and-moisture',
  title: 'Finish and moisture',
  question: 'How far does this finish slow the board’s swelling and shrinking?',
  summary: 'From a board, a finish and the air of a place: its moisture and width through the year, bare and finished.',
  heavy: 'always',
  inputs,
  alternatives,
  together,
  example,
  figures,
  compute(given) {
    const air = yearOfAir(given);
    if (!air.ok) return air;
    const found = find(given, air.value.readings);
    if (!found.ok) return found;
    const widths = widthsOf(found.value, given.species, given.width, given.cut ?? 'flatsawn');
    if (!widths.ok) return widths;
    const own = found.value.coefficients.own && given.coating !== undefined;
    const basis = derivedBasis([own ? 'supplier-sheet' : 'memory', air.value.basis]);
    return answer({
      verdict: verdictOf(found.value, widths.value),
      figures: figuresOf(found.value, widths.value, basis, weakestBasis([basis, widths.value.basis])),
      series: seriesOf(found.value, widths.value),
      tables: [finishTable(found.value)],
      cautions: [...cautionsOf(found.value, widths.value), ...air.value.cautions],
      evidence: [...evidenceOf(found.value), ...widths.value.evidence, ...air.value.evidence],
    });
  },
});
