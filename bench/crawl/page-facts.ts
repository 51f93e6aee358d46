/** What a page says of itself, read within it. Runs in the browser: it may use nothing from outside its own body. */

export interface PageFacts {
  title: string;
  lang: string;
  /** Ids and names that an address may point to. */
  ids: string[];
  duplicateIds: string[];
  /** Links as written in the page, resolved, each once, with the words of the first that has it. */
  links: { href: string; text: string }[];
  images: string[];
  drawings: string[];
  headings: string[];
  /** Pixels that the page can be scrolled sideways. */
  sideways: number;
  /** What reaches beyond the right edge and is not within a box that scrolls. */
  wide: string[];
}

export function pageFacts(): PageFacts {
  const short = (element: Element) => element.outerHTML.replace(/\s+/g, ' ').slice(0, 120);
  const ids = [...document.querySelectorAll('[id]')].map((element) => element.id);
  const seen = new Set<string>();
  const duplicateIds = [...new Set(ids.filter((id) => seen.has(id) || !seen.add(id)))];
  const links = new Map<string, string>();
  for (const anchor of document.querySelectorAll<HTMLAnchorElement>('a[href]'))
    if (!links.has(anchor.href)) links.set(anchor.href, (anchor.textContent ?? '').trim().slice(0, 60));

  const images = [...document.querySelectorAll('img, area, input[type=image]')]
    .filter((image) => !image.hasAttribute('alt'))
    .map(short);
  // A drawing is named, or it is kept from those who hear the page, or what holds it is named in its place.
  const drawings = [...document.querySelectorAll('svg')]
    .filter((drawing) => {
      if (drawing.closest('[aria-hidden=true], [role=presentation], [role=none]')) return false;
      // A store of signs for other drawings is itself never drawn.
      if (drawing.style.display === 'none' || getComputedStyle(drawing).display === 'none') return false;
      const named = (element: Element) =>
        element.hasAttribute('aria-label') ||
        (element.getAttribute('aria-labelledby') ?? '').split(' ').some((id) => id && document.getElementById(id));
      if (named(drawing) || drawing.querySelector(':scope > title')) return false;
      const holder = drawing.closest('[role=img]');
      return !(holder && named(holder));
    })
    .map(short);

  const headings: string[] = [];
  let before = 0;
  const shown = [...document.querySelectorAll('h1, h2, h3, h4, h5, h6')];
  const firsts = shown.filter((heading) => heading.tagName === 'H1').length;
  if (firsts !== 1) headings.push(`${firsts} headings of the first level`);
  for (const heading of shown) {
    const level = Number(heading.tagName[1]);
    if (level > before + 1) headings.push(`h${before} → h${level}: ${(heading.textContent ?? '').slice(0, 50)}`);
    if (!(heading.textContent ?? '').trim()) headings.push(`an empty heading: ${short(heading)}`);
    before = level;
  }

  const { scrollWidth, clientWidth } = document.documentElement;
  const over = scrollWidth - clientWidth;
  const wide =
    over > 0
      ? [...document.querySelectorAll('body *')]
          .filter((element) => {
            const box = element.getBoundingClientRect();
            if (box.width === 0 || box.right <= clientWidth + 1) return false;
            for (let holder = element.parentElement; holder; holder = holder.parentElement)
              if (getComputedStyle(holder).overflowX !== 'visible') return false;
            return true;
          })
          .slice(0, 3)
          .map(short)
      : [];
  return {
    title: document.title,
    lang: document.documentElement.lang,
    ids: [...ids, ...[...document.querySelectorAll('a[name]')].map((anchor) => anchor.getAttribute('name') ?? '')],
    duplicateIds,
    links: [...links].map(([href, text]) => ({ href, text })),
    images,
    drawings,
    headings,
    sideways: over,
    wide,
  };
}
