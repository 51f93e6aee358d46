import { calculatorIds, loadCalculator } from '../../calculators/registry.ts';
import type { NamedOption, NameLoaders } from './types.ts';

const picked = (options: readonly { value: string; label: string; detail?: string }[]): NamedOption[] =>
  options.map(({ value, label, detail }) => ({ value, label, ...(detail === undefined ? {} : { detail }) }));

/** Ids from the tables and records of the model, each list fetched when a place first asks for it. */
export const usualNames: NameLoaders = {
  wood: async () => picked((await import('../../calculators/kit/species-field.ts')).speciesOptions),
  place: async () => picked((await import('../../calculators/kit/climate-field.ts')).climateOptions),
  resin: async () =>
    (await import('../../model/resin/kinds.ts')).resinKinds.map(({ kind, name }) => ({ value: kind, label: name })),
  finish: async () => [
    { value: 'none', label: 'No finish' },
    ...(await import('../../model/finish/kinds.ts')).finishes.map(({ id, name }) => ({ value: id, label: name })),
  ],
  calculator: async () => {
    const all = await Promise.all(calculatorIds.map(loadCalculator));
    return all.map(({ id, title, summary }) => ({ value: id, label: title, detail: summary }));
  },
  zone: async () => Intl.supportedValuesOf('timeZone').map((value) => ({ value, label: value })),
};
