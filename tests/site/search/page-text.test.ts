import { expect, test } from 'vitest';
import { readPageText } from '../../../src/site/plugin/page-text.ts';

const page = `<!doctype html><html><head><meta name="description" content="Rags &amp; cans."><title>x</title></head><body>
<nav>Menu</nav><main><article><header><h1>Oily rags</h1></header><p>For <b>any</b>body.</p><script>bad()</script>
<h2 id="why">Why<a class="hash-link" href="#why">#</a></h2><p>They heat<br>up.</p><svg><title>A can</title><text>can</text></svg>
<button>Press</button><h3>No anchor</h3><table><tr id="word-tack"><td>tack</td><td>half cured, still sticky</td></tr></table>
<form><label>Width</label></form></article></main><footer>Foot</footer></body></html>`;

test('a built page is read by its headings, without what leads elsewhere, is pressed or drawn', () => {
  expect(readPageText(page)).toEqual({
    title: 'Oily rags',
    description: 'Rags & cans.',
    passages: [
      { anchor: '', heading: '', text: 'For anybody.' },
      { anchor: 'why', heading: 'Why', text: 'They heat up. No anchor' },
      { anchor: 'word-tack', heading: 'tack', text: 'half cured, still sticky' },
    ],
  });
});

test('a page without a main part has no text', () => {
  expect(readPageText('<body><p>Nothing</p></body>')).toEqual({
    title: '',
    description: '',
    passages: [{ anchor: '', heading: '', text: '' }],
  });
});
