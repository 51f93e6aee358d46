import { expect, test } from 'vitest';
import { type Live, pieceByPiece } from '../../../src/calculators/view/drawn.ts';

const CalculatorView = () => null;
const CalculatorAhead = () => null;
const views = { CalculatorView, CalculatorAhead };

test('no piece of what was fetched is run before the reader rests', async () => {
  const ran: string[] = [];
  const rests: (() => void)[] = [];
  const rest = () => new Promise<void>((resolve) => rests.push(resolve));
  const shown = {} as Live['shown'];
  const live = pieceByPiece(
    {
      view: async () => {
        ran.push('view');
        return views;
      },
      shown: async () => {
        ran.push('calculator');
        return shown;
      },
    },
    rest,
  );
  const turn = () => new Promise((resolve) => setTimeout(resolve));
  await turn();
  expect(ran).toEqual([]);
  rests[0]?.();
  await turn();
  expect(ran).toEqual(['view']);
  rests[1]?.();
  expect(await live).toEqual({ ...views, shown });
  expect(ran).toEqual(['view', 'calculator']);
});
