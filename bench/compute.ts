import { execFileSync } from 'node:child_process';
import { calculators } from '../src/calculators/index.ts';
import { answer } from '../src/calculators/kit/answer.ts';

/** Median time of a call, in milliseconds, over many calls after a warm-up. */
export function median(work: () => unknown, { warm = 200, runs = 1000 } = {}): number {
  for (let i = 0; i < warm; i++) work();
  const times: number[] = [];
  for (let i = 0; i < runs; i++) {
    const start = performance.now();
    work();
    times.push(performance.now() - start);
  }
  times.sort((a, b) => a - b);
  return times[Math.floor(times.length / 2)] ?? 0;
}

/**
 * Time every calculator on its worked case, and as a ratio to writing its own answer as JSON and reading it back:
 * a yardstick of the machine that grows with the answer.
 */
export function benchCompute(): void {
  console.log('Calculators on their worked case, median of 1,000 runs in Node');
  console.log(`${''.padEnd(24)}     ms   ratio to a JSON round trip of the answer`);
  for (const calculator of calculators) {
    const run = () => answer(calculator, calculator.example.metric);
    const outcome = run();
    const time = median(run);
    const yardstick = median(() => JSON.parse(JSON.stringify(outcome)));
    console.log(`${calculator.id.padEnd(24)}${time.toFixed(3).padStart(7)}   ${(time / yardstick).toFixed(2)}`);
  }
}

/** Time the command line from the shell, and as a ratio to starting Node with nothing to do. */
export function benchStart(): void {
  const inputs = '{"temperature":"20 °C","relativeHumidity":"50 %"}';
  const start = (args: readonly string[]) => () => execFileSync(process.execPath, args, { stdio: 'ignore' });
  const runs = { warm: 2, runs: 15 };
  const empty = median(start(['-e', '0']), runs);
  const kerf = median(start(['scripts/kerf.mjs', 'calc', 'equilibrium-moisture', '--json', inputs]), runs);
  console.log('\nThe command line, once bundled, median of 15 starts');
  console.log(`${kerf.toFixed(0)} ms; an empty Node ${empty.toFixed(0)} ms: ratio ${(kerf / empty).toFixed(2)}`);
}
