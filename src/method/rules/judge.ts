import { nearest } from '../../model/quantity/index.ts';
import type { Path, WorkedMethod } from '../case/types.ts';
import type { Exception } from '../record/index.ts';
import { exceptionNotNeeded, exceptionRefused } from './besides.ts';
import { rules } from './index.ts';
import type { Finding, Found, Rule, RuleLevel } from './rule.ts';

/** How grave a level is. */
const gravity: Readonly<Record<RuleLevel, number>> = { note: 0, warn: 1, stop: 2 };

/**
 * What the rules find in a worked method, in the order of the rules, the method's exceptions laid over it.
 *
 * An exception meets what its rule finds at its step; without a step, all that its rule finds. One that meets nothing is found itself, so
 * that no reason outlives what it excused; so is one of a rule that allows none, and what it would have excused stands.
 *
 * @param all the rules to judge by; all that there are, unless told
 */
export function judge(worked: WorkedMethod, all: readonly Rule[] = rules): readonly Finding[] {
  const found = all.flatMap((rule) => rule.find(worked).map((one) => ({ rule, found: one })));
  const told = found.filter((one) => !isToldElsewhere(one, found));
  const findings = told.map(({ rule, found: one }): Finding => {
    const reason = rule.neverExcepted
      ? undefined
      : worked.exceptions.find((exception) => meets(exception, rule, one))?.reason;
    return { ...one, rule: rule.id, level: rule.level, ...(reason === undefined ? {} : { excepted: reason }) };
  });
  return [
    ...findings,
    ...worked.exceptions.flatMap((exception, at) => faultOf(exception, at, all, told, worked) ?? []),
  ];
}

interface RuleFound {
  rule: Rule;
  found: Found;
}

const meets = (exception: Exception, rule: Rule, found: Found): boolean =>
  exception.rule === rule.id && (exception.step === undefined || exception.step === found.step);

/** The calculation that a place lies in, as one text; undefined where it lies in none. */
function calculationAt(path: Path): string | undefined {
  return path[0] === 'steps' && path[2] === 'calculations' ? path.slice(0, 4).join('/') : undefined;
}

/** Whether a general finding about a calculation says no more than a rule of its own, which is as grave. */
function isToldElsewhere({ rule, found }: RuleFound, all: readonly RuleFound[]): boolean {
  const place = calculationAt(found.path);
  if (!rule.general || place === undefined) return false;
  return all.some(
    (other) =>
      !other.rule.general &&
      gravity[other.rule.level] >= gravity[rule.level] &&
      calculationAt(other.found.path) === place,
  );
}

/** What is wrong with an exception, if anything. */
function faultOf(
  exception: Exception,
  at: number,
  all: readonly Rule[],
  told: readonly RuleFound[],
  worked: WorkedMethod,
): Finding | undefined {
  const place = {
    path: ['exceptions', at],
    level: 'stop' as const,
    ...(exception.step === undefined ? {} : { step: exception.step }),
  };
  const rule = all.find(({ id }) => id === exception.rule);
  const where = exception.step === undefined ? '' : ` at ${titleOf(worked, exception.step)}`;
  if (!rule) {
    const near = nearest(
      exception.rule,
      all.map(({ id }) => id),
    );
    return {
      ...place,
      rule: exceptionNotNeeded,
      message: `There is no rule “${exception.rule}”, so nothing departs from it.`,
      wayOut: near ? `Did you mean ${near}? Otherwise take the exception out.` : 'Take the exception out.',
    };
  }
  if (rule.neverExcepted)
    return {
      ...place,
      rule: exceptionRefused,
      message: `No exception is made from “${rule.title}”. ${rule.neverExcepted}`,
      wayOut: 'Take the exception out, and change the work so that the rule is kept.',
    };
  if (told.some((one) => meets(exception, one.rule, one.found))) return undefined;
  return {
    ...place,
    rule: exceptionNotNeeded,
    message: `Nothing departs from “${rule.title}”${where}: the exception is not needed.`,
    wayOut: 'Take the exception out.',
  };
}

function titleOf(worked: WorkedMethod, step: string): string {
  const title = worked.steps.find(({ id }) => id === step)?.record.title;
  return title ? `“${title}”` : `the step ${step}`;
}
