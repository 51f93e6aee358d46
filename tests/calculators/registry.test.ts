import { existsSync, readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { calculatorById, calculators } from '../../src/calculators/index.ts';
import { answer, fieldsOf } from '../../src/calculators/kit/answer.ts';
import type { Calculator, FigureDeclaration } from '../../src/calculators/kit/calculator.ts';
import { fieldMeta } from '../../src/calculators/kit/fields.ts';
import { calculatorIds, isCalculatorId, loadCalculator } from '../../src/calculators/registry.ts';
import { componentOf, controlFiles, extraFiles, pagePartsOf } from '../../src/calculators/view/page-parts.ts';
import { unitByCode } from '../../src/model/quantity/index.ts';
import { calculatorModuleText, drawnModuleText } from '../../src/site/plugin/calculator-modules.ts';

const folders = readdirSync('src/calculators', { withFileTypes: true })
  .filter(
    (entry) => entry.isDirectory() && entry.name !== 'kit' && existsSync(`src/calculators/${entry.name}/calculator.ts`),
  )
  .map((entry) => entry.name)
  .sort();

/** Figures and columns that are shares of one thing in another: all else has a unit, things that are counted among them. */
const ratios: readonly string[] = [
  'grit-sequence largestStep',
  'grit-sequence steps, ratio',
  'grit-sequence skipping, ratio',
  'pour-heat heatIndex',
  'resin-dose weightRatio',
  'working-time stretch',
];

test('every folder with a calculator is in the registry, and nothing else is', () => {
  expect([...calculatorIds].sort()).toEqual(folders);
  expect(calculators.map(({ id }) => id)).toEqual(calculatorIds);
});

test.each(calculatorIds)('the registry gives %s under its own id, as the list of all does', async (id) => {
  const calculator = await loadCalculator(id);
  expect(calculator.id).toBe(id);
  expect(calculator).toBe(calculatorById(id));
});

test('a calculator is found by its id and no other word', () => {
  expect(calculatorById('width-change')?.title).toBe('Change of width');
  expect(calculatorById('toString')).toBeUndefined();
  expect(isCalculatorId('toString')).toBe(false);
});

describe('what a page brings to show a calculator', () => {
  test.each([...Object.values(controlFiles), ...Object.values(extraFiles)])(
    '%s exports the component of its name',
    async (file) => {
      const module: Record<string, unknown> = await import(/* @vite-ignore */ `../../src/calculators/${file}`);
      expect(typeof module[componentOf(file)]).toBe('function');
    },
  );

  test('is what its fields ask for: no drawing where none is asked, no other calculator’s part', () => {
    const partsOf = (id: string) => pagePartsOf(calculators.find((each) => each.id === id) as Calculator);
    expect(partsOf('width-change')).toEqual({ controls: {} });
    expect(Object.keys(partsOf('pour-heat').controls)).toEqual(['resin']);
    expect(Object.keys(partsOf('resin-dose').controls)).toEqual(['resin', 'drawing']);
    expect(Object.keys(partsOf('seasonal-movement').controls)).toEqual(['readings']);
    expect(Object.keys(extraFiles).filter((id) => !isCalculatorId(id))).toEqual([]);
  });

  test.each(calculatorIds)('the module of %s imports that calculator alone, by a name that it exports', async (id) => {
    const text = calculatorModuleText(calculatorById(id) as Calculator, calculators);
    const imports = [...text.matchAll(/^import \{ (\w+)(?: as \w+)? \} from '@site\/(.+)';$/gm)];
    expect(imports.length).toBe(text.split('import ').length - 1);
    for (const [, name = '', file = ''] of imports) {
      expect(existsSync(file), file).toBe(true);
      expect(
        ((await import(/* @vite-ignore */ `../../${file}`)) as Record<string, unknown>)[name],
        `${name} of ${file}`,
      ).toBeDefined();
    }
    const folders = imports.map(([, , file = '']) => file.split('/')[2]);
    expect(folders.filter((folder) => folder !== 'view' && folder !== id)).toEqual([]);
    expect(folders[0]).toBe(id);
  });

  test.each(calculatorIds)('a page that is sent with %s imports none of its code before it is asked for', (id) => {
    const text = drawnModuleText(calculatorById(id) as Calculator);
    // What is imported outright comes with the page; `KERF_WRITES_PAGES` is false in a browser.
    const outright = text.match(/^import .*/gm) ?? [];
    const [last, ...styles] = outright.toReversed();
    expect(last).toBe("import { pieceByPiece } from '@site/src/calculators/view/drawn.ts';");
    for (const one of styles) expect(one).toMatch(/^import '@site\/(src\/calculators\/view\/[\w-]+\.module\.css)';$/);
    const brought = styles.map((one) => /(\w+)\.module/.exec(one)?.[1]);
    const worked = answer(calculatorById(id) as Calculator, (calculatorById(id) as Calculator).example.metric);
    if (!worked.ok) throw new Error(JSON.stringify(worked.errors));
    expect(brought.includes('document'), 'style of documents').toBe((worked.value.result.documents ?? []).length > 0);
    expect(text.match(/require\(/g)).toHaveLength(2);
    expect(text).toMatch(/KERF_WRITES_PAGES \? \{[^}]*require[^}]*require[^}]*\} : undefined;/);
  });
});

