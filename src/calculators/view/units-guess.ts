/** Key under which the browser keeps the reader's units. */
export const storageKey = 'kerf-units';

/** Attribute of the page's root while the units are guessed: the guess, for the line that says so. */
export const guessAttribute = 'data-units-guess';

/** Attribute of the page's root with the system of the reader, for what is in every page as sent and shown to some. */
export const systemAttribute = 'data-units';

/**
 * What runs before the page is painted, as text for its head: it writes the reader's system on the root of the page and, where no choice is kept, that it is a guess, so that what
 * depends on them stands there from the first paint and nothing jumps.
 */
export const guessScript = `(function(){var d=document.documentElement,k;try{k=localStorage.getItem(${JSON.stringify(storageKey)})}catch(e){}if(k){d.setAttribute(${JSON.stringify(systemAttribute)},k.split(" ")[0]);return}var l=navigator.languages||[],r;for(var i=0;i<l.length&&!r;i++){var m=/^[a-z]{2,8}(?:-[a-z]{3})*(?:-[a-z]{4})?-([a-z]{2})(?:-|$)/i.exec(l[i].split(/-[a-z0-9]-/i)[0]);r=m&&m[1].toUpperCase()}var u=r==="US"||r==="LR"||r==="MM"?"inch":"metric";d.setAttribute(${JSON.stringify(systemAttribute)},u);d.setAttribute(${JSON.stringify(guessAttribute)},u)})()`;
