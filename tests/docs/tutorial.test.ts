import { expect, test } from 'vitest';
import { problemsOf } from '../../src/method/edit/index.ts';
import { starterMethod } from '../../src/method/record/starter.ts';
import { defaultUnits, inReaderUnits } from '../../src/model/quantity/index.ts';
import { type Told, tutorial } from './tutorial.ts';

/** The text after an edit; what is told to be changed must stand there once, or a reader would not know where. */
function edited(text: string, told: Told): string {
  if (told.do !== 'change' && told.do !== 'add') return text;
  const sought = told.do === 'change' ? told.from : told.under;
  expect(text.split(sought)).toHaveLength(2);
  return told.do === 'change' ? text.replace(sought, told.into) : text.replace(sought, `${sought}\n${told.block}`);
}

test('each change of the tutorial fits the small method, and each message stands there as it is quoted', async () => {
  let text = starterMethod;
  let read = 0;
  for (const told of tutorial()) {
    text = edited(text, told);
    const problems = await problemsOf(text, 'bread-board.yaml');
    if (told.do === 'press') {
      // The mend that a message offers.
      const fix = problems.flatMap(({ fixes }) => fixes).find(({ title }) => title === told.name)?.splice;
      if (fix) text = text.slice(0, fix.from) + fix.insert + text.slice(fix.to);
    }
    if (told.do === 'read' && told.where === 'below the buttons') expect(problems).toEqual([]);
    if (told.do === 'read' && told.where === 'in the list') {
      const messages = problems.map(({ message }) => inReaderUnits(message, defaultUnits)).join('\n');
      expect(messages).toContain(told.words);
      read += 1;
    }
  }
  expect(read).toBe(3);
  expect(text).toContain('title: Bread board for the fair');
  expect(await problemsOf(text, 'bread-board.yaml')).toEqual([]);
});