describe.each(calculators.map((calculator) => [calculator.id, calculator] as const))('%s', (_, calculator) => {
  test('question and summary are a plain sentence each, short enough for a phone, without talk of methods', () => {
    const { question, summary } = calculator;
    expect(question.length).toBeLessThanOrEqual(100);
    expect(question).toMatch(/^[^.?!]+\?$/);
    expect(summary.length).toBeLessThanOrEqual(140);
    expect(summary).toMatch(/^[^.?!]+\.$/);
    // How it is worked out stands beside the answer, in its evidence.
    expect(summary).not.toMatch(/equation|handbook|fitted|Fick|conduction|clock|model|law of/i);
  });

  test('every field has a label and an example that it can read', () => {
    for (const [name, schema] of Object.entries(fieldsOf(calculator))) {
      const meta = fieldMeta(schema);
      expect(meta?.label, name).toBeTruthy();
      for (const example of meta?.examples ?? [])
        expect(schema.safeParse(example).success, `${name}: ${example}`).toBe(true);
      expect(meta?.examples.length, name).toBeGreaterThan(0);
    }
  });

  test.each(['metric', 'inch'] as const)('the worked case in %s units has an answer with its headline', (system) => {
    const outcome = answer(calculator, calculator.example[system]);
    if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
    const [headline] = Object.keys(calculator.figures);
    expect(Object.keys(outcome.value.result.figures)).toContain(headline);
  });

  test('every figure of the answer is declared, and every band says what it means', () => {
    const outcome = answer(calculator, calculator.example.metric);
    if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
    for (const [name, figure] of Object.entries(outcome.value.result.figures)) {
      expect(Object.keys(calculator.figures), name).toContain(name);
      if (figure.low !== undefined || figure.high !== undefined) expect(figure.band, name).toBeTruthy();
    }
  });

  test('every figure and column has a unit that is known, and nothing that is counted is a bare number', () => {
    const result = (system: 'metric' | 'inch') => {
      const outcome = answer(calculator, calculator.example[system]);
      return outcome.ok ? outcome.value.result : undefined;
    };
    const told = [result('metric'), result('inch')];
    const figures = told.flatMap((one) => Object.entries(one?.figures ?? {}));
    const columns = told.flatMap((one) =>
      (one?.tables ?? []).flatMap(({ id, columns }) =>
        columns.map((column) => [`${id}, ${column.id}`, column] as const),
      ),
    );
    const declared = Object.entries<FigureDeclaration>(calculator.figures);
    for (const [name, { unit }] of [...declared, ...figures, ...columns]) {
      if (unit === undefined) continue;
      expect(unitByCode(unit), `${name}: ${unit}`).toBeDefined();
      if (unit === '1') expect(ratios).toContain(`${calculator.id} ${name}`);
    }
  });

  test('alternatives name fields that exist', () => {
    for (const { sets } of calculator.alternatives ?? []) {
      for (const field of sets.flatMap((set) => set.fields)) expect(Object.keys(fieldsOf(calculator))).toContain(field);
    }
  });
});
