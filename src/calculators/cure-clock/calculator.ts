import { cautionById } from '../../model/evidence/cautions.ts';
import { answer, cite, type Result } from '../../model/evidence/index.ts';
import { amount } from '../../model/quantity/index.ts';
import { cureRate, glassTransition, rateFactor, vitrification } from '../../model/resin/clock.ts';
import { kineticsOf } from '../../model/resin/fit.ts';
import { sheetWarnings } from '../../model/resin/resin.ts';
import { timetableOf } from '../../model/resin/timetable.ts';
import { toldOf, warIn } from '../../model/resin/told.ts';
import type { Resin } from '../../model/resin/types.ts';
import { farthest, sheetTolerance } from '../../model/resin/waits.ts';
import { calculator } from '../kit/calculator.ts';
import { cautionsOf, standing } from './cautions.ts';
import { figures, figuresOf } from './figures.ts';
import { type GivenHistory, historyOf } from './history.ts';
import { alternatives, inputs, together } from './inputs.ts';
import { cureSeries } from './series.ts';
import { timelineOf, timetableTable } from './timetable.ts';
import { verdictOf } from './verdict.ts';

export const cureClockCalculator = calculator({
  id: 'cure-clock',
  title: 'Cure clock',
  question: 'When may I pour the next coat, sand, oil and use it, at the temperature of my shop?',
  summary: 'From the resin and the temperature since mixing: when to coat again, sand, oil and use it.',
  heavy: 'at first',
  inputs,
  alternatives,
  together,
  example: {
    metric: { resin: 'fast-coating-1-1', shopTemperature: '20 °C' },
    inch: { resin: 'fast-coating-1-1', shopTemperature: '68 °F' },
  },
  figures,
  compute({ resin, ...temperatures }) {
    const { warmHours, warmHoursLeft } = temperatures;
    const inHours = (seconds: number | undefined) => (seconds === undefined ? undefined : seconds / 3600);
    const found = historyOf({ ...temperatures, warmHours: inHours(warmHours), warmHoursLeft: inHours(warmHoursLeft) });
    if (!found.ok) return found;
    const { history, note } = found.value;

    const known = kineticsOf(resin);
    const war = warIn(resin);
    if (war) return answer(atWar(resin, war, found.value));
    const timetable = toldOf(resin, timetableOf(resin, known, history));
    const verdict = verdictOf(resin, timetable, found.value);
    return answer({
      verdict,
      figures: figuresOf(timetable, resin, known.glass),
      series: timetable.byClock ? cureSeries(timetable, known.glass, history) : [],
      tables: timetable.events.length > 0 ? [timetableTable(timetable)] : [],
      ...(verdict.level === 'stop' || verdict.level === 'unknown' ? {} : { timeline: timelineOf(timetable) }),
      cautions: cautionsOf(resin, known, found.value, timetable),
      evidence: [
        {
          text: `The sheet wins where it speaks. Its times hold at its temperature and are carried over to yours by the rate of cure. Waits before sanding and use are never made shorter than it says. Full cure, oil and food also wait until the clock has come as far as the sheet’s time brings it at its own temperature less ${amount(sheetTolerance, 'K', 1)}, which is how well a shop keeps one; where that takes more than ${farthest} times the time carried over, there is no date.`,
          basis: 'derived',
        },
        note,
        cite(rateFactor, `Carries times over, with ${(known.kinetics.activationEnergy / 1000).toFixed(1)} kJ/mol.`),
        ...known.evidence,
        cite(cureRate, 'Gives work, gel and the window of a thin layer where nothing else does.'),
        cite(vitrification, 'Slows the cure as the resin turns hard, so that a cold shop ends softer.'),
        cite(
          glassTransition,
          `From ${amount(known.glass.fresh, 'Cel')} fresh to ${amount(known.glass.cured, 'Cel')} cured, assumed for a ${resin.kinetics} resin.`,
        ),
      ],
    });
  },
});

/** No time at all of a resin whose sheet is at war with itself. */
function atWar(resin: Resin, war: string, { cautions }: GivenHistory): Result {
  return {
    verdict: {
      level: 'unknown',
      text: `No times for ${resin.name}: ${war}. Look at the sheet again, or ask the maker.`,
    },
    figures: {},
    cautions: [...sheetWarnings(resin), ...cautions, ...standing.flatMap((id) => cautionById(id) ?? [])],
    evidence: [],
  };
}
