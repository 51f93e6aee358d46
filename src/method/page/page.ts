import type { Caution, Outcome } from '../../model/evidence/index.ts';
import { type Hazard, hazardWords } from '../acts/act.ts';
import type { Calculators } from '../case/fit.ts';
import type { WorkedMethod } from '../case/types.ts';
import { type Bill, moneyWords } from '../cost/index.ts';
import type { CaseCost } from '../plan/price.ts';
import { finishesOf, woodsOf } from '../rules/kit.ts';
import type { Finding } from '../rules/rule.ts';
import { shownParameters } from './parameters.ts';
import { needText, shownSteps, withFindings } from './steps.ts';
import type { MethodPage, ShownFinding, ShownStep } from './types.ts';
import { shownText } from './values.ts';

/** What is worked out beside the steps: before there is a timetable, and with one. */
export interface Beside {
  findings: readonly Finding[];
  bill: Outcome<Bill>;
  cost: Outcome<CaseCost>;
}

function shownFindings(worked: WorkedMethod, findings: readonly Finding[]): ShownFinding[] {
  const numbers = new Map(worked.steps.map(({ id }, at) => [id, at + 1]));
  return findings.map(({ rule, level, step, path, message, wayOut, excepted }) => {
    const { line, column } = worked.spanOf(path);
    const number = step === undefined ? undefined : numbers.get(step);
    return {
      rule,
      level,
      ...(step === undefined ? {} : { step }),
      ...(number === undefined ? {} : { number }),
      message,
      wayOut,
      ...(excepted === undefined ? {} : { excepted }),
      line,
      column,
    };
  });
}

/** Each danger of the method once, with the numbers of the steps that carry it. */
function dangersOf(steps: readonly ShownStep[]): MethodPage['brief']['dangers'] {
  const found = new Map<string, { caution: Caution; steps: number[] }>();
  for (const { number, cautions } of steps)
    for (const { saidIn: _, ...caution } of cautions) {
      if (caution.level !== 'danger') continue;
      const before = found.get(caution.text);
      if (before) before.steps.push(number);
      else found.set(caution.text, { caution, steps: [number] });
    }
  return [...found.values()];
}

/** What the work gives off: what an act leaves of resin or solvent only where the method uses some. */
function hazardsOf({ steps, materials }: WorkedMethod): Hazard[] {
  const withResin = Object.values(materials).some(({ record: { kind } }) => kind === 'resin' || kind === 'pigment');
  const all = steps.flatMap(({ act }) => act.hazards);
  const withSolvent = steps.some(({ cautions }) => cautions.some(({ id }) => id === 'solvent-use'));
  return [...new Set(all)].filter(
    (hazard) => (hazard !== 'resin' || withResin) && (hazard !== 'solvent' || withSolvent),
  );
}

function briefOf(
  worked: WorkedMethod,
  steps: readonly ShownStep[],
  findings: readonly ShownFinding[],
  { cost }: Beside,
): MethodPage['brief'] {
  const count = (level: ShownFinding['level']) =>
    findings.filter((finding) => finding.level === level && finding.excepted === undefined).length;
  const { pieceCost, price } = cost.ok ? cost.value.pricing : {};
  const currency = cost.ok ? cost.value.request.currency : undefined;
  return {
    hands: worked.steps.reduce(
      (sum, { people, hands }) => sum + people * (hands.setUp + hands.each * worked.pieces),
      0,
    ),
    ...(currency && pieceCost !== undefined ? { pieceCost: moneyWords(pieceCost, currency) } : {}),
    ...(currency && price !== undefined ? { price: moneyWords(price, currency) } : {}),
    hazards: hazardsOf(worked).map((hazard) => hazardWords[hazard]),
    dangers: dangersOf(steps),
    stops: count('stop'),
    warnings: count('warn'),
  };
}

/** Numbers of the steps that name a thing. */
const stepsWith = (worked: WorkedMethod, list: 'tools' | 'uses', name: string): number[] =>
  worked.steps.flatMap(({ record }, at) => (record[list]?.includes(name) ? [at + 1] : []));

