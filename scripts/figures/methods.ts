import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { WorkedMethod } from '../../src/method/case/types.ts';
import { workMethod } from '../../src/method/case/work.ts';
import { moneyOf } from '../../src/method/plan/index.ts';
import { readMethod } from '../../src/method/read.ts';
import { readShop } from '../../src/method/shop/index.ts';
import { readMethodTexts, root } from '../../src/store/index.ts';
import { figureLines, line, valueLine } from './lines.ts';

/** What the pieces of a method cost in the shop of the demonstration, or why nothing is known of it. */
function moneyLines(id: string, worked: WorkedMethod): string[] {
  const { cost } = moneyOf(worked);
  if (!cost.ok) return cost.errors.map(({ message }) => line(id, 'price', 'none', '', '', '', message));
  const { pieceCost, price } = cost.value.pricing;
  const money = (name: string, value: number) =>
    valueLine(id, name, { value, unit: cost.value.request.currency.code, basis: 'derived' });
  return [money('cost of a piece', pieceCost), money('price of a piece', price)];
}

/** Every figure that the methods of the house work out at their defaults, in the shop of the demonstration. */
export async function methodFigures(): Promise<string[]> {
  const { shop } = readShop(readFileSync(join(root, 'methods', 'shop.yaml'), 'utf8'));
  const lines: string[] = [];
  for (const { id, file, text } of readMethodTexts()) {
    const working = await workMethod(readMethod(text, file), shop ? { shop } : {});
    if (!working.ok) throw new Error(`${file}: ${working.problems.map(({ message }) => message).join(' ')}`);
    const { worked } = working;
    const hours = worked.steps.reduce(
      (sum, { people, hands }) => sum + people * (hands.setUp + hands.each * worked.pieces),
      0,
    );
    lines.push(
      valueLine(id, 'pieces', { value: worked.pieces, unit: '{count}', basis: '' }),
      valueLine(id, 'hands', { value: hours, unit: 'min', basis: '' }),
      ...moneyLines(id, worked),
      ...Object.values(worked.calculations).flatMap(({ name, result }) =>
        result ? figureLines(`${id} ${name}`, result) : [line(`${id} ${name}`, 'refused')],
      ),
    );
  }
  return lines;
}
