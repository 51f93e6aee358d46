import { describe, expect, test } from 'vitest';
import { howTos } from './how-to.ts';
import {
  allMethodNumbers,
  isAmong,
  isNamedSize,
  type MethodNumbers,
  numbersIn,
  passagesOf,
  type Said,
  type SaidSize,
  sizesIn,
} from './numbers.ts';
import { reviewed } from './numbers-reviewed.ts';

// One tray goes through all pages. Each number of a page is sorted: it is quoted of a method (then it is no number of the page's own), it is one of
// the case or of a second case that its sentence names, it is reviewed as a general one, or it stands in a sentence that does not speak of the case.

const methods = await allMethodNumbers();
const method = (id: string): MethodNumbers => {
  const found = methods.get(id);
  if (!found) throw new Error(`no method ${id}`);
  return found;
};

/** What speaks of the case. */
const ofTheCase = /\b(?:class|twelve|trays?|channels?|students?)\b/i;

/** The words by which a sentence names a second case. */
const secondCases: readonly (readonly [words: RegExp, id: string])[] = [
  [/\b(?:ash|salvaged|rack)\b/i, 'salvaged-ash-amber'],
  [/\b(?:cherry|flood)/i, 'wide-cherry-flood'],
  [/\b(?:panel|staves?|moss)\b/i, 'panel-moss-channel'],
  [/\bfirst tray\b|plain maple/i, 'first-tray'],
  [/\b(?:paddle|template|handle)\b/i, 'making-a-template'],
];

const namedIn = (about: string): MethodNumbers[] => [
  method('class-of-twelve'),
  ...secondCases.filter(([words]) => words.test(about)).map(([, id]) => method(id)),
];

const strangeNumber = (said: Said, about: string): boolean =>
  ofTheCase.test(about) && !namedIn(about).some((known) => isAmong(said, known));
const strangeSize = (said: SaidSize, about: string): boolean =>
  !namedIn(about).some((known) => isNamedSize(said, known));

/** Pages that speak of nothing but the case. */
const casePages: readonly string[] = ['one-tray', 'lesson-plans'];

/** Every number of a text that is a second value for something of the case, unless the page's list allows it. */
function strangersIn(source: string, allowed: readonly string[] = [], page = ''): string[] {
  return passagesOf({ source }).flatMap(({ sentence, about: words }) => {
    const about = casePages.includes(page) ? `The class: ${words}` : words;
    return [
      ...numbersIn(sentence).filter((said) => strangeNumber(said, about)),
      ...sizesIn(sentence).filter((said) => strangeSize(said, about)),
    ]
      .filter(({ text }) => !allowed.includes(text))
      .map(({ text }) => `${text}, in “${sentence.slice(0, 120)}”`);
  });
}

test.each(howTos)('$name says of the case what its method says', ({ name, source }) => {
  // Quote the figure, <Tray at="/parameters/length" />; or, where it is no number of the case, add it to numbers-reviewed.ts under the page.
  expect(strangersIn(source, reviewed[name], name)).toEqual([]);
});

describe('a second value is found', () => {
  test.each([
    ['another tray', 'The workshop’s tray, 610 × 229 mm.', '610 × 229 mm'],
    ['another tray, in inches', 'Cut it 24 × 9 × 3/4 in.', '24 × 9 × 3/4 in'],
    ['another channel', 'The channel is 480 mm long.', '480 mm'],
    ['another width of it', 'Amber fills the channel, 22 mm wide.', '22 mm'],
    ['another count of boards', 'The class buys five boards.', '5 boards'],
    ['other grams', 'The twelve trays take 841 g of resin.', '841 g'],
    ['other days', 'The tray waits 9 days for its oil.', '9 days'],
    ['in a row of a table', '| resin for the class | 953 g |', '953 g'],
    ['in the next sentence', 'The class makes a tray. It is 500 mm long.', '500 mm'],
    ['weeks', 'The tray waits 9 weeks for its oil.', '9 weeks'],
    ['written out', 'Five sanders stand there for the class.', '5 sanders'],
    ['evenings', 'The class meets on seven evenings.', '7 evenings'],
    ['cloths', 'Count 30 cloths out for the class.', '30 cloths'],
    ['turns', 'The class’s bit turns at 20 000 turns.', '20 000 turns'],
  ])('%s', (_, sentence, text) => {
    expect(strangersIn(sentence).map((each) => each.split(', in “')[0])).toEqual([text]);
  });

  test.each([
    'The tray is 420 × 220 × 19 mm, its channel 280 × 18 × 6 mm.',
    'The tray is 420 × 220 mm.',
    'The class buys four boards, 8 ft × 9 in.',
    'The pour of the class waits 12 d.',
    'The tray is <Tray at="/parameters/length" /> long.',
    'Oil soaks for 45 min in any wood.',
    'A blank of the ash tray is 400 × 215 mm.',
    'The class has four sanders, two router tables and four plunge routers; it meets on six Tuesdays.',
    'The class’s tray waits a while.\n\nAny other board is 500 mm long.',
  ])('%s: nothing is found', (sentence) => {
    expect(strangersIn(sentence)).toEqual([]);
  });
});