/** Why there is no bill or no price: without a shop record nobody asked for one. */
function costlessOf(worked: WorkedMethod, { bill, cost }: Beside): string[] {
  if (!worked.shop)
    return ['Without a shop record nothing has a price. Keep one, and the page says what a piece costs.'];
  const errors = [...(bill.ok ? [] : bill.errors), ...(cost.ok ? [] : cost.errors)];
  return [...new Set(errors.map(({ message }) => message))];
}

/** What of a page follows from the numbers of a case alone, before it is judged and priced. */
type NumbersOfPage = Pick<
  MethodPage,
  | 'file'
  | 'title'
  | 'for'
  | 'about'
  | 'language'
  | 'version'
  | 'makes'
  | 'taught'
  | 'food'
  | 'sources'
  | 'parameters'
  | 'steps'
  | 'exceptions'
  | 'materials'
  | 'tools'
  | 'shop'
  | 'currency'
  | 'madeOf'
>;

/** By the worked method: a page is told of one case several times, each time with more beside it. */
const numbersKnown = new WeakMap<WorkedMethod, NumbersOfPage>();

function numbersOf(worked: WorkedMethod, calculators: Calculators): NumbersOfPage {
  const known = numbersKnown.get(worked);
  if (known) return known;
  const made = numbersAnew(worked, calculators);
  numbersKnown.set(worked, made);
  return made;
}

/** The page of a worked method without its timetable. */
export function pageOf(worked: WorkedMethod, calculators: Calculators, beside: Beside): MethodPage {
  const { parameters, steps: told, exceptions, materials, tools, ...head } = numbersOf(worked, calculators);
  const { shop, currency, madeOf, ...first } = head;
  const findings = shownFindings(worked, beside.findings);
  const steps = withFindings(told, findings);
  return {
    ...first,
    brief: briefOf(worked, steps, findings, beside),
    parameters,
    steps,
    ...(beside.bill.ok ? { bill: beside.bill.value } : {}),
    ...(beside.cost.ok ? { cost: beside.cost.value } : {}),
    costless: costlessOf(worked, beside),
    findings,
    exceptions,
    materials,
    tools,
    ...(shop === undefined ? {} : { shop }),
    ...(currency === undefined ? {} : { currency }),
    ...(madeOf === undefined ? {} : { madeOf }),
  };
}

function numbersAnew(worked: WorkedMethod, calculators: Calculators): NumbersOfPage {
  const { file, record, pieces, shop } = worked;
  const { default: usual, least, most } = record.makes.pieces;
  return {
    file,
    title: record.title,
    for: record.for,
    ...(record.about === undefined ? {} : { about: shownText(worked, record.about) }),
    language: record.language,
    ...(record.version === undefined ? {} : { version: record.version }),
    makes: { what: record.makes.what, pieces, least, most, usual },
    ...(record.taught ? { taught: record.taught } : {}),
    ...(record.food ? { food: record.food } : {}),
    sources: record.sources,
    parameters: shownParameters(worked),
    steps: shownSteps(worked, calculators),
    exceptions: worked.exceptions.map(({ rule, step, reason }) => ({
      rule,
      ...(step === undefined ? {} : { step }),
      reason,
    })),
    materials: Object.values(worked.materials).map((material) => {
      const need = needText(material);
      return {
        name: material.name,
        what: material.record.what,
        kind: material.record.kind,
        ...(need === undefined ? {} : { need }),
        steps: stepsWith(worked, 'uses', material.name),
      };
    }),
    tools: Object.values(worked.tools).map(({ name, record: { what, kind }, count }) => ({
      name,
      what,
      kind,
      count,
      steps: stepsWith(worked, 'tools', name),
    })),
    ...(shop ? { shop: shop.name, currency: shop.currency } : {}),
    madeOf: {
      woods: woodsOf(worked).map(({ thing: { name, botanical } }) => (botanical ? { name, botanical } : { name })),
      finishes: finishesOf(worked).map(({ thing: { name } }) => name),
    },
  };
}
