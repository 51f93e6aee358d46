import { TextAnswers, type TextQuestion } from './text-answers.ts';

const answers = new TextAnswers();
const scope = globalThis as unknown as {
  onmessage: (event: MessageEvent<{ number: number; question: TextQuestion }>) => void;
  postMessage(reply: unknown): void;
};

scope.onmessage = async ({ data: { number, question } }) => {
  try {
    scope.postMessage({ number, answer: await answers.answer(question) });
  } catch (problem) {
    // Out of the promise, whose failure the page would not hear of.
    setTimeout(() => {
      throw problem;
    });
  }
};
