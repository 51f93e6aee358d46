import { answer, fieldsOf } from '../../calculators/kit/answer.ts';
import type { Calculator } from '../../calculators/kit/calculator.ts';
import { onwardOf } from '../../calculators/kit/carry.ts';
import { componentOf, pagePartsOf } from '../../calculators/view/page-parts.ts';

const camel = (id: string) => id.replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase());

/** Name of the file that holds a calculator for the pages that show it, among what the build writes. */
export const calculatorFile = (id: string): string => `calculator-${id}.js`;

/** Where pages written in Markdown find that file. */
export const calculatorModule = (id: string): string => `@generated/handbook/default/${calculatorFile(id)}`;

/**
 * The module that a page imports to show a calculator: a `Shown` with this one calculator, the controls of the kinds of its fields, and
 * nothing of any other but the names of what they share.
 *
 * @param all the calculators of the site
 */
export function calculatorModuleText(calculator: Calculator, all: readonly Calculator[]): string {
  const { controls, extra } = pagePartsOf(calculator);
  const from = (name: string, file: string) => `import { ${name} } from '@site/src/calculators/${file}';`;
  const files = [...Object.values(controls), ...(extra ? [extra] : [])];
  const kinds = Object.entries(controls).map(([kind, file]) => `${kind}: ${componentOf(file)}`);
  return [
    from(`${camel(calculator.id)}Calculator as calculator`, `${calculator.id}/calculator.ts`),
    ...files.map((file) => from(componentOf(file), file)),
    `const onward = ${JSON.stringify(onwardOf(calculator, all))};`,
    `export default { calculator, onward, controls: { ${kinds.join(', ')} }${extra ? `, extra: ${componentOf(extra)}` : ''} };`,
    '',
  ].join('\n');
}

/** Name of the file that a page fetches with all that makes a calculator live. */
export const liveFile = (id: string): string => `live-${id}.js`;

/** Where the views stand that show a calculator and work it out ahead. */
const view = JSON.stringify('@site/src/calculators/view/CalculatorView.tsx');

/**
 * The module of what makes a calculator live: it is fetched in one, and run piece by piece, since a phone that runs all of it at once answers no key
 * meanwhile.
 */
export function liveModuleText({ id }: Pick<Calculator, 'id'>): string {
  const code = JSON.stringify(`./${calculatorFile(id)}`);
  return [
    `export const view = () => import(/* webpackMode: "eager" */ ${view});`,
    `export const shown = () => import(/* webpackMode: "eager" */ ${code}).then(({ default: shown }) => shown);`,
    '',
  ].join('\n');
}

/** Name of the file that holds a calculator as a page names it, whose own code is fetched when it is asked for something. */
export const drawnFile = (id: string): string => `drawn-${id}.js`;

/** Style of what few answers have: documents, where the answer to the worked case holds some. What they are printed with comes with the code. */
function styleOf(calculator: Calculator): string[] {
  const worked = answer(calculator, calculator.example.metric);
  if (!worked.ok) throw new Error(`${calculator.id}: its worked case has no answer: ${JSON.stringify(worked.errors)}`);
  return worked.value.result.documents?.length ? ['document'] : [];
}

/**
 * The module of such a page: a `Drawn`. Where pages are written (`KERF_WRITES_PAGES`, which the bundler replaces) it holds the code, which
 * draws the answer into the page as sent; in a browser it only knows how to fetch it.
 */
export function drawnModuleText(calculator: Calculator): string {
  const { id, title, summary, inputs } = calculator;
  const code = JSON.stringify(`./${calculatorFile(id)}`);
  const said = JSON.stringify({ id, title, summary, asksMarket: 'market' in fieldsOf({ inputs }) });
  return [
    ...styleOf(calculator).map((name) => `import '@site/src/calculators/view/${name}.module.css';`),
    `import { pieceByPiece } from '@site/src/calculators/view/drawn.ts';`,
    `const live = KERF_WRITES_PAGES ? { shown: require(${code}).default, ...require(${view}) } : undefined;`,
    `const load = (rest) => import(${JSON.stringify(`./${liveFile(id)}`)}).then((pieces) => pieceByPiece(pieces, rest));`,
    `export default { ...${said}, live, load };`,
    '',
  ].join('\n');
}
