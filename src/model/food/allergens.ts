import type { Basis, Citation } from '../evidence/index.ts';
import type { WoodPart } from './standing.ts';

/** What in a finish can matter to somebody with an allergy. */
export const oilOrigins = ['nut-oil', 'tung-oil', 'blend', 'none-known'] as const;

/** What in a finish can matter to somebody with an allergy: one of `oilOrigins`. */
export type OilOrigin = (typeof oilOrigins)[number];

/** Something that can matter to somebody with an allergy: for the maker in a sentence, for the label in a line. */
export interface AllergenNote {
  id: 'nut-oil' | 'tung-oil' | 'oil-blend' | 'wood-sensitiser' | 'nut-tree' | 'uncured-resin';
  /** What is known, and what is not. */
  text: string;
  /** A line for the label, or null where the label need not speak of it. */
  label: string | null;
  basis: Basis;
  citation?: Citation;
}

const nutOil = (finish: string): AllergenNote => ({
  id: 'nut-oil',
  text: `${finish} comes from a tree nut. European food law counts walnuts and what is made from them among the foods that must be named; that is about food, not about boards. Nothing was read on how much of the nut’s protein a cured oil keeps, so name the nut on the label and offer another finish.`,
  label: `${finish} is made from a tree nut.`,
  basis: 'published',
  citation: { source: 'eu-1169-2011', locator: 'Annex II, 8', seen: 'quoted' },
});

const tungOil: AllergenNote = {
  id: 'tung-oil',
  text: 'Tung oil is pressed from the seed of a tree of the spurge family, which the trade calls a nut. It is not among the tree nuts that American or European food law asks to be named. That does not show that nobody can react to it, and nothing was read on cured tung oil: say what it is pressed from, and let the buyer decide.',
  label: 'Tung oil is pressed from the seed of the tung tree, called tung nut.',
  basis: 'published',
  citation: { source: 'fda-food-allergens', locator: 'Table 1', seen: 'quoted' },
};

const blend = (finish: string): AllergenNote => ({
  id: 'oil-blend',
  text: `${finish}: the name does not say which oils are in it, and a nut or soya may be among them. Ask its maker before you answer a buyer who asks.`,
  label: null,
  basis: 'shop-practice',
});

const uncuredResin: AllergenNote = {
  id: 'uncured-resin',
  text: 'Resin and hardener that have not cured can make skin allergic, for good. Nothing was read on cured inlays making buyers allergic. A tacky or smelling inlay is not cured: it does not leave the shop, and nobody sands it.',
  label: null,
  basis: 'published',
  citation: { source: 'clp-1272-2008', locator: 'H317, as makers’ sheets give it', seen: 'quoted' },
};

const nutTree = (wood: string): AllergenNote => ({
  id: 'nut-tree',
  text: `${wood} is the wood of a tree that bears nuts. Nothing was read on whether its wood carries what people are allergic to in the nut. Name the wood, and let the buyer decide.`,
  label: null,
  basis: 'shop-practice',
});

/** What of a board can matter to somebody with an allergy. */
export function allergenNotes(board: {
  woods: readonly (WoodPart & { nutTree: boolean })[];
  resin: boolean;
  finish?: { name: string; origin: OilOrigin };
}): AllergenNote[] {
  const { woods, finish } = board;
  return [
    ...(finish?.origin === 'nut-oil' ? [nutOil(finish.name)] : []),
    ...(finish?.origin === 'tung-oil' ? [tungOil] : []),
    ...(finish?.origin === 'blend' ? [blend(finish.name)] : []),
    ...woods.flatMap(({ name, reasons }): AllergenNote[] => {
      const sensitiser = reasons.find(({ rule }) => rule === 'sensitiser');
      if (!sensitiser) return [];
      return [
        {
          id: 'wood-sensitiser',
          text: `${name}: ${sensitiser.text}`,
          label: `${name}: its dust can cause allergy. Do not sand the board.`,
          basis: sensitiser.basis,
          ...(sensitiser.citation ? { citation: sensitiser.citation } : {}),
        },
      ];
    }),
    ...woods.flatMap(({ name, nutTree: bearsNuts }) => (bearsNuts ? [nutTree(name)] : [])),
    ...(board.resin ? [uncuredResin] : []),
  ];
}
