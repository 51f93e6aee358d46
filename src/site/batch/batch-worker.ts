import type { BatchRecord } from '../../method/batch/record.ts';
import { type BatchShown, shownBatch } from '../../method/batch/shown.ts';

/** What the page asks, and what comes back: the same number on both. */
export interface BatchQuestion {
  number: number;
  record: BatchRecord;
  now: string;
  stage: 'today' | 'whole';
}
export interface BatchReply {
  number: number;
  stage: 'today' | 'whole';
  answer: BatchShown;
}

interface Scope {
  onmessage: ((event: { data: BatchQuestion }) => void) | null;
  postMessage(reply: BatchReply): void;
}

const scope = globalThis as unknown as Scope;
const memo = new Map<string, unknown>();
/** Answers of a day at the bench; more is another batch’s. */
const mostKept = 2_000;

scope.onmessage = async ({ data: { number, record, now, stage } }) => {
  if (memo.size > mostKept) memo.clear();
  try {
    scope.postMessage({ number, stage: 'today', answer: await shownBatch(record, now, 'today', memo) });
    if (stage === 'whole') scope.postMessage({ number, stage, answer: await shownBatch(record, now, stage, memo) });
  } catch (problem) {
    // Out of the promise, whose failure the page would not hear of.
    setTimeout(() => {
      throw problem;
    });
  }
};
