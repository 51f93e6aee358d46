import { answer } from '../../model/evidence/index.ts';
import { calculator } from '../kit/calculator.ts';
import { cautionsOf, cautionsOfNone, ownCautionsOf } from './cautions.ts';
import { evidenceOf } from './evidence.ts';
import { figures, figuresOf, figuresOfNone } from './figures.ts';
import { inputs } from './inputs.ts';
import { mixingSheet } from './mixing-sheet.ts';
import { planOf } from './plan.ts';
import { timelineOf, usesOf } from './schedule.ts';
import { cupTable, pieceTable } from './tables.ts';
import { verdictOf, verdictOfNone } from './verdict.ts';

export const resinDoseCalculator = calculator({
  id: 'resin-dose',
  title: 'Resin dose',
  question: 'How much of each part goes into which cup?',
  summary:
    'From an inlay or an amount, and a resin: how much of both parts goes into each cup, with a sheet for the bench.',
  heavy: 'at first',
  inputs,
  alternatives: [
    {
      label: 'What you know',
      sets: [
        { label: 'Shapes', fields: ['shapes', 'pieceNames'], deciding: ['shapes'] },
        { label: 'A drawing', fields: ['drawing', 'drawingWidth', 'drawingFilled'], deciding: ['drawing'] },
        { label: 'Water that fills it', fields: ['water'] },
        { label: 'Its volume', fields: ['volume'] },
        { label: 'Resin wanted', fields: ['mass'] },
      ],
    },
    {
      label: 'Depth',
      sets: [
        { label: 'The same everywhere', fields: ['depth'] },
        { label: 'Measured at places', fields: ['depths'] },
      ],
    },
  ],
  // What is given as a weight of resin is mixed as it is.
  taken: ({ mass }) => (mass ? {} : { residue: '4 %', spare: '5 %' }),
  example: {
    metric: {
      resin: 'slow-casting-2-1',
      shapes: 'channel, 400 mm, 38 mm, 4\noval, 95 mm, 60 mm, 4',
      depth: '12 mm',
      sealCoat: '150 g/m²',
      colours: 'moss green, 70 %, paste 3 %\namber, 30 %, ink 1 %',
      measureBy: 'weight',
      scaleDivision: '0.1 g',
      cupMass: '200 g',
    },
    inch: {
      resin: 'slow-casting-2-1',
      shapes: 'channel, 15 3/4 in, 1 1/2 in, 4\noval, 3 3/4 in, 2 3/8 in, 4',
      depth: '1/2 in',
      sealCoat: '0.49 oz/ft²',
      colours: 'moss green, 70 %, paste 3 %\namber, 30 %, ink 1 %',
      measureBy: 'weight',
      scaleDivision: '0.1 g',
      cupMass: '200 g',
    },
  },
  figures,
  compute(given) {
    const planned = planOf(given);
    if (!planned.ok) return planned;
    if ('none' in planned.value) {
      const { none } = planned.value;
      return answer({
        verdict: verdictOfNone(none),
        figures: figuresOfNone(none),
        cautions: cautionsOfNone(none),
        evidence: none.place.notes.map((text) => ({ text, basis: 'derived' as const })),
      });
    }
    const { plan } = planned.value;
    const timeline = timelineOf(plan);
    return answer({
      verdict: verdictOf(plan, ownCautionsOf(plan)),
      figures: figuresOf(plan),
      tables: [cupTable(plan), ...pieceTable(plan)],
      ...(timeline ? { timeline } : {}),
      uses: usesOf(plan),
      documents: [mixingSheet(plan)],
      cautions: cautionsOf(plan),
      evidence: evidenceOf(plan),
    });
  },
});
