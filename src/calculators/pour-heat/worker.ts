import type { Calculator } from '../kit/calculator.ts';
import { answerInWorker } from '../view/answer-worker.ts';
import { pourHeatCalculator } from './calculator.ts';

answerInWorker(pourHeatCalculator as unknown as Calculator);
