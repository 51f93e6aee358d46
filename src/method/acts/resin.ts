import type { Act } from './act.ts';

/** What touches uncured resin or hardener with the hands near it. */
const wet: Act['protection'] = ['gloves', 'eye-protection', 'ventilation'];

/** From the sealed recess to the polished inlay. */
export const resin: readonly Act[] = [
  {
    id: 'seal',
    label: 'Seal the wood',
    about: 'A thin coat closes pores and cracks, so that they give no air into the pour and take no colour from it.',
    hazards: ['resin', 'fumes'],
    cautions: ['resin-skin', 'resin-gloves', 'resin-air', 'resin-off-skin'],
    wet: 'resin',
    protection: wet,
  },
  {
    id: 'dam',
    label: 'Dam the pour',
    about: 'Tape, sheet and caulk or a mould close the place that resin is poured into.',
    hazards: ['blade'],
    cautions: ['hand-edges'],
    protection: [],
  },
  {
    id: 'mix',
    label: 'Weigh and mix resin',
    about: 'Resin and hardener are weighed or measured by the sheet, stirred, coloured and stirred again.',
    hazards: ['resin', 'fumes', 'heat'],
    cautions: [
      'epoxy-only',
      'resin-skin',
      'hardener-burns',
      'resin-gloves',
      'resin-air',
      'resin-cup-heat',
      'hardener-sawdust',
      'resin-off-skin',
    ],
    powder: ['pigment-dust'],
    wet: 'resin',
    protection: wet,
  },
  {
    id: 'pour',
    label: 'Pour',
    about: 'Mixed resin goes into its place, no deeper at a time than its sheet allows.',
    hazards: ['resin', 'fumes', 'heat'],
    cautions: ['deep-pour', 'resin-cup-heat', 'resin-skin', 'resin-air', 'heat-tool', 'resin-off-skin', 'resin-waste'],
    wet: 'resin',
    protection: wet,
  },
  {
    id: 'cure',
    label: 'Let it cure',
    about: 'The resin stands level, warm enough and out of dust while it sets and hardens.',
    hazards: ['resin', 'fumes', 'heat'],
    cautions: ['deep-pour', 'resin-air'],
    wet: 'resin',
    protection: ['ventilation'],
  },
  {
    id: 'demould',
    label: 'Take out of the mould',
    about: 'Mould or dam comes off once the resin is hard enough to keep its shape.',
    hazards: ['resin', 'chips'],
    cautions: ['resin-skin', 'hand-edges'],
    protection: ['gloves', 'eye-protection'],
  },
  {
    id: 'level',
    label: 'Level the inlay',
    about: 'Cured resin that stands proud is taken down flush with the wood.',
    hazards: ['dust', 'chips', 'noise'],
    cautions: ['resin-dust', 'wood-dust', 'noise', 'never-burn-resin'],
    drum: ['sander-guards'],
    protection: ['eye-protection', 'hearing-protection', 'dust-extractor', 'respirator'],
  },
  {
    id: 'polish',
    label: 'Polish',
    about: 'Fine wet abrasives and compound bring the resin to its gloss.',
    hazards: ['chips'],
    cautions: ['wet-sanding', 'resin-dust'],
    protection: ['eye-protection'],
  },
];
