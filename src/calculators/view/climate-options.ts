import { climates } from '../../model/moisture/climates.ts';
import type { ComboboxOption } from './Combobox.tsx';

/** Every place to pick from, found by its name, another name, a town near it, its state or its country. */
export const climateOptions: readonly ComboboxOption[] = climates.map(({ id, place, country, also, near }) => ({
  value: id,
  label: place,
  detail: [
    ...(place.endsWith(country) ? [] : [country]),
    ...also,
    ...(near.length > 0 ? [`near ${near.join(', ')}`] : []),
  ].join(', '),
}));
