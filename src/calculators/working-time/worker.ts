import { answerInWorker } from '../kit/answer-worker.ts';
import type { Calculator } from '../kit/calculator.ts';
import { workingTimeCalculator } from './calculator.ts';

answerInWorker(workingTimeCalculator as unknown as Calculator);
