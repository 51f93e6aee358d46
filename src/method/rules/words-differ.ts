import { readAnyQuantity } from '../../model/quantity/read-any.ts';
import { textsOf } from '../case/references.ts';
import type { WorkedMethod, WorkedStep } from '../case/types.ts';
import { atStep } from './kit.ts';
import { inWords, type Measure, means, measureOf } from './measure.ts';
import { rule } from './rule.ts';
import { sentencesOf, type WrittenQuantity } from './written.ts';

/** A quantity written out that was right for the method's own case and is wrong for this one. */
export const wordsDiffer = rule({
  id: 'words-differ',
  level: 'stop',
  title: 'What is written out still holds in this case',
  looksAt:
    'Quantities written out in the texts of the steps that are what a parameter is by default, to a hundredth of it, and not, to the digits written, what it is in this case. What a bracket says again in other units is left out. One that is also something else in the same step (another parameter, a limit of its tools, what its calculations are told) is taken for that.',
  why: 'A size that is written out stays when the piece is made in another size, and somebody cuts by it.',
  find: (worked) => {
    const allChanged = changedOf(worked);
    if (allChanged.length === 0) return [];
    return worked.steps.flatMap((step) =>
      writtenAt(step).flatMap(({ field, written }) => {
        const changed = allChanged.find(({ before, now }) => isCopyOf(written, before) && !means(written, now));
        if (!changed || meansElse(worked, step, written)) return [];
        const { name, label, now } = changed;
        return [
          {
            ...atStep(step, field),
            message: `The text says ${written.text}; “${label}” is ${inWords(now)} in this case.`,
            wayOut: `Write {/parameters/${name}} in its place, and it follows.`,
          },
        ];
      }),
    );
  },
});

interface Changed {
  name: string;
  label: string;
  before: Measure;
  now: Measure;
}

/** How near to a default a written number must be to have been copied from it: who copies 12.7 mm does not write 13 mm. */
const copied = 0.01;

const isCopyOf = (written: WrittenQuantity, before: Measure): boolean =>
  means(written, before) && Math.abs(written.value - before.value) <= copied * Math.abs(before.value);

/** Quantities among the parameters that somebody set to another value than the method's own. */
function changedOf(worked: WorkedMethod): Changed[] {
  return Object.values(worked.parameters).flatMap(({ name, record, value }) => {
    if (record.kind !== 'quantity' || value.kind !== 'quantity') return [];
    const own = readAnyQuantity(record.default);
    const [now] = measureOf(value);
    if (!own.ok || !now) return [];
    const { label } = record;
    const before: Measure = { dimension: own.value[0].dimension, value: own.value[0].value, label };
    return Math.abs(before.value - now.value) < 1e-9 ? [] : [{ name, label, before, now }];
  });
}

const writtenAt = (step: WorkedStep) =>
  textsOf(step.record).flatMap(([field, text]) =>
    sentencesOf(text).flatMap(({ written }) => written.map((each) => ({ field, written: each }))),
  );

/** Whether a written quantity is something else in its step: another parameter, a limit of a tool, an input, a wait. */
function meansElse(worked: WorkedMethod, step: WorkedStep, written: WrittenQuantity): boolean {
  const parameters = Object.values(worked.parameters).flatMap(({ value }) =>
    value.kind === 'quantity' ? measureOf(value) : [],
  );
  const limits = (step.record.tools ?? []).flatMap((name) =>
    Object.values(worked.tools[name]?.limits ?? {}).flatMap(measureOf),
  );
  const texts = step.calculations.flatMap(({ raw }) => Object.values(raw)).filter((raw) => typeof raw === 'string');
  const told = texts.flatMap((text): Measure[] => {
    const read = readAnyQuantity(text);
    return read.ok ? read.value.map(({ dimension, value }) => ({ dimension, value, label: text })) : [];
  });
  return [...parameters, ...limits, ...told].some((measure) => means(written, measure));
}
