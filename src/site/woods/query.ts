import { findWoods } from '../../model/species/find-woods.ts';
import type { FoodAssessment, PoreArrangement, Species } from '../../model/species/types.ts';
import type { Cell, WoodRow } from './row.ts';

/** How many woods can be put side by side. */
export const compareLimit = 4;

export const sorts = {
  name: 'Name',
  hardest: 'Hardest first',
  softest: 'Softest first',
  'moves-least': 'Moves least first',
  'moves-most': 'Moves most first',
  food: 'Usual choices for food first',
} as const;
export type Sort = keyof typeof sorts;

export const poreWords: Record<PoreArrangement, string> = {
  'ring-porous': 'ring-porous',
  'semi-ring-porous': 'semi-ring-porous',
  'diffuse-porous': 'diffuse-porous',
  none: 'no pores (softwood)',
};

export const foodWords: Record<FoodAssessment['level'], string> = {
  usual: 'Usual choice',
  'with-care': 'With care',
  'better-not': 'Better not',
  'not-enough-known': 'Not enough known',
};

export const origins: readonly Species['origin'][] = [
  'North America',
  'Europe',
  'tropical America',
  'Africa',
  'Asia and Oceania',
  'elsewhere',
];

/** What the reader asked of the list of woods; every part of it stands in the address. */
export interface WoodsQuery {
  q: string;
  pores: PoreArrangement | '';
  food: FoodAssessment['level'] | '';
  origin: Species['origin'] | '';
  kind: Species['kind'] | '';
  /** Id of the wood that the list must be at least as hard as. */
  hard: string;
  /** Id of the wood that the list must move no more than. */
  still: string;
  sort: Sort;
  compare: readonly string[];
}

const among = <T extends string>(all: readonly T[], text: string | null): T | '' =>
  all.find((one) => one === text) ?? '';

/** Read the query part of an address; what it does not know it leaves out. */
export function readQuery(search: string): WoodsQuery {
  const params = new URLSearchParams(search);
  const compare = (params.get('compare') ?? '').split(',').filter(Boolean);
  return {
    q: params.get('q') ?? '',
    pores: among(Object.keys(poreWords) as PoreArrangement[], params.get('pores')),
    food: among(Object.keys(foodWords) as FoodAssessment['level'][], params.get('food')),
    origin: among(origins, params.get('origin')),
    kind: among(['hardwood', 'softwood'], params.get('kind')),
    hard: params.get('hard') ?? '',
    still: params.get('still') ?? '',
    sort: among(Object.keys(sorts) as Sort[], params.get('sort')) || 'name',
    compare: [...new Set(compare)].slice(0, compareLimit),
  };
}

/** The query part of the address for a query: only what differs from the plain list. */
export function writeQuery(query: WoodsQuery): string {
  const params = new URLSearchParams();
  for (const name of ['q', 'pores', 'food', 'origin', 'kind', 'hard', 'still'] as const) {
    if (query[name] !== '') params.set(name, query[name]);
  }
  if (query.sort !== 'name') params.set('sort', query.sort);
  if (query.compare.length > 0) params.set('compare', query.compare.join(','));
  // A comma may stand in an address as it is, and the link stays readable.
  const text = params.toString().replaceAll('%2C', ',');
  return text === '' ? '' : `?${text}`;
}

/** The woods that a query asks for, in the order that it asks for. */
export function selectWoods(woods: readonly WoodRow[], query: WoodsQuery): WoodRow[] {
  const hard = woods.find((wood) => wood.id === query.hard)?.hardness?.value;
  const still = woods.find((wood) => wood.id === query.still)?.swing?.value;
  const kept = findWoods(woods, query.q).filter(
    (wood) =>
      (query.pores === '' || wood.arrangement === query.pores) &&
      (query.food === '' || wood.food === query.food) &&
      (query.origin === '' || wood.origin === query.origin) &&
      (query.kind === '' || wood.kind === query.kind) &&
      (hard === undefined || (wood.hardness !== null && wood.hardness.value >= hard)) &&
      (still === undefined || (wood.swing !== null && wood.swing.value <= still)),
  );
  // With a name typed and no other order asked for, the best match stays first.
  return query.sort === 'name' && query.q.trim() !== '' ? kept : kept.sort(orders[query.sort]);
}

type Order = (a: WoodRow, b: WoodRow) => number;

const byName: Order = (a, b) => a.name.localeCompare(b.name, 'en');

/** A value that is not published comes last, whichever way the list runs. */
const byCell =
  (cellOf: (wood: WoodRow) => Cell | null, sign: 1 | -1): Order =>
  (a, b) => {
    const [first, second] = [cellOf(a), cellOf(b)];
    if (first && second) return sign * (first.value - second.value) || byName(a, b);
    if (first || second) return first ? -1 : 1;
    return byName(a, b);
  };

const foodOrder: readonly FoodAssessment['level'][] = ['usual', 'with-care', 'better-not', 'not-enough-known'];

const orders: Record<Sort, Order> = {
  name: byName,
  hardest: byCell((wood) => wood.hardness, -1),
  softest: byCell((wood) => wood.hardness, 1),
  'moves-least': byCell((wood) => wood.swing, 1),
  'moves-most': byCell((wood) => wood.swing, -1),
  food: (a, b) => foodOrder.indexOf(a.food) - foodOrder.indexOf(b.food) || byCell((wood) => wood.hardness, -1)(a, b),
};
