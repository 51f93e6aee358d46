import { expect, test } from 'vitest';
import { allSpecies } from '../../../src/model/species/index.ts';
import { figureNames } from '../../../src/model/species/types.ts';

/**
 * Every resolved figure, so that the review of a changed row shows all that follows from it.
 * After a change that is meant: `npx vitest run tests/model/species/snapshot.test.ts -u`.
 */
test('every figure of every wood is as reviewed', async () => {
  const lines = allSpecies.map((wood) => {
    const figures = figureNames.map((name) => {
      const figure = wood.figures[name];
      if (!figure) return '';
      const band = figure.low === undefined ? '' : ` [${figure.low} ${figure.high}]`;
      return `${Number(figure.value.toPrecision(6))}${band} ${figure.basis}`;
    });
    return [wood.id, wood.food.level, ...figures].join(',');
  });
  const csv = `${['id', 'food', ...figureNames].join(',')}\n${lines.join('\n')}\n`;
  await expect(csv).toMatchFileSnapshot('resolved-figures.csv');
});
