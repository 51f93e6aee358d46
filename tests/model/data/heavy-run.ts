import { readYaml } from '../../../src/model/data/yaml.ts';
import { longestYaml } from '../../../src/model/data/yaml-guard.ts';
import { heavyTexts } from './hostile.ts';

// Run as a process of its own, which the test ends where a text never does: a parser that meets a second deep text ends its process.
for (const [name, make] of Object.entries(heavyTexts)) {
  for (const length of [longestYaml, 10_000_000]) {
    const { problems } = readYaml(make(length), 'heavy.yaml');
    process.stdout.write(`${JSON.stringify({ name, length, problems: problems.length })}\n`);
  }
}
