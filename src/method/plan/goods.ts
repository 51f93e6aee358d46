import type { WorkedMethod } from '../case/types.ts';
import type { Goods } from '../cost/index.ts';
import type { Material } from '../record/index.ts';
import { type Shop, shopGoods } from '../shop/index.ts';

/** How a material is bought for a case. */
export interface ChosenGoods {
  /** Id of the goods in a shop record. */
  id: string;
  /** What they are called where the shop does not have them: the material, and what was chosen of it. */
  what: string;
  /** Id of goods that are sold in the same way at the same price. */
  like?: string;
}

/** Kinds of material that a parameter of the same kind stands for. */
const chosenKinds: readonly string[] = ['wood', 'resin', 'finish'];

/** The parameter that says which of its kind a material is; of a pigment, the one that a dose takes its colours from. */
function chooserOf({ record, calculations }: WorkedMethod, material: Material): string | undefined {
  if (material.kind === 'pigment') {
    const colours = Object.values(calculations).map(({ refers }) => refers['colours']?.split('/')[2]);
    return colours.find((name) => name !== undefined);
  }
  if (!chosenKinds.includes(material.kind)) return undefined;
  const alike = Object.entries(record.parameters).filter(([, { kind }]) => kind === material.kind);
  const usual = (parameter: (typeof alike)[number][1]) => ('default' in parameter ? parameter.default : undefined);
  const own =
    alike.find(([, parameter]) => usual(parameter) === material.item) ??
    // Sugar maple planed on two faces is sugar maple, though goods of its own.
    alike.find(([, parameter]) => namesIt(material.item, usual(parameter)));
  if (own) return own[0];
  // Of several, nobody says which; of one that names other goods than the usual, it is still the one that is chosen by.
  return alike.length === 1 ? alike[0]?.[0] : undefined;
}

const namesIt = (item: string | undefined, usual: unknown) =>
  item !== undefined && typeof usual === 'string' && usual !== '' && item.includes(usual);

/**
 * The goods that a case takes for a material: those of the method where what it takes for usual is chosen, else those of the wood, resin, finish or
 * colour that is chosen in its place. What the shop asks for one wood says nothing of another.
 */
export function goodsFor(worked: WorkedMethod, name: string, material: Material): ChosenGoods {
  const usual = material.item ?? name;
  const chooser = chooserOf(worked, material);
  const parameter = chooser === undefined ? undefined : worked.parameters[chooser];
  if (!parameter) return { id: usual, what: material.what };
  const { record, value, raw } = parameter;
  const text = 'text' in value && value.text ? value.text : String(raw);
  const what = `${material.what}: ${text}`;
  const isUsual = JSON.stringify(raw) === JSON.stringify(record.default);
  if (isUsual) return { id: usual, what };
  // A colour of paste is sold as any other is; another wood, resin or finish has a price of its own.
  if (record.kind === 'choice') return { id: `${usual}: ${text}`, what, like: usual };
  // Rough maple and planed maple are goods of their own: so are those of another wood.
  const first = record.default;
  const isNamed = typeof raw === 'string' && typeof first === 'string' && usual.includes(first);
  return { id: isNamed ? usual.replace(first, raw) : `${usual}: ${text}`, what };
}

/** The goods of a shop, with those that are sold like others of it. */
export function soldIn(shop: Shop | undefined, chosen: readonly ChosenGoods[]): Goods[] {
  const known = shop ? shopGoods(shop) : [];
  const own = new Set(known.map(({ id }) => id));
  const copies = new Map<string, Goods>();
  for (const { id, like, what } of chosen) {
    const goods = own.has(id) || like === undefined ? undefined : known.find((each) => each.id === like);
    // What is on the shelf is of the usual colour.
    if (goods) copies.set(id, { id, what, packs: goods.packs, ...(goods.density ? { density: goods.density } : {}) });
  }
  return [...known, ...copies.values()];
}

/** Whether a material is weighed in grams by everybody: a scale for resin and its colours is marked in nothing else. */
export const isWeighed = ({ kind }: Pick<Material, 'kind'>): boolean => kind === 'resin' || kind === 'pigment';
