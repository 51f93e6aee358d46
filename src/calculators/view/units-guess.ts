/** Key under which the browser keeps the reader's units. */
export const storageKey = 'kerf-units';

/** Attribute of the page's root while the units are guessed: the guess, for the line that says so. */
export const guessAttribute = 'data-units-guess';

/**
 * What runs before the page is painted, as text for its head: where no choice is kept it writes the guess on the root of the page, so that the line which says
 * so stands there from the first paint and nothing jumps.
 */
export const guessScript = `(function(){try{if(localStorage.getItem(${JSON.stringify(storageKey)})!==null)return}catch(e){return}var l=navigator.languages||[],r;for(var i=0;i<l.length&&!r;i++){var m=/^[a-z]{2,8}(?:-[a-z]{3})*(?:-[a-z]{4})?-([a-z]{2})(?:-|$)/i.exec(l[i].split(/-[a-z0-9]-/i)[0]);r=m&&m[1].toUpperCase()}document.documentElement.setAttribute(${JSON.stringify(guessAttribute)},r==="US"||r==="LR"||r==="MM"?"inch":"metric")})()`;
