import { answer } from '../src/calculators/kit/answer.ts';
import { templateFitCalculator } from '../src/calculators/template-fit/calculator.ts';
import { offsetShape, prepare, type Shape } from '../src/model/outline/index.ts';
import { grown, referenceOf, wavyPath } from '../tests/model/outline/reference.ts';
import { median } from './compute.ts';

/** An outline of 2,000 points with hollows and a hole, as a tracing programme would give it, in mm. */
const drawing = `${wavyPath(
  150,
  [
    { order: 7, swing: 0.08, phase: 0 },
    { order: 23, swing: 0.015, phase: 0 },
  ],
  2000,
)}M-100 0a10 10 0 0 0 20 0a10 10 0 0 0 -20 0Z`;

const asked = {
  shape: 'drawing',
  drawing,
  bitDiameter: '12.7 mm',
  cuttingLength: '25 mm',
  stock: '20 mm',
  template: '12 mm',
  boardLength: '600 mm',
  boardWidth: '450 mm',
};

/** The whole answer for an outline of 2,000 points, and its rough line alone beside that of a second geometry library. */
export function benchOutline(): void {
  const whole = median(() => answer(templateFitCalculator, asked), { warm: 60, runs: 200 });
  console.log(`\ntemplate-fit, an own drawing of 2,000 points: ${whole.toFixed(1)} ms`);
  const [outer, hole] = drawing.split(/(?<=Z)/) as [string, string];
  const ready = (): Shape => {
    const shape = prepare({ outer, holes: [hole] });
    if (!shape.ok) throw new Error('The outline of the bench is broken.');
    return shape.value;
  };
  const shape = ready();
  const reference = referenceOf(shape);
  const prepared = median(ready, { warm: 30, runs: 100 });
  const ours = median(() => offsetShape(ready(), 3), { warm: 30, runs: 100 }) - prepared;
  const theirs = median(() => grown(reference, 3), { warm: 10, runs: 40 });
  console.log(
    `rough line at 3 mm of the same: ${ours.toFixed(2)} ms; the second geometry library ${theirs.toFixed(1)} ms: ratio ${(ours / theirs).toFixed(3)}`,
  );
}
