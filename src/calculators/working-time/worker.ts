import type { Calculator } from '../kit/calculator.ts';
import { answerInWorker } from '../view/answer-worker.ts';
import { workingTimeCalculator } from './calculator.ts';

answerInWorker(workingTimeCalculator as unknown as Calculator);
