import { calculator } from '../kit/calculator.ts';
import { boringAnswer } from './boring.ts';
import { figures } from './figures.ts';
import { inputs } from './inputs.ts';
import { routingAnswer } from './routing.ts';

export const cutterSpeedCalculator = calculator({
  id: 'cutter-speed',
  title: 'Cutters and their speed',
  question: 'How fast may this bit turn, how deep may it cut, and is it long enough for the template?',
  summary:
    'From a bit, its speed, the stock and the template: whether that is too fast, in how many passes, and whether it is long enough.',
  inputs,
  together: [
    {
      fields: ['cuttingLength', 'stock', 'template'],
      why: 'A cut along a template is judged by the length of the edge, the stock and the template together',
    },
  ],
  taken: () => ({ work: 'routing' }),
  example: {
    metric: {
      work: 'routing',
      diameter: '12.7 mm',
      turns: '18000',
      cuttingLength: '25 mm',
      bearing: 'tip',
      stock: '20 mm',
      template: '12 mm',
    },
    inch: {
      work: 'routing',
      diameter: '1/2 in',
      turns: '18000',
      cuttingLength: '1 in',
      bearing: 'tip',
      stock: '13/16 in',
      template: '1/2 in',
    },
  },
  figures,
  compute(given) {
    return (given.work ?? 'routing') === 'boring' ? boringAnswer(given) : routingAnswer(given);
  },
});
