/*
 * Promises in somebody’s own words: what nobody has shown of a board, in whatever spelling. A text is brought to plain words first
 * (lower case, hyphens and marks as spaces), so that ‘Food-Safe’, ‘foodsafe’ and ‘safe for food’ are one.
 */

/** What a promise speaks of, and what it says of it. The two may stand on either side of each other, a few small words apart. */
const safe =
  '(?:safe(?:ly|ty)?|proof|resistan(?:t|ce)|secure|harmless|ok(?:ay)?|tested|grade[ds]?|quality|rated|suitable|fit|friendly|ready)';
const of =
  '(?: (?:for|to|in|with|from|of|by|and|or|the|a|all|any|use|direct|your|every|is|are|it|this|board|can|go|goes|be|put|washed|wash|100|percent|fully|totally|completely)){0,5} ';
const thing =
  '(?:food|foods|foodstuffs?|dish ?washers?|micro ?waves?|ovens?|heat|hot (?:pans?|pots?|dishes)|children|child|kids?|baby|babies|toddlers?|pets?|allerg(?:y|ies|ics)|boiling water|scratch(?:es)?|stains?|knife|knives)';
const agencies = '(?:fda|usda|nsf|efsa|eu|lfgb|tuv|bfr|health department)';
const sanction =
  '(?:approved?|approval|certifi(?:ed|es|cates?|cation)|complian(?:t|ce)|compl(?:y|ies)|listed|registered|accepted|cleared|tested|grade|rated|meets?|conforms?|passed)';
const freeOf =
  '(?:bpa|bpas|bisphenols?|bisphenol a|toxins?|toxics?|chemicals?|chemical|voc|vocs|allergens?|allergen|allergy|solvents?|germs?|germ|bacteria|gluten|nuts?|plastics?|plastici[sz]ers?|softeners?|formaldehyde|lead|phthalates?|poison)';
const microbe =
  '(?:bacteri(?:a|um|al|cidal|ostatic)|microb(?:e|es|ial)|germs?|germicidal|septic|fungal|viral|mou?ld|viruses)';

const patterns: readonly RegExp[] = [
  new RegExp(`\\b${thing}${of}?(?: )?${safe}\\b`),
  new RegExp(`\\b${safe}${of}${thing}\\b`),
  // A use that is named as if it were cleared: ‘for food contact’, ‘glass and fork’.
  /\b(?:direct )?food (?:contact|use|surface)s?\b/,
  /\b(?:in |into |for )?(?:direct )?contact (?:with|to) (?:any )?foods?\b/,
  /\bcontact foods?\b|\bfoods? contacts?\b/,
  /\b(?:glass|cup|goblet|wine ?glass) (?:and|&|n) fork\b|\bfork (?:and|&|n) (?:glass|cup|goblet)\b/,
  new RegExp(`\\b${agencies}\\b.{0,24}\\b${sanction}\\b|\\b${sanction}\\b.{0,24}\\b${agencies}\\b`),
  /\bfda\b|\bnsf\b|\bce mark(?:ed|ing)?\b/,
  /\b(?:approved|certified|certificate|officially|lab(?:oratory)? tested|medically tested)\b/,
  /\b(?:non|not|un|anti|never) ?toxic\b|\bnontoxic\b|\btoxi(?:n|c) free\b|\bno tox(?:ins?|ics?)\b|\bharmless\b|\bedible\b|\bunbedenklich\b/,
  new RegExp(
    `\\b${freeOf} ?free\\b|\\bfree (?:of|from)(?: any| all)? ${freeOf}\\b|\\b(?:no|zero|without|contains? no|0)(?: any)? ${freeOf}\\b|\\b(?:no|zero|without|neither)(?: any)?(?: \\w+){1,3} n?or ${freeOf}\\b`,
  ),
  /\bhypo ?allergenic\b|\banti ?allergenic\b|\bnon ?allergenic\b|\ballerg(?:y|en) (?:safe|tested|friendly)\b/,
  new RegExp(
    `\\banti ?${microbe}\\b|\\b${microbe} (?:resistant|proof|killing|free)\\b|\\bkills?(?: off| all| 99.{0,8})? ${microbe}\\b|\\bself (?:clean|disinfect|sanitis|sanitiz)(?:s|es|ing)?\\b`,
  ),
  // Germs that are said to find no home, and a board that serves as the plate.
  /\b(?:germs?|bacteria|microbes?|viruses|fungi|mou?ld) (?:do not|does not|dont|doesnt|can ?not|cant|will not|wont|never) (?:grows?|lives?|survives?|thrives?|breeds?|sticks?|settles?|spreads?)\b/,
  /\beat(?:en|ing)?(?: your \w+| food| bread| cheese| \w+ly| straight| right| direct)* (?:off|from) (?:it|this|that|the (?:board|resin|wood|inlay|surface))\b/,
  /\b(?:hygienic(?:ally)?|hygiene|sanitary|sterile|steril(?:ised|ized)|aseptic|germicidal|bactericidal|disinfect(?:ed|ing|s)?)\b/,
  /\b(?:water|heat|knife|scratch|stain|fire|child|baby|break) ?proof\b|\bwaterproof\b|\bunbreakable\b|\bindestructible\b/,
  /\b(?:will|does|can) (?:never|not) (?:warp|crack|split|stain|fade|yellow)\b|\bwont (?:warp|crack|split)\b|\bnever (?:warps?|cracks?|splits?)\b/,
  /\b(?:life ?time|lifelong) (?:guarantee|warranty)\b|\bguarantee[ds]? for life\b/,
];

