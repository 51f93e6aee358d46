import type { ShopPart } from '../../../method/shop/index.ts';

/** Fields of the record that each part of the form shows. */
export const fieldsOfPart: Readonly<Record<ShopPart, readonly string[]>> = {
  about: ['name', 'about', 'zone', 'currency'],
  air: ['air'],
  machines: ['machines'],
  tools: ['moulds', 'clamps', 'scales', 'bits', 'grits'],
  resins: ['resins'],
  hours: ['calendar'],
  people: ['people'],
  materials: ['materials'],
  prices: ['overhead', 'energy', 'fees', 'margin', 'markup'],
};

/** The part that shows a field of the record; undefined where none does. */
export const partOfField = (field: string): ShopPart | undefined =>
  (Object.keys(fieldsOfPart) as ShopPart[]).find((part) => fieldsOfPart[part].includes(field));

/** Name of a part of the form on its page. */
export const partId = (part: ShopPart) => `shop-part-${part}`;

/** Open a part of the form and go to it. */
export function goToPart(part: ShopPart): void {
  const details = document.getElementById(partId(part));
  if (!(details instanceof HTMLDetailsElement)) return;
  details.open = true;
  details.querySelector('summary')?.focus({ preventScroll: true });
  details.scrollIntoView?.({ block: 'start' });
}
