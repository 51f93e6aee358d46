import type { Result, ResultDocument } from '../../model/evidence/index.ts';
import { amount } from '../../model/quantity/index.ts';
import type { Calculators } from '../case/fit.ts';
import { documentsAt, tablesAt } from '../case/seal-coat.ts';
import type { WorkedCalculation, WorkedMaterial, WorkedMethod, WorkedStep } from '../case/types.ts';
import { isWeighed } from '../plan/goods.ts';
import { wholeCase } from './inputs.ts';
import { measuresOf } from './measures.ts';
import type { ShownCalculation, ShownFinding, ShownStep } from './types.ts';
import { shownText, shownTitle } from './values.ts';
import { waitsOf } from './waits.ts';

/**
 * What a case needs of a material, as one marked text: a sum for each unit that it is counted in, and the spare that is bought beyond it;
 * undefined where nothing says.
 */
export function needText({ needs, record, spare }: WorkedMaterial): string | undefined {
  const sums = new Map<string, number>();
  for (const { amount: value, unit } of needs) sums.set(unit, (sums.get(unit) ?? 0) + value);
  if (sums.size === 0) return undefined;
  const words = [...sums].map(([unit, sum]) => amount(sum, unit, 3, isWeighed(record))).join(' + ');
  return spare > 0 ? `${words} and ${amount(100 * spare, '%')} spare` : words;
}

/** Calculations as they were shown, by their answer: the same question has the same one, and most of a case stays as it was. */
const shownBefore = new WeakMap<Result, Map<string, ShownCalculation>>();

function shownCalculation(
  step: Pick<WorkedStep, 'act'>,
  calculation: WorkedCalculation,
  calculators: Calculators,
): ShownCalculation {
  const { name, result } = calculation;
  if (!result) return shownAnew(step, calculation, calculators);
  const known = shownBefore.get(result) ?? new Map<string, ShownCalculation>();
  shownBefore.set(result, known);
  const place = `${step.act.id} ${name}`;
  const shown = known.get(place) ?? shownAnew(step, calculation, calculators);
  known.set(place, shown);
  return shown;
}

function shownAnew(
  step: Pick<WorkedStep, 'act'>,
  { name, use, raw, result, errors = [] }: WorkedCalculation,
  calculators: Calculators,
): ShownCalculation {
  const calculator = calculators.get(use);
  let documents: readonly ResultDocument[] | undefined;
  return {
    name,
    use,
    title: calculator?.title ?? use,
    inputs: calculator ? wholeCase(raw, calculator) : {},
    ...(result ? { verdict: result.verdict } : {}),
    figures: result?.figures ?? {},
    // Those of an outline are much to set too: whoever is told the figures first is shown the drawings after them.
    get drawings() {
      return result?.drawings ?? [];
    },
    tables: tablesAt(step, result),
    // A page on a screen has no papers, and those of an outline are much to set.
    get documents() {
      documents ??= documentsAt(step, result);
      return documents;
    },
    errors: errors.map(({ message }) => message),
  };
}

/** The steps of a case as a page shows them, in the order of the file, and still without what the rules found in them. */
export function shownSteps(worked: WorkedMethod, calculators: Calculators): ShownStep[] {
  /** By the text: a calculation gives the caution of one id other numbers in another step. */
  const saidIn = new Map<string, number>();
  const waits = waitsOf(worked);
  return worked.steps.map((step, at): ShownStep => {
    const { id, record, act, hands, people, interrupt, calculations, cautions } = step;
    const number = at + 1;
    const text = (name: 'why' | 'tell' | 'wrong') => {
      const source = record[name];
      return source === undefined ? {} : { [name]: shownText(worked, source) };
    };
    const warned = cautions.map((caution) => {
      const before = saidIn.get(caution.text);
      if (before === undefined) saidIn.set(caution.text, number);
      return before === undefined ? caution : { ...caution, saidIn: before };
    });
    return {
      number,
      id,
      title: shownTitle(worked, record.title),
      act: { id: act.id, label: act.label },
      does: shownText(worked, record.does),
      ...text('why'),
      ...text('tell'),
      ...text('wrong'),
      hands,
      people,
      interrupt,
      waits: waits[at]?.waits ?? [],
      missed: waits[at]?.missed ?? [],
      tools: (record.tools ?? []).flatMap((name) => {
        const tool = worked.tools[name];
        return tool ? [{ name, what: tool.record.what, kind: tool.record.kind }] : [];
      }),
      uses: (record.uses ?? []).flatMap((name) => {
        const material = worked.materials[name];
        const need = material && needText(material);
        return material
          ? [{ name, what: material.record.what, kind: material.record.kind, ...(need === undefined ? {} : { need }) }]
          : [];
      }),
      measures: measuresOf(worked, step),
      calculations: calculations.map((calculation) => shownCalculation(step, calculation, calculators)),
      cautions: warned,
      findings: [],
    };
  });
}

/** The same steps, each with the places of the findings that are about it. */
export const withFindings = (steps: readonly ShownStep[], findings: readonly ShownFinding[]): ShownStep[] =>
  steps.map((step) => ({
    ...step,
    findings: findings.flatMap((finding, place) => (finding.step === step.id ? [place] : [])),
  }));
