import { describe, expect, test } from 'vitest';
import { workMethod } from '../../../src/method/case/work.ts';
import { readMethod } from '../../../src/method/read.ts';
import { smallMethod } from './base.ts';

const does = 'does: Wipe on a thin coat.';

describe('a text of a method that cannot be shown is refused where it stands', () => {
  test.each([
    ['HTML', 'does: Wipe <b>on</b>.', '<b>', /mark of web pages/],
    ['HTML in a block of text', 'does: |\n      Wipe on.\n\n      - a thin <i>coat</i>', '<i>', /mark of web pages/],
    ['a link to a script', 'does: "Wipe \\"it\\" [on](javascript:x)."', '[on](javascript:x)', /cannot lead to/],
    ['a brace left open', 'does: Wipe {/makes/pieces on.', '{', /not closed/],
    ['a heading', 'does: "# Wipe"', '# Wipe', /heading/],
  ])('%s', (_what, written, part, message) => {
    const text = smallMethod.replace(does, written);
    const { record, problems } = readMethod(text, 'board.yaml');
    expect(record).toBeUndefined();
    const [problem] = problems;
    expect(problem?.message).toMatch(message);
    expect(problem?.field).toBe('steps.oil.does');
    const lines = text.split('\n');
    expect(lines[(problem?.line ?? 0) - 1]?.slice((problem?.column ?? 0) - 1)).toMatch(
      new RegExp(`^${part.replace(/[[\]{}().|]/g, '\\$&')}`),
    );
  });

  test('a title is a line: its marks stay as they are, and only its references are looked at', () => {
    const titled = (title: string) =>
      readMethod(smallMethod.replace('title: Oil the board', `title: "${title}"`), 'f').problems;
    expect(titled('# Oil *it*')).toEqual([]);
    expect(titled('Oil {it')).toHaveLength(1);
  });
});

test('a reference in a text that leads nowhere is told at its braces', async () => {
  const text = smallMethod.replace(does, 'does: >-\n      Wipe on\n      {/calculations/coats/figures/nothing} of it.');
  const read = readMethod(text, 'board.yaml');
  expect(read.problems).toEqual([]);
  const answer = await workMethod(read);
  const [problem] = answer.ok ? [] : answer.problems;
  const lines = text.split('\n');
  const { line = 0, column = 0, endColumn = 0 } = problem ?? {};
  expect(lines[line - 1]?.slice(column - 1, endColumn - 1)).toBe('{/calculations/coats/figures/nothing}');
});
