import { expect, test } from 'vitest';
import { fieldWords } from '../../../src/site/bench/levels.ts';

test.each([
  [['steps', 'seal', 'after', 1], 'step “seal”, what it comes after: '],
  [['steps', 'seal', 'after', 1, 'least'], 'step “seal”, what it comes after, least: '],
  [['parameters', 'dayTemperature', 'default'], 'parameter “dayTemperature”: '],
  [
    ['steps', 'wait', 'calculations', 'clock', 'with', 'dayTemperature', 'from'],
    'step “wait”, calculation “clock”, dayTemperature: ',
  ],
  [['tools', 'planer', 'limits', 'width'], 'tool “planer”, limits, width: '],
  [['steps'], 'steps: '],
  [[], ''],
])('a fault at %j is told of in words', (path, words) => {
  expect(fieldWords({ level: 'error', path })).toBe(words);
});

test('what a rule finds names its place itself', () => {
  expect(fieldWords({ level: 'warn', path: ['steps', 'seal'] })).toBe('');
});
