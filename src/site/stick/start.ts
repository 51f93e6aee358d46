import { placeScript } from './pages.ts';

/** What a stick cannot do, in the words of its first page. */
export const needsServer = [
  'one address for several people: a link that you copy or print here leads to the published site',
  'keeping the site in a browser and installing it, which a stick has no need of',
] as const;

/**
 * The page that is opened by a double click: it goes on to the first page, or says why it cannot.
 *
 * @param first the first page of the site, whose title it bears
 */
export function startPage(first: string): string {
  const title = /<title[^>]*>([^<]*)/.exec(first)?.[1] ?? '';
  return `<!doctype html>
<html lang="en">
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${title}</title>
<style>body{font:1.1rem/1.5 serif;max-width:38rem;margin:2rem auto;padding:0 1rem;color:#000;background:#fff}a{font-size:1.3rem;display:inline-block;padding:.5rem 0}</style>
<h1>${title}</h1>
<p><a href="site/index.html">Open the handbook</a></p>
<p>If it does not open, the zip was not unpacked: a double click shows what is in a zip, and opens nothing out of it. Unpack the whole of it into a
folder, on the stick or on the computer, then open <b>start.html</b> there.</p>
<p>Pages, links, search, calculators, methods, sheets and printing work here without a network. Drafts and cases stay in the browser of
this computer: save what matters as a file. What needs a server is</p>
<ul>
${needsServer.map((line) => `<li>${line}.</li>`).join('\n')}
</ul>
<script src="site/${placeScript}" data-only-to-see-whether-it-is-there></script>
<script>if (window.kerfStick) location.replace('site/index.html');</script>
</html>
`;
}
