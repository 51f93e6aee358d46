import { answer, cite, type EvidenceNote, refuse } from '../../model/evidence/index.ts';
import { formatNumber } from '../../model/quantity/index.ts';
import { classClock, gelConversion, gelPoint, viscosityRise } from '../../model/resin/clock.ts';
import { kineticsOf } from '../../model/resin/fit.ts';
import { sheetWarnings } from '../../model/resin/resin.ts';
import { calculator } from '../kit/calculator.ts';
import { ownCautionsOf, standingCautions, tenDegrees } from './cautions.ts';
import { figures, figuresOf, timelineOf } from './figures.ts';
import { inputs } from './inputs.ts';
import { conversionAt, cup, cureSeries, leftOnceSpread, massTable, temperatureTable, thinLayer } from './times.ts';
import { untoldBy, verdictOf } from './verdict.ts';

export const workingTimeCalculator = calculator({
  id: 'working-time',
  title: 'Working time of a cup',
  question: 'How long can I work with this cup of resin, and what does spreading it gain?',
  summary:
    'From the resin, the mass in the cup and the temperature: how long it can be worked, in the cup and spread thin.',
  heavy: 'always',
  inputs,
  example: {
    metric: { resin: 'fast-coating-1-1', mass: '200 g', shopTemperature: '22 °C', spreadAfter: '10 min' },
    inch: { resin: 'fast-coating-1-1', mass: '200 g', shopTemperature: '72 °F', spreadAfter: '10 min' },
  },
  figures,
  compute(given) {
    const { resin, mass, shopTemperature, resinTemperature, spreadAfter } = given;
    const known = kineticsOf(resin);
    const untold = untoldBy(resin, known);
    if (untold) {
      return answer({
        verdict: { level: 'unknown', text: untold },
        figures: {},
        cautions: [...sheetWarnings(resin), ...known.cautions, ...standingCautions()],
        evidence: [],
      });
    }
    const start = { air: shopTemperature, ...(resinTemperature === undefined ? {} : { resin: resinTemperature }) };
    const run = cup(known, mass, { ...start, until: 'peak' });
    if (!run) {
      return refuse(
        'resin',
        `${resin.name} would not gel in this cup in any time that can be followed`,
        'Look at the pot life again.',
      );
    }
    const thin = thinLayer(known, shopTemperature);
    const left =
      spreadAfter === undefined ? undefined : leftOnceSpread(known, shopTemperature, conversionAt(run, spreadAfter));
    const times = { run, thin, left };
    const own = ownCautionsOf(given, known, run);
    const verdict = verdictOf(run, thin, mass, start, spreadAfter, own);
    return answer({
      verdict,
      figures: figuresOf(given, times),
      series: [cureSeries(known, run, shopTemperature)],
      tables: [massTable(known, start), temperatureTable(known, mass, start)],
      ...(verdict.level === 'stop' ? {} : { timeline: timelineOf(given, times) }),
      cautions: [...own, tenDegrees(known, mass, run, thin, start), ...standingCautions()],
      evidence: [
        ...known.evidence,
        cite(classClock, 'Gives the times of the thin layer.'),
        cite(
          viscosityRise,
          'Working time ends where the resin is about twice as thick as when it was mixed, at a conversion of 0.20.',
        ),
        cite(gelConversion, `The gel is at a conversion of ${formatNumber(gelPoint)}.`),
        cupNote,
      ],
    });
  },
});

const cupNote: EvidenceNote = {
  text: 'The cup is a cylinder, height 1.065 of its radius, with 10 W/(m²·K) above, 9 at a wall of 0.8 mm of plastic and 6 below; conduction and cure are solved together in rings and layers, and its time is that of the part furthest on. A wide shallow cup lasts longer than this, a tall narrow one about as long.',
  basis: 'memory',
};
