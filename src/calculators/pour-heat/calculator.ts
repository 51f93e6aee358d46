import { answer, cite, type EvidenceNote } from '../../model/evidence/index.ts';
import { heatIndex } from '../../model/resin/anchor.ts';
import { usualBase } from '../../model/resin/base.ts';
import { statedAt } from '../../model/resin/greatest-pour.ts';
import { runPour } from '../../model/resin/pour.ts';
import { calculator } from '../kit/calculator.ts';
import { answerOf } from './answer.ts';
import { cautionsOf } from './cautions.ts';
import { figuresOf, untoldFigures } from './figure-values.ts';
import { type FigureName, type Figures, figures } from './figures.ts';
import { alternatives, folded, inputs, together } from './inputs.ts';
import { seriesOf, tablesOf } from './series.ts';
import { type Setting, settingOf } from './setting.ts';
import { timelineOf } from './timeline.ts';
import { verdictOf } from './verdict.ts';
import { length } from './words.ts';

export const pourHeatCalculator = calculator({
  id: 'pour-heat',
  title: 'Heat of a pour',
  question: 'Will this pour overheat, how deep may I go today, and in how many layers?',
  summary:
    'From the resin, the depth, what it is poured on and the shop: whether it may go in one pour, or in which layers.',
  heavy: 'always',
  inputs,
  alternatives,
  together,
  folded,
  taken: () => ({ base: 'hardwood', air: 'still' }),
  example: {
    metric: { resin: 'slow-casting-2-1', depth: '25 mm', shopTemperature: '24 °C', base: 'hardwood', air: 'still' },
    inch: { resin: 'slow-casting-2-1', depth: '1 in', shopTemperature: '75 °F', base: 'hardwood', air: 'still' },
  },
  figures,
  compute(asked) {
    const setting = settingOf(asked);
    if (!setting.ok) return setting;
    const found = answerOf(setting.value);
    const verdict = verdictOf(setting.value, found);
    const cautions = cautionsOf(setting.value, found);
    if (setting.value.untold) {
      return answer({ verdict, figures: untoldFigures(setting.value, found), cautions, evidence: [] });
    }
    const values = figuresOf(setting.value, found);
    const timeline = timelineOf(setting.value, found, verdict);
    return answer({
      verdict,
      figures: verdict.level === 'unknown' ? withoutAdvice(values) : values,
      series: seriesOf(setting.value, found),
      tables: verdict.level === 'unknown' ? [] : tablesOf(setting.value, found),
      ...(timeline ? { timeline } : {}),
      cautions,
      evidence: evidenceOf(setting.value),
    });
  },
});

/** Figures that somebody would pour by: none of them stands beside a verdict of 'not enough known'. */
const advice: readonly FigureName[] = [
  'heatIndex',
  'greatestDepthHere',
  'layers',
  'layerDepth',
  'waitBetween',
  'lastLayer',
  'depthByRule',
  'depthByModel',
  'depthAsPool',
];

const withoutAdvice = (values: Figures): Figures =>
  Object.fromEntries(Object.entries(values).filter(([name]) => !advice.some((each) => each === name)));

function evidenceOf({ anchor, stated, evidence }: Setting): EvidenceNote[] {
  return [
    ...(anchor && stated?.kind === 'stated'
      ? [
          cite(
            heatIndex,
            `Measured by ${length(anchor.depth)} at ${statedAt(stated)} over ${length(usualBase.thickness)} of hardwood in still air.`,
          ),
        ]
      : []),
    cite(
      runPour,
      'Ordering of cases, the way that depth goes with temperature and the most that the heat could give can be trusted; a peak cannot, within a factor of two.',
    ),
    ...evidence,
    {
      text: 'Slowing of the cure where the resin turns glassy is left out of the heat: it begins well after gel, when little heat is left.',
      basis: 'derived',
    },
  ];
}
