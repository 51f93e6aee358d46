import { type Problem, schedule } from '../src/method/schedule/index.ts';
import { classBatch } from '../tests/method/schedule/class-batch.ts';
import { optima, readInstance } from '../tests/method/schedule/psplib.ts';

function line(name: string, problem: Problem, nodes: number, optimum?: number): string {
  const start = performance.now();
  const plan = schedule(problem, { nodes });
  const seconds = (performance.now() - start) / 1000;
  if (!plan.ok) return `${name.padEnd(20)} no plan found, ${seconds.toFixed(2)} s`;
  const gap = (100 * (plan.makespan - plan.lowerBound)) / plan.makespan;
  return [
    name.padEnd(20),
    (optimum === undefined ? '' : String(optimum)).padStart(8),
    String(plan.makespan).padStart(8),
    (plan.proved ? 'proved' : `gap ${gap.toFixed(1)} %`).padStart(12),
    String(plan.nodes).padStart(8),
    `${seconds.toFixed(2)} s`.padStart(10),
  ].join('');
}

/** Plan the published instances with 30 activities, and classes that make a board each in 25 steps. */
export function benchSchedule(): void {
  console.log('\nPlanning with limited resources, one run each');
  console.log(`${''.padEnd(20)}${['optimum', 'ours'].map((each) => each.padStart(8)).join('')}${'nodes'.padStart(20)}`);
  for (const [name, optimum] of Object.entries(optima)) console.log(line(name, readInstance(name), 150_000, optimum));
  for (const boards of [3, 6, 12]) console.log(line(`class of ${boards}`, classBatch(boards), 2000));
  const late = { ...classBatch(12), horizon: 15_000 };
  const start = performance.now();
  const plan = schedule(late, { nodes: 2000 });
  const found = plan.ok ? 'planned' : `${plan.why.constraints.length} things that no plan can keep`;
  console.log(`class of 12 in too little time: ${found}, ${((performance.now() - start) / 1000).toFixed(2)} s`);
}
