import { textTable } from '../calculators/kit/text-table.ts';
import { formatNumber, formatQuantity } from '../model/quantity/index.ts';
import { allSpecies, searchSpecies } from '../model/species/index.ts';
import type { FigureName, Species } from '../model/species/types.ts';
import { readOptions } from './options.ts';
import type { Command } from './usage.ts';
import { UsageError } from './usage.ts';

function shown(species: Species, name: FigureName): string {
  const figure = species.figures[name];
  if (!figure) return 'not published';
  const mark = figure.basis === 'published' ? '' : ` (${figure.basis})`;
  const number = figure.unit === '1' ? formatNumber(figure.value) : formatQuantity(figure.value, figure.unit);
  return `${number}${mark}`;
}

function readable(found: readonly Species[]): string {
  return textTable(
    [
      { heading: 'id' },
      { heading: 'name' },
      { heading: 'botanical' },
      { heading: 'radial', numeric: true },
      { heading: 'tangential', numeric: true },
      { heading: 'hardness, 12 %', numeric: true },
      { heading: 'pores' },
      { heading: 'food surface' },
    ],
    found.map((species) => [
      species.id,
      species.name,
      species.botanical ?? 'not recorded',
      shown(species, 'radialShrinkage'),
      shown(species, 'tangentialShrinkage'),
      shown(species, 'sideHardness12'),
      species.pores.openness ?? 'not published',
      species.food.level,
    ]),
  );
}

/** `kerf species [query] [--json]`: the woods that match, all of them without a query. */
export const species: Command = (args, { out }) => {
  const { values, positionals } = readOptions('species', {
    args: [...args],
    options: { json: { type: 'boolean' }, help: { type: 'boolean', short: 'h' } },
    allowPositionals: true,
  });
  if (values.help) {
    out(
      'kerf species [query] [--json]\n  The woods whose common, trade or botanical name matches; all of them without a query.\n',
    );
    return 0;
  }
  const query = positionals.join(' ').trim();
  const found = query === '' ? allSpecies : searchSpecies(query);
  if (found.length === 0) {
    throw new UsageError(
      `species: “${query}” matches none of the ${allSpecies.length} woods, by common, trade or botanical name. Try a shorter word, such as maple, or kerf species alone for the whole list.`,
    );
  }
  out(values.json ? `${JSON.stringify(found)}\n` : `${readable(found)}\n`);
  return 0;
};
