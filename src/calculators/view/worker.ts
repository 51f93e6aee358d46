import { isCalculatorId, loadCalculator } from '../registry.ts';
import { answerInWorker } from './answer-worker.ts';

answerInWorker((id) =>
  isCalculatorId(id) ? loadCalculator(id) : Promise.reject(new Error(`There is no calculator “${id}”.`)),
);
