import { calculators } from '../../src/calculators/index.ts';
import { onwardOf } from '../../src/calculators/kit/carry.ts';
import { type CalculatorId, loadCalculator } from '../../src/calculators/registry.ts';
import { CalculatorView, type CalculatorViewProps } from '../../src/calculators/view/CalculatorView.tsx';
import type { Control } from '../../src/calculators/view/Field.tsx';
import { componentOf, pagePartsOf } from '../../src/calculators/view/page-parts.ts';
import type { Extra, Shown } from '../../src/calculators/view/shown.ts';

/** A component from one of the files that a page brings. */
async function componentIn<Component>(file: string): Promise<Component> {
  const module: Record<string, unknown> = await import(/* @vite-ignore */ `../../src/calculators/${file}`);
  const component = module[componentOf(file)];
  if (typeof component !== 'function') throw new Error(`${file} exports no ${componentOf(file)}`);
  return component as Component;
}

/** What the build hands to the page of a calculator. */
export async function shownOf(id: CalculatorId): Promise<Shown> {
  const calculator = await loadCalculator(id);
  const parts = pagePartsOf(calculator);
  const controls: Record<string, Control> = {};
  for (const [kind, file] of Object.entries(parts.controls)) controls[kind] = await componentIn(file);
  return {
    calculator,
    controls,
    onward: onwardOf(calculator, calculators),
    ...(parts.extra ? { extra: await componentIn<Extra>(parts.extra) } : {}),
  };
}

/** A calculator as its own page shows it. */
export async function viewOf(id: CalculatorId) {
  const shown = await shownOf(id);
  return (props: Omit<CalculatorViewProps, 'shown'>) => <CalculatorView shown={shown} prefix="" {...props} />;
}
