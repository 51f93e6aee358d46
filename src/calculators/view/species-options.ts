import { allSpecies } from '../../model/species/index.ts';
import { usualWoods } from '../../model/species/usual.ts';
import type { ComboboxOption } from './Combobox.tsx';

/** Place of a wood in the list: the usual ones first, the rest as they come. */
const place = (id: string) => (usualWoods.includes(id) ? usualWoods.indexOf(id) : usualWoods.length);

/** Every wood to pick from, the usual ones first, found by common, trade and botanical name. */
export const speciesOptions: readonly ComboboxOption[] = [...allSpecies]
  .sort((one, other) => place(one.id) - place(other.id))
  .map((species) => ({
    value: species.id,
    label: species.name,
    wood: species,
    detail: [species.botanical, ...species.tradeNames].filter(Boolean).join(', '),
  }));
