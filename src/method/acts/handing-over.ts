import type { Act } from './act.ts';

/** How the piece leaves the shop. */
export const handingOver: readonly Act[] = [
  {
    id: 'label',
    label: 'Label',
    about: 'The piece gets its label and its care card: what it is made of, what it is for and how it is kept.',
    hazards: [],
    cautions: ['food-wording', 'nut-oils'],
    resin: ['resin-food'],
    protection: [],
  },
  {
    id: 'pack',
    label: 'Pack',
    about: 'The piece is wrapped so that it arrives as it left, once its finish has cured.',
    hazards: [],
    cautions: ['finish-full-cure'],
    protection: [],
  },
  {
    id: 'hand-over',
    label: 'Hand over',
    about: 'The piece goes to whoever will use it, with what they must know.',
    hazards: [],
    cautions: ['finish-full-cure', 'food-wording'],
    protection: [],
  },
];
