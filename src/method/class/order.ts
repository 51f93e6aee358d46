import { quantityAt } from '../case/things.ts';
import type { Gap } from '../case/types.ts';
import { billOf, currencyOf, type Need } from '../cost/index.ts';
import { noCurrency } from '../plan/bill.ts';
import { type ChosenGoods, goodsFor, isWeighed, soldIn } from '../plan/goods.ts';
import { stepsOfPointer } from '../pointer.ts';
import type { Material } from '../record/index.ts';
import type { ClassCase, WorkedPlace } from './places.ts';
import { askedTogether, grouped, placesWords, type Together } from './together.ts';
import type { ClassOrder, OrderLine } from './types.ts';

/** What of a material some places take together. */
interface ClassNeed extends Need {
  places: readonly string[];
}

interface Unknown {
  goods: string;
  what: string;
  places: readonly string[];
  why: string;
}

/** What places take of one need of a material, those together that are asked together. */
async function needsOf(
  one: ClassCase,
  name: string,
  at: number,
  places: readonly WorkedPlace[],
  goods: { id: string; what: string },
): Promise<{ needs: ClassNeed[]; unknown: Unknown[] }> {
  const [first] = places as [WorkedPlace];
  const material = first.worked.record.materials[name] as Material;
  const need = material.needs[at] as Material['needs'][number];
  const [branch, calculation = ''] = 'from' in need ? stepsOfPointer(need.from) : [];
  const groups: readonly Pick<Together, 'places' | 'worked'>[] =
    branch === 'calculations'
      ? await askedTogether(one, calculation, places)
      : await Promise.all(
          grouped(places, ({ worked }) => ('from' in need ? JSON.stringify(worked.at(need.from)) : '')).map(
            async (alike) => ({ places: alike, worked: await one.work(alike[0] as WorkedPlace, alike.length) }),
          ),
        );
  const needs: ClassNeed[] = [];
  const unknown: Unknown[] = [];
  const firstUser = Object.entries(first.worked.record.steps).find(([, { uses }]) => uses?.includes(name))?.[0];
  for (const group of groups) {
    const gaps: Gap[] = [];
    const entry = 'amount' in need ? need.amount : { from: need.from, ...(need.take ? { take: need.take } : {}) };
    const value = quantityAt(entry, material.what, [], group.worked, gaps);
    const ids = group.places.map(({ id }) => id);
    if (!value) {
      unknown.push({ goods: goods.id, what: goods.what, places: ids, why: gaps[0]?.message ?? 'It is not known.' });
      continue;
    }
    const step = branch === 'calculations' ? group.worked.calculations[calculation]?.step : firstUser;
    const spare = group.worked.materials[name]?.spare ?? 0;
    needs.push({
      goods: goods.id,
      what: goods.what,
      amount: {
        value: value.value * (need.per === 'piece' ? group.places.length : 1),
        unit: value.unit === '1' ? '{count}' : value.unit,
      },
      ...(spare > 0 ? { spare } : {}),
      ...(isWeighed(material) ? { kept: true } : {}),
      ...(step === undefined ? {} : { step }),
      places: ids,
    });
  }
  return { needs, unknown };
}

/**
 * The common order of a class: what all its places take, each material bought once in packs at least cost.
 *
 * Needs are added up over the places before packs are chosen. A place whose need is not known is told and not counted.
 */
export async function orderOf(one: ClassCase): Promise<ClassOrder> {
  const [first] = one.places;
  const needs: ClassNeed[] = [];
  const unknown: Unknown[] = [];
  const chosen: ChosenGoods[] = [];
  for (const [name, material] of Object.entries(first?.worked.record.materials ?? {})) {
    for (const places of grouped(one.places, (place) => goodsFor(place.worked, name, material).id)) {
      const goods = goodsFor((places[0] as WorkedPlace).worked, name, material);
      chosen.push(goods);
      for (const at of material.needs.keys()) {
        const found = await needsOf(one, name, at, places, goods);
        needs.push(...found.needs);
        unknown.push(...found.unknown);
      }
    }
  }
  const currency = one.shop ? currencyOf(one.shop.currency) : undefined;
  if (currency && !currency.ok)
    return {
      currency: noCurrency.code,
      lines: [],
      bought: 0,
      without: [],
      errors: currency.errors.map(({ message }) => message),
    };
  const bill = billOf(needs, soldIn(one.shop, chosen), currency?.value ?? noCurrency);
  if (!bill.ok)
    return {
      currency: noCurrency.code,
      lines: [],
      bought: 0,
      without: [],
      errors: bill.errors.map(({ field, message }) => `${field}: ${message}`),
    };
  const lines = bill.value.lines.map((line): OrderLine => {
    const own = needs.filter(({ goods }) => goods === line.id);
    return {
      id: line.id,
      what: line.what,
      need: line.need,
      unit: line.unit,
      ...(line.kept ? { kept: true as const } : {}),
      onHand: line.onHand,
      buy: line.buy,
      packs: line.packs,
      cost: line.cost,
      left: line.left,
      ...(line.missing === undefined ? {} : { missing: line.missing }),
      ...(line.notProved ? { notProved: true as const } : {}),
      from: line.from.map(({ amount, step }, at) => ({
        places: own[at]?.places ?? [],
        amount,
        ...(step === undefined ? {} : { step }),
      })),
      unknown: unknown.filter(({ goods }) => goods === line.id).map(({ places, why }) => ({ places, why })),
    };
  });
  const lost = grouped(
    unknown.filter(({ goods }) => !lines.some(({ id }) => id === goods)),
    ({ goods }) => goods,
  ).map(
    (all): OrderLine => ({
      id: all[0]?.goods ?? '',
      what: all[0]?.what ?? '',
      need: 0,
      unit: '{count}',
      onHand: 0,
      buy: 0,
      packs: [],
      cost: null,
      left: null,
      missing: 'the need is not known',
      from: [],
      unknown: all.map(({ places, why }) => ({ places, why })),
    }),
  );
  return {
    currency: bill.value.currency,
    lines: [...lines, ...lost],
    bought: bill.value.bought,
    without: bill.value.without.bought,
    errors: one.faulty.map(
      ({ place }) => `Nothing is ordered for ${placesWords([place])}, whose parameters cannot be used yet.`,
    ),
  };
}
