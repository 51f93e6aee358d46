import { amount } from '../../model/quantity/index.ts';
import { exactTime } from '../page/time-words.ts';
import type { MethodPage, ShownBlock, ShownPart, ShownStep } from '../page/types.ts';
import type { ClassMix } from './types.ts';

/** Steps that the teacher does, by id: what a student's sheet says in place of the work, a line each. */
export type TeachersPart = ReadonlyMap<string, readonly string[]>;

/** Why a step is the teacher's: it comes before the students hear what can hurt, it is bought, or it is mixed. */
export type Teachers = 'before' | 'bought' | 'mixed';

/** Steps that only the teacher does for a class, by id. */
export function teachersSteps(
  steps: readonly { id: string; act: { id: string } }[],
  isMixed: (step: string) => boolean,
): ReadonlyMap<string, Teachers> {
  const heard = steps.findIndex(({ act }) => act.id === 'brief');
  return new Map(
    steps.flatMap(({ id, act }, at): [string, Teachers][] => {
      if (at < heard) return [[id, 'before']];
      if (act.id === 'gather') return [[id, 'bought']];
      return isMixed(id) ? [[id, 'mixed']] : [];
    }),
  );
}

type Mixed = Pick<ClassMix, 'calculation' | 'step' | 'figures'>;

/** Grams of the mix that go into the one piece of a page, as a marked quantity; undefined where the dose is not of a shape. */
function intoThePiece({ calculations }: ShownStep, mix: Mixed): string | undefined {
  const figures = calculations.find(({ name }) => name === mix.calculation)?.figures;
  return figures?.['fillVolume'] && figures['fillMass'] ? amount(figures['fillMass'].value, 'g', 3, true) : undefined;
}

/**
 * What of a method the teacher does for a class: what comes before the students hear what can hurt, what is bought, and whatever is mixed.
 *
 * @param page the method for the one piece of a student
 * @param mixes what the class mixes at once, of which the student has a share
 */
export function teachersPart({ steps }: Pick<MethodPage, 'steps'>, mixes: readonly Mixed[]): TeachersPart {
  const mixOf = (id: string) => mixes.find((each) => each.step.id === id);
  const found = new Map<string, readonly string[]>();
  const theirs = teachersSteps(steps, (id) => mixOf(id) !== undefined);
  for (const step of steps) {
    const why = theirs.get(step.id);
    const mix = mixOf(step.id);
    if (why === 'before')
      found.set(step.id, ['The teacher does this before the class begins. You find the piece ready.']);
    else if (why === 'bought') found.set(step.id, ['The teacher does this, for all at once. You buy nothing.']);
    else if (why === 'mixed' && mix) {
      const share = intoThePiece(step, mix);
      found.set(step.id, [
        'The teacher does this, for all at once. Meanwhile stand two metres off, goggles on, and touch no bottle.',
        ...(share ? [`You are handed mixed resin. Into your piece go ${share}.`] : []),
      ]);
    }
  }
  return found;
}

const holdsDose = (block: ShownBlock, names: readonly string[]): boolean =>
  names.some((name) => JSON.stringify(block).includes(`"calculation":"${name}"`));

/** The time in which the class's cups must be empty in place of that of a smaller cup for one piece. */
function ofTheClass(part: ShownPart, mixes: readonly Mixed[]): ShownPart {
  if (part.kind === 'value') {
    const mix = mixes.find(({ calculation }) => part.pointer === `/calculations/${calculation}/figures/emptyWithin`);
    const time = mix?.figures['emptyWithin'];
    return time ? { ...part, text: amount(time.value, 's', 2) } : part;
  }
  return 'parts' in part ? { ...part, parts: part.parts.map((each) => ofTheClass(each, mixes)) } : part;
}

/** What a step waits for, with the time of the class's cups in place of that of a smaller cup for one piece. */
function waitsOfTheClass(page: MethodPage, waits: readonly string[], mixes: readonly Mixed[]): string[] {
  return waits.map((words) =>
    mixes.reduce((said, { calculation, step, figures }) => {
      const ofThePiece = page.steps
        .find(({ id }) => id === step.id)
        ?.calculations.find(({ name }) => name === calculation)?.figures?.['emptyWithin'];
      const ofAll = figures['emptyWithin'];
      return ofThePiece && ofAll && ofAll.value < ofThePiece.value
        ? said.replace(`Begin within ${window(ofThePiece.value)} `, `Begin within ${window(ofAll.value)} `)
        : said;
    }, words),
  );
}

/** A window as a step's waits say it, from seconds. */
const window = (seconds: number): string => exactTime(seconds / 60);

const blockOfTheClass = (block: ShownBlock, mixes: readonly Mixed[]): ShownBlock =>
  block.kind === 'paragraph'
    ? { ...block, parts: block.parts.map((part) => ofTheClass(part, mixes)) }
    : { ...block, items: block.items.map((item) => item.map((each) => blockOfTheClass(each, mixes))) };

/**
 * A page without what a student neither does nor uses: of the teacher's steps the doses, tools and numbers to measure, of the materials those
 * that only the teacher takes, wood, which is bought for all, and resin, which is mixed for all.
 */
export function withoutTeachersPart(page: MethodPage, part: TeachersPart, mixes: readonly Mixed[]): MethodPage {
  const names = mixes.map(({ calculation }) => calculation);
  const theirs = (numbers: readonly number[]) =>
    numbers.length > 0 && numbers.every((number) => part.has(page.steps[number - 1]?.id ?? ''));
  const bought = part.size > 0 ? ['wood'] : [];
  const handedOut = [...bought, ...(mixes.length > 0 ? ['resin', 'pigment'] : [])];
  return {
    ...page,
    materials: page.materials.filter(({ kind, steps }) => !theirs(steps) && !handedOut.includes(kind)),
    tools: page.tools.filter(({ steps }) => !theirs(steps)),
    steps: page.steps.map((step, at): ShownStep => {
      const does = step.does.map((block) => blockOfTheClass(block, mixes));
      const waits = waitsOfTheClass(page, step.waits, mixes);
      if (!part.has(step.id)) return { ...step, does, waits };
      const mixed = mixes.some((mix) => mix.step.id === page.steps[at]?.id);
      const { tell: _tell, wrong: _wrong, ...rest } = step;
      return {
        ...rest,
        does: mixed ? does.filter((block) => !holdsDose(block, names)) : [],
        hands: { setUp: 0, each: 0 },
        missed: [],
        tools: [],
        uses: [],
        measures: [],
        calculations: [],
      };
    }),
  };
}
