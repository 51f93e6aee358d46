import type { EvidenceNote } from '../../model/evidence/index.ts';
import { type BoardForFood, type FoodStatement, limitsDoNotCompare } from '../../model/food/index.ts';
import { hasEpoxy } from './figures.ts';

/** What the source of a line on allergies speaks of. */
const allergyEvidence: Readonly<Record<FoodStatement['allergens'][number]['id'], string>> = {
  'nut-oil': 'Allergies: nuts that food law asks to be named.',
  'tung-oil':
    'Allergies: nuts that food law asks to be named, tung not among them. The European list was read too: (EU) 1169/2011, Annex II.',
  'oil-blend': 'Allergies: a blend.',
  'wood-sensitiser': 'Allergies: dust of the wood.',
  'nut-tree': 'Allergies: wood of a tree that bears nuts.',
  'uncured-resin': 'Allergies: resin and hardener that have not cured.',
};

/** The rules that were used, and what else the answer rests on. */
export function evidenceOf(board: BoardForFood, { rules, waits, allergens }: FoodStatement): EvidenceNote[] {
  return [
    ...rules.map(({ short, title, edition, basis, citation }) => ({
      text: `${short}: ${title}. ${edition}`,
      basis,
      citation,
    })),
    ...allergens.flatMap(({ id, basis, citation }) =>
      citation ? [{ text: allergyEvidence[id], basis, citation }] : [],
    ),
    ...waits.map(({ text, basis }) => ({ text, basis })),
    ...(hasEpoxy(board) ? [{ text: limitsDoNotCompare, basis: 'derived' as const }] : []),
    {
      text: 'The level is the strictest of the parts, by our own ranking; no rule ranks boards.',
      basis: 'shop-practice' as const,
    },
  ];
}
