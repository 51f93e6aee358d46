import type { FigureDeclaration, FigureValue } from '../kit/calculator.ts';

/** What the calculator may tell: what to do first, what it rests on behind it. */
export const figures = {
  greatestDepthHere: { label: 'Greatest depth in this shop', unit: 'mm', digits: 2 },
  layers: { label: 'Layers', unit: '{count}' },
  layerDepth: { label: 'Depth of each layer', unit: 'mm', digits: 3 },
  waitBetween: { label: 'Wait between layers', unit: 's', digits: 2, help: 'From mixing one to mixing the next.' },
  lastLayer: {
    label: 'Last layer after',
    unit: 's',
    digits: 2,
    help: 'From mixing the first to mixing the last: the cure of the whole counts from then.',
  },
  peakRise: { label: 'Rise above the air, by the model', unit: 'K', digits: 2 },
  riseAsPool: {
    label: 'Rise of a pool as deep, by the model',
    unit: 'K',
    digits: 2,
    help: 'The same pour, wide: what holds wherever the channel opens out.',
  },
  timeToPeak: { label: 'Hottest after', unit: 's', digits: 2 },
  timeToWork: {
    label: 'Too thick to work after',
    unit: 's',
    digits: 2,
    help: 'From mixing: its thickness has about doubled.',
  },
  timeToFirstGel: { label: 'Begins to gel after', unit: 's', digits: 2 },
  timeToLastGel: { label: 'Gelled through after', unit: 's', digits: 2 },
  baseThickness: { label: 'Thickness of the base, assumed', unit: 'mm', digits: 2 },
  heatIndex: {
    label: 'Heat index (at most 1)',
    unit: '1',
    digits: 2,
    help: 'Rise of this pour over the rise of the deepest pour that the sheet allows at the temperature that it names.',
    minor: true,
  },
  sheetDepth: { label: 'Greatest depth as stated', unit: 'mm', digits: 2, minor: true },
  depthByModel: {
    label: 'Depth by the model alone',
    unit: 'mm',
    digits: 2,
    help: 'To compare, not to pour: nobody allows it.',
    minor: true,
  },
  depthAsPool: { label: 'Depth of a pool here, by the model', unit: 'mm', digits: 2, minor: true },
  depthByRule: { label: 'Depth in this shop by the depth rule', unit: 'mm', digits: 2, minor: true },
  pourVolume: { label: 'Volume of this pour', unit: 'mL', digits: 2, minor: true },
  pourMass: { label: 'Mass of this pour', unit: 'g', digits: 2, minor: true },
  hottestHeight: {
    label: 'Hottest at a height of',
    unit: 'mm',
    digits: 2,
    help: 'Above the underside of the resin.',
    minor: true,
  },
  ceiling: {
    label: 'Greatest rise that the heat could give',
    unit: 'K',
    digits: 2,
    help: 'Heat of reaction over heat capacity, if none of it were lost.',
    minor: true,
  },
} as const satisfies Record<string, FigureDeclaration>;

export type FigureName = keyof typeof figures;
export type Figures = Partial<Record<FigureName, FigureValue>>;
