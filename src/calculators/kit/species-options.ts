import { allSpecies } from '../../model/species/index.ts';
import type { ComboboxOption } from './Combobox.tsx';

/** Every wood to pick from, found by common, trade and botanical name. */
export const speciesOptions: readonly ComboboxOption[] = allSpecies.map((species) => ({
  value: species.id,
  label: species.name,
  detail: [species.botanical, ...species.tradeNames].filter(Boolean).join(', '),
}));
