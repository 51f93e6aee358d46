import type { WorkedMethod, WorkedStep } from '../case/types.ts';
import type { ToolKind } from '../record/index.ts';
import { atStep, finishesOf, kindsAt, materialsOf, toolsOf, withArticle } from './kit.ts';
import { rule } from './rule.ts';

const hot: readonly ToolKind[] = ['heat-gun', 'torch'];

/** Vapour that takes fire, and a flame or hot air beside it. */
export const solventNearHeat = rule({
  id: 'solvent-near-heat',
  level: 'stop',
  title: 'No solvent is about where there is a flame or hot air',
  looksAt:
    'Steps with a torch or a heat gun, and whether the same step or one just before it uses a solvent, or a finish whose record warns of vapour that takes fire.',
  why: 'Vapour of alcohol and spirits runs along a bench to the flame, and it is still there when the liquid has gone.',
  neverExcepted: 'A flash of vapour burns face and hands before anybody can step back.',
  find: (worked) =>
    worked.steps.flatMap((step) => {
      const heat = toolsOf(worked, step).find(({ record }) => hot.includes(record.kind));
      if (!heat) return [];
      const before = new Set(step.after.map((link) => link.step));
      const near = [step, ...worked.steps.filter(({ id }) => before.has(id))];
      return near.flatMap((other) => {
        const vapour = vapourAt(worked, other);
        if (!vapour) return [];
        const where = other === step ? '' : ` just after “${other.record.title}”`;
        return [
          {
            ...atStep(step),
            message: `“${step.record.title}” has ${withArticle(heat.record.kind)} at hand${where}, with vapour of ${vapour} in the air.`,
            wayOut:
              'Do it without heat, or let all vapour go first, out of doors or across the room, in a step between.',
          },
        ];
      });
    }),
});

/** What gives off vapour that takes fire in a step, as it is listed. */
function vapourAt(worked: WorkedMethod, step: WorkedStep): string | undefined {
  const solvent = materialsOf(worked, step).find(({ record }) => record.kind === 'solvent');
  if (solvent) return solvent.record.what.toLowerCase();
  if (!kindsAt(worked, step).has('finish')) return undefined;
  return finishesOf(worked)
    .find(({ thing }) => thing.cautions.some((caution) => ['alcohol-flash', 'spirits-flash'].includes(caution)))
    ?.thing.name.toLowerCase();
}
