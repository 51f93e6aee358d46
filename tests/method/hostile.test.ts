import { expect, test } from 'vitest';
import { readMethod } from '../../src/method/read.ts';
import { hostileTexts } from '../model/data/hostile.ts';
import { smallMethod } from './case/base.ts';

const texts = hostileTexts(smallMethod, 20261129, 8);

test('a method spoilt in more than 300 ways is refused with its place and a way out, or read honestly', () => {
  expect(texts.length).toBeGreaterThan(300);
  const { record } = readMethod(smallMethod, 'good.yaml');
  const wrong = texts.flatMap(({ name, text, expects }): string[] => {
    const read = readMethod(text, 'bad.yaml');
    const refused = read.record === undefined;
    const lines = text.split('\n');
    return [
      ...(refused === read.problems.length > 0 ? [] : [`${name}: neither a method nor a problem`]),
      ...(expects === 'refused' && !refused ? [`${name}: read as if nothing were wrong`] : []),
      ...(expects === 'same' && JSON.stringify(read.record) !== JSON.stringify(record)
        ? [`${name}: read as another`]
        : []),
      ...read.problems
        .filter(({ line, column }) => column < 1 || column > (lines[line - 1]?.length ?? -1) + 1)
        .map(({ line, column }) => `${name}: ${line}:${column} is no place of the text`),
      ...read.problems
        .filter(({ message }) => !/[.?]$/.test(message) || /zod|invalid|Invalid input|\[object/.test(message))
        .map(({ message }) => `${name}: ${message}`),
    ];
  });
  expect(wrong).toEqual([]);
  expect(({} as { polluted?: unknown }).polluted).toBeUndefined();
});
