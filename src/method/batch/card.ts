import { type Caution, cautionsInOrder } from '../../model/evidence/index.ts';
import type { WorkedStep } from '../case/types.ts';
import { headOf as firstClause, plainBlocks } from '../documents/words.ts';
import type { ShownBlock } from '../page/types.ts';
import { shownText } from '../page/values.ts';
import { headOf } from './heads.ts';
import type { MeasuredMethod } from './measured.ts';
import type { ItemState, TodayItem } from './today.ts';

/** What a card says of the work of its step, for the pieces and the readings of this batch. Texts hold marked quantities. */
export interface StepCard {
  /** What to do, a paragraph or an entry of a list each; empty where what was read forbids it or leaves it in doubt. */
  does: readonly string[];
  /** How much of what the step uses, a sentence each. */
  doses: readonly string[];
  /** How to tell that it is right. */
  tell: readonly string[];
  /** Its dangers and warnings, the case’s own first: the first clause of each, and all of it. */
  cautions: readonly { level: Caution['level']; head: string; text: string }[];
}

/** States in which somebody is about to do the step or is at it. */
const doable: readonly ItemState[] = ['going', 'now', 'overdue'];

/** Calculators that mete something out, and what of it a step uses. */
const metes: Readonly<Record<string, string>> = {
  'resin-dose': 'resin',
  'flood-coat': 'resin',
  'finish-coats': 'finish',
};

function linesOf(blocks: readonly ShownBlock[]): string[] {
  return plainBlocks(blocks).flatMap((block) =>
    block.kind === 'text' ? [block.text] : block.kind === 'list' ? block.items.map((item) => item) : [],
  );
}

function cardOf(measured: MeasuredMethod, { id }: WorkedStep): StepCard | undefined {
  const { now } = measured;
  const step = now.steps.find((each) => each.id === id);
  if (!step) return undefined;
  const head = headOf(measured, step);
  const held = head?.level === 'stop' || head?.level === 'unknown';
  const { does, tell, uses = [] } = step.record;
  const kinds = new Set(uses.map((name) => now.materials[name]?.record.kind));
  const doses = step.calculations.flatMap(({ use, result }) =>
    result && kinds.has(metes[use] as never) ? [result.verdict.text] : [],
  );
  const lines = held ? [] : linesOf(shownText(now, does));
  return {
    does: lines,
    // What the words of the step say themselves is not said twice.
    doses: held ? [] : [...new Set(doses)].filter((dose) => !lines.some((line) => line.includes(dose))),
    tell: held || tell === undefined ? [] : linesOf(shownText(now, tell)),
    cautions: cautionsInOrder(step.cautions.filter(({ level }) => level !== 'note')).map(({ level, text }) => ({
      level,
      head: firstClause(text),
      text,
    })),
  };
}

/** The cards of the steps that may be done now or are going on, by the id of the step, asked with what was read last. */
export function cardsOf(measured: MeasuredMethod, today: readonly TodayItem[]): Record<string, StepCard> {
  const wanted = new Set(today.flatMap(({ step, state }) => (doable.includes(state) ? [step] : [])));
  return Object.fromEntries(
    measured.worked.steps.flatMap((step) => {
      const card = wanted.has(step.id) ? cardOf(measured, step) : undefined;
      return card ? [[step.id, card]] : [];
    }),
  );
}