const everywhere = patterns.map((pattern) => new RegExp(pattern, 'g'));

/** Whether any of them is met at all: most sentences promise nothing, and one question is many times as quick as twenty. */
const anywhere = new RegExp(patterns.map(({ source }) => source).join('|'));

/** What is left of a text when spelling, marks and joined words are made plain. Each letter keeps its place, so that the words can be quoted. */
function plain(text: string): string {
  return text
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[’'`´]/g, '')
    .replace(/[^\p{L}\p{N}&%]+/gu, ' ')
    .replace(
      /\b(food|dishwasher|microwave|oven|child|bpa|germ|allergen|toxin|chemical|heat)(safe|proof|grade|free|friendly|contact)\b/g,
      '$1 $2',
    )
    .trim();
}

/** Words after which a promise is none: they deny it, ask about it or warn of it. */
const denied = /\b(?:not|never|no|isnt|arent|nothing|nobody|dont|do not|cannot|without|un|keep|avoid)(?: \w+){0,2} $/;
const keptAway = /^(?:no|not|never|keep|avoid)\b/;

/** Where a text promises something: its words, and from where to where they stand. */
interface Place {
  start: number;
  end: number;
}

/** Every place at which one of the patterns is met, the first and longest first; those that overlap an earlier one are left out. */
function placesIn(words: string): Place[] {
  if (!anywhere.test(words)) return [];
  const met = everywhere.flatMap((pattern) =>
    [...words.matchAll(pattern)].map(({ index, 0: { length } }) => ({ start: index, end: index + length })),
  );
  met.sort((one, other) => one.start - other.start || other.end - one.end);
  const kept: Place[] = [];
  for (const place of met) {
    if (isDenied(words, place, kept) || isInstruction(words, place)) continue;
    if (place.start >= (kept.at(-1)?.end ?? 0)) kept.push(place);
  }
  return kept;
}

/** ‘No solvent … on the resin’, ‘no solvents or scouring pads’: what somebody is told to keep off the board, and none of what it is free of. */
const applied = new RegExp(`^(?:no|without)(?: any)?(?: (?!${freeOf}\\b)\\w+)* (?:solvents?|chemicals?)$`);
const ontoIt = /^(?: (?!in\b)\w+){0,7} on (?:the|it|this|your|any)\b/;
const scouring = /\b(?:scour\w*|scrubbing|removers?|steel wool|bleach)\b/;
const cleaning = /(?:^| )(?:clean|wash|wipe) (?:\w+ ){0,2}$/;

/** Whether words of a promise tell a buyer what not to use. */
function isInstruction(words: string, { start, end }: Place): boolean {
  if (!applied.test(words.slice(start, end))) return false;
  const after = words.slice(end);
  return ontoIt.test(after) || scouring.test(after) || cleaning.test(words.slice(0, start));
}

/** Whether the words before a promise make it none. A ‘no’ that is itself a promise (‘no BPA, dishwasher proof’) denies nothing. */
function isDenied(words: string, { start, end }: Place, promised: readonly Place[]): boolean {
  if (keptAway.test(words.slice(start, end))) return false;
  const from = promised.at(-1)?.end ?? 0;
  return denied.test(words.slice(Math.min(from, start), start));
}

/**
 * Every promise that a text makes, in plain words and each once; empty where it makes none that is looked for. It looks for what is often
 * said of boards and has not been shown of one; a promise in words of one’s own it may miss.
 */
export function promisesIn(text: string): readonly string[] {
  // Each sentence for itself: what one denies, the next may promise.
  const all = text.split(/[.!?;]+(?:\s|$)/).flatMap((sentence) => {
    const words = plain(sentence);
    return placesIn(words).map(({ start, end }) => words.slice(start, end).trim());
  });
  return [...new Set(all)];
}
