import type { Basis, Figure } from '../../model/evidence/index.ts';

/** Every figure that the calculator may give, in order: what to do first, what it rests on behind it. */
export const figureWords = {
  greatestDepthHere: { label: 'Greatest depth in this shop' },
  layers: { label: 'Layers' },
  layerDepth: { label: 'Depth of each layer' },
  waitBetween: { label: 'Wait between layers' },
  peakRise: { label: 'Rise above the air, by the model' },
  riseAsPool: { label: 'Rise of a pool as deep, by the model' },
  timeToPeak: { label: 'Hottest after' },
  timeToWork: { label: 'Too thick to work after' },
  timeToFirstGel: { label: 'Begins to gel after' },
  timeToLastGel: { label: 'Gelled through after' },
  baseThickness: { label: 'Thickness of the base, assumed' },
  heatIndex: {
    label: 'Heat index (at most 1)',
    help: 'Rise of this pour over the rise of the deepest pour that the sheet allows at the temperature that it names.',
    minor: true,
  },
  sheetDepth: { label: 'Greatest depth of the sheet', minor: true },
  depthByModel: { label: 'Depth by the model alone', minor: true },
  depthAsPool: { label: 'Depth of a pool here, by the model', minor: true },
  depthByRule: { label: 'Depth in this shop by the depth rule', minor: true },
  pourVolume: { label: 'Volume of this pour', minor: true },
  pourMass: { label: 'Mass of this pour', minor: true },
  hottestHeight: { label: 'Hottest at a height of', minor: true },
  ceiling: { label: 'Greatest rise that the heat could give', minor: true },
} as const;

export type FigureName = keyof typeof figureWords;

/** A figure of an answer with its label. */
export const figureOf = (
  name: FigureName,
  value: number,
  unit: string,
  basis: Basis,
  more: Partial<Figure> = {},
): Figure => ({
  label: figureWords[name].label,
  value,
  unit,
  basis,
  digits: 2,
  ...more,
});
