import type { ActId } from '../acts/index.ts';
import { textsOf } from '../case/references.ts';
import { remembered } from '../remembered.ts';
import { atStep } from './kit.ts';
import { rule } from './rule.ts';

/** Cloths that a finish may have wetted; ‘paper’ and ‘pads’ alone would be sandpaper and sanding pads too. */
const rags = /\b(?:rags?|cloths?|(?:oily|oiled|used|wet) (?:pads?|papers?|towels?|wipes?|t-?shirts?))\b/iu;

/** Where they lie in a mass or beside what burns. */
const places =
  /\b(?:in(?:to|side)?|on(?:to)?|under|behind|beside|over) (?:an?|the|your|our|his|her|their|any|some|that|this|one)? ?(?:[\p{L}-]+ ){0,2}?(?:bins?|trash|garbage|rubbish|dustbins?|wastebaskets?|waste ?paper baskets?|baskets?|heaps?|piles?|floors?|pockets?|drawers?|shelf|shelves|boxe?s?|cupboards?|corners?|bags?|sacks?|skips?|dumpsters?|stoves?|radiators?|heaters?|sawdust|shavings)\b/iu;

/** A verb that puts them there, or leaves them. */
const puts =
  /\b(?:throw(?:n|s)?|toss(?:ed)?|chuck(?:ed)?|put|drop(?:ped)?|leave|left|lay|lie|stuff(?:ed)?|go(?:es)?|pile[ds]?|heap(?:ed)?|keep|kept|stor(?:e|ed)|stow(?:ed)?|ball(?:ed)?|crumple[ds]?|place[ds]?|collect(?:ed)?|gather(?:ed)?|into|onto)\b/iu;

/** To heap, ball up or throw away says it without a place. */
const outright =
  /\b(?:throw|toss|chuck)(?:n|ed)? (?:away|out)\b|\b(?:throw|toss|chuck)(?:n|ed)?(?: \p{L}+){1,4} (?:away|out)\b(?! of)|\b(?:bin|trash|heap|pile|ball|crumple) (?:up )?(?:all |any )?(?:the |your )?(?:[\p{L}-]+ )?(?:rags?|cloths?)\b/iu;

/** Rags of a finish by name; of other rags only steps are asked that make such, so that a cloth for glue may lie where it likes. */
const ofFinish = /\b(?:oil(?:y|ed|s)?|wax(?:y|ed)?|varnish(?:ed)?|finish|solvent|spirits?)\b/iu;
const actsWithRags: readonly ActId[] = ['oil', 'wax', 'coat', 'clear-up', 'clean'];

/** Words that forbid it, that speak of the can, or of cloths that hold nothing. */
const minded =
  /\b(?:never|not|nor|don[’']t|cannot|instead of|rather than|avoid|forbidden|water|singly|one by one|lid|sealed|metal|rag can|(?:clean|dry|unused|fresh|new) (?:cotton )?(?:rags?|cloths?))\b/iu;
/** Those that forbid only what stands in the same clause: ‘until no oil stands on it, and …’ forbids nothing. */
const mindedHere = /\b(?:no|nothing|without)\b/iu;

/** Cloths that a step sends where they take fire. */
export const ragsThrownAway = rule({
  id: 'rags-thrown-away',
  level: 'stop',
  title: 'No text throws oily rags into bin, heap or pocket',
  looksAt:
    'Each sentence of the steps: whether it puts rags or cloths into a bin, heap, bag, pocket, drawer or corner, on the floor or near heat, and does not forbid it nor speak of water, of a lid, of hanging them singly or of clean ones. Rags that are not called oily or the like count in steps that oil, wax, coat, clean and clear up. Title, what to do and how to tell are read. What is said in other words it may miss.',
  why: 'Cloths wet with a drying oil take fire by themselves where they lie in a mass, hours later. A student does what the sheet says, and another finish may be in the can next time.',
  citation: { source: 'fpl-gtr-190', locator: 'Chapter 16', seen: 'source-text' },
  find: (worked) =>
    worked.steps.flatMap((step) =>
      textsOf(step.record).flatMap(([field, text]) => {
        if (field === 'wrong' || field === 'why') return [];
        // Most texts name no rags.
        return rags.test(text)
          ? thrownIn(`${step.act.id}\n${text}`).map((sentence) => ({
              ...atStep(step, field),
              message: `“${sentence}” puts rags where they can take fire by themselves.`,
              wayOut:
                'Let them go into a metal can with water and a tight lid, or hang singly outdoors, and say so in the text.',
            }))
          : [];
      }),
    ),
});

const sentences = (text: string): string[] =>
  text
    .split(/(?<=[.!?;])\s+|\n{2,}/u)
    .map((sentence) => sentence.replace(/\s+/gu, ' ').trim())
    .filter((sentence) => sentence !== '');

/** Sentences of a text that throw rags away; before it, in a line of its own, the act of the step. */
const thrownIn = remembered((actAndText) => {
  const end = actAndText.indexOf('\n');
  const act = actAndText.slice(0, end) as ActId;
  return sentences(actAndText.slice(end + 1)).filter((sentence) => throwsRags(sentence, act));
}, 200);

function throwsRags(sentence: string, act: ActId): boolean {
  if (!rags.test(sentence) || minded.test(sentence)) return false;
  if (!actsWithRags.includes(act) && !ofFinish.test(sentence)) return false;
  const said = sentence
    .split(/[,:]/u)
    .filter((clause) => !mindedHere.test(clause))
    .join(',');
  return rags.test(said) && (outright.test(said) || (places.test(said) && puts.test(said)));
}
