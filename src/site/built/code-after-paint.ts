import type { Step } from './finish.ts';
import { rewritePages, said, type Tag, tagsOf } from './markup.ts';

/**
 * A page is read before it is used. A browser that has its text, its style and its code at once runs the code first, half a second of it on a
 * cheap phone, and shows an empty page meanwhile. So the code of a page waits in a template until its text has been painted.
 */
export const codeAfterPaint: Step = {
  does: 'Code after the first paint',
  run: (folder) => `${rewritePages(folder, withCodeAfterPaint)} pages are painted first`,
};

const id = 'code-after-paint';

/**
 * Puts what the template holds into the page: once all of the page has been read and painted, at once in a tab that nobody sees, since that is
 * never painted, and after some seconds in any case. Copies of scripts keep the address that the page as sent gave them, so that no policy of
 * trusted types has to be asked; they run in their order.
 */
const bringer = [
  '(()=>{',
  `let code=document.getElementById("${id}");`,
  'const bring=()=>{',
  'if(!code)return;',
  'const copies=document.importNode(code.content,true);',
  'code=null;',
  'for(const each of copies.children)each.async=false;',
  'document.head.append(copies)',
  '},',
  'soon=()=>{',
  'if(document.hidden)return bring();',
  'requestAnimationFrame(()=>setTimeout(bring));',
  'setTimeout(bring,4000)',
  '};',
  'document.readyState==="loading"?addEventListener("DOMContentLoaded",soon):soon()',
  '})()',
].join('');

/**
 * The page with its deferred scripts in a template, and what brings them once it has been painted. A page that has it already, or has no such
 * script, stays as it is.
 */
export function withCodeAfterPaint(html: string): string {
  const scripts = tagsOf(html).filter(
    (tag) => tag.name === 'script' && said(tag, 'src') !== undefined && said(tag, 'defer') !== undefined,
  );
  const [first] = scripts;
  if (!first || html.includes(`id=${id}`)) return html;
  let page = html;
  const held = scripts.map((tag) => `${withoutDefer(html, tag)}</script>`);
  for (const { from, to } of scripts.toReversed()) {
    const end = html.indexOf('</script>', to) + '</script>'.length;
    page = page.slice(0, from) + page.slice(end);
  }
  const place = first.from;
  return `${page.slice(0, place)}<template id=${id}>${held.join('')}</template><script>${bringer}</script>${page.slice(place)}`;
}

/** A start tag as written, but for the word that lets it wait: the template does. */
function withoutDefer(html: string, { from, to, attributes }: Tag): string {
  const defer = attributes.find(({ name }) => name === 'defer');
  if (!defer) return html.slice(from, to);
  return `${html.slice(from, defer.from).trimEnd()}${html.slice(defer.to, to)}`;
}
