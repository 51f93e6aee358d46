import { answerInWorker } from '../kit/answer-worker.ts';
import type { Calculator } from '../kit/calculator.ts';
import { finishAndMoistureCalculator } from './calculator.ts';

answerInWorker(finishAndMoistureCalculator as unknown as Calculator);
