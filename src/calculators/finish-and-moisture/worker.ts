import type { Calculator } from '../kit/calculator.ts';
import { answerInWorker } from '../view/answer-worker.ts';
import { finishAndMoistureCalculator } from './calculator.ts';

answerInWorker(finishAndMoistureCalculator as unknown as Calculator);
