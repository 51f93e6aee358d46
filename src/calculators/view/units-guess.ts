import { regionRule } from '../../model/quantity/region.ts';

/** Key under which the browser keeps the reader's units. */
export const storageKey = 'kerf-units';

/** Attribute of the page's root while the units are guessed: the guess, for the line that says so. */
export const guessAttribute = 'data-units-guess';

/** Attribute of the page's root with the system of the reader, for what is in every page as sent and shown to some. */
export const systemAttribute = 'data-units';

/**
 * What runs before the page is painted, as text for its head: it writes the reader's system on the root of the page and, where no choice is
 * kept, that it is a guess, so that what depends on them stands there from the first paint and nothing jumps. The rule of the regions is
 * handed over as data; what walks the languages is held to `systemOfRegion` by a test.
 */
export const guessScript = `(function (root, rule, key, system, guess) {
  var kept;
  try { kept = localStorage.getItem(key); } catch (forbidden) {}
  if (kept) { root.setAttribute(system, kept.split(' ')[0]); return; }
  var tags = navigator.languages || [], region;
  for (var at = 0; at < tags.length && !region; at++) {
    var found = new RegExp(rule.region, 'i').exec(tags[at].split(new RegExp(rule.extension, 'i'))[0]);
    region = found && found[1].toUpperCase();
  }
  var units = rule.inches.indexOf(region) < 0 ? 'metric' : 'inch';
  root.setAttribute(system, units);
  root.setAttribute(guess, units);
})(document.documentElement, ${[regionRule, storageKey, systemAttribute, guessAttribute].map((one) => JSON.stringify(one)).join(', ')})`;
