import { answerInWorker } from '../kit/answer-worker.ts';
import type { Calculator } from '../kit/calculator.ts';
import { pourHeatCalculator } from './calculator.ts';

answerInWorker(pourHeatCalculator as unknown as Calculator);
