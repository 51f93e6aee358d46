import Link from '@docusaurus/Link';
import useDocusaurusContext from '@docusaurus/useDocusaurusContext';
import { Page } from '../page/Page.tsx';
import { lookedAt, shorts } from './statement.ts';

const dayWords = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'long', year: 'numeric', timeZone: 'UTC' });

/** What was tried so that everybody can use the site, what falls short, what was not tried, and how to say that something is in the way. */
export default function AccessPage() {
  const { siteConfig } = useDocusaurusContext();
  return (
    <Page
      title="Access for everybody"
      description="What was tried so that everybody can read and use this site, with which tools and when; what falls short, what was not tried, and how to report a hindrance."
      width="text"
    >
      <h1>Access for everybody</h1>
      <p className="lead">
        {siteConfig.title} aims at the Web Content Accessibility Guidelines (WCAG) 2.2, level AA. No failure of them is
        known that was left, by the means below. No reader who depends on a screen reader has tried it yet, and nobody
        outside the project has judged it: it cannot be called conforming.
      </p>

      <h2 id="tried">What was tried</h2>
      <p>
        Last looked at as a whole on {dayWords.format(new Date(lookedAt.day))}, in Chromium {lookedAt.chromium}, driven
        by Playwright {lookedAt.playwright}. What is marked with a star is tried again at every change of the site.
      </p>
      <ul>
        <li>
          * Rules that a machine can check: axe-core {lookedAt.axe}, with its rules for WCAG 2.0 to 2.2, A and AA, on
          one page of each kind and every calculator, on a wide screen and at 360 px, in light and dark colours. Of long
          tables it looks at the first rows.
        </li>
        <li>
          * Every page: no error as it comes to life, one heading of the first level, a title of its own, no request to
          another place.
        </li>
        <li>
          Every page, by a crawl: links and the places within pages that they lead to, text for pictures, names of
          controls and of parts of the page as the browser hands them to a screen reader, the order of headings, no
          scrolling sideways at 320 px.
        </li>
        <li>
          * By keys alone: search, the list of woods and the comparison, the rows of a list in a calculator, the editor
          of the bench, the skip to the main part of the page, and that what has the focus shows it and is not hidden by
          what sticks to the edge of the screen. Where a button goes once it is pressed, the focus goes to what stands
          in its place.
        </li>
        <li>
          * On one page of each kind, letters of twice the usual size, and the width of 320 px that a zoom to 400 %
          leaves: nothing is cut and nothing scrolls sideways but tables, which scroll by themselves and can be reached
          by keys.
        </li>
        <li>
          Wider lines, words and letters (1.4.12); colours that the reader’s system forces; less motion; contrast of
          frames, placeholders, marks and the lines of charts, measured from what the browser draws.
        </li>
        <li>
          What a screen reader is handed of three pages (the first page, a calculator, a method), read line by line.
        </li>
        <li>* Without scripts: every page can be read, and a worked case stands where a calculator would be.</li>
        <li>
          * The sheets that the command line writes as PDF: nothing on them is outside their tags, and each drawing has
          words.
        </li>
      </ul>

      <h2 id="short">What falls short, or is allowed but may be in the way</h2>
      <dl>
        {shorts.map(({ criterion, where }) => (
          <div key={criterion}>
            <dt>{criterion}</dt>
            <dd className="small">{where}</dd>
          </div>
        ))}
      </dl>

      <h2 id="not-tried">What was not tried</h2>
      <ul>
        <li>A screen reader in use: NVDA, JAWS, VoiceOver, TalkBack and Orca.</li>
        <li>A phone or a tablet in the hand; voice control; a switch; a magnifier; a braille display.</li>
        <li>Browsers other than Chromium.</li>
        <li>
          The PDF files of sheets in a reader. Those that the command line writes have a title, a language, and tags:
          headings, lists, tables with their heads, drawings with a sentence that says what they show. Neither a reader
          nor a checker of PDF/UA has tried them. The same sheets stand as pages.
        </li>
        <li>The methods, shop records and batches that readers write themselves, beyond those of the site.</li>
      </ul>

      <h2 id="helps">What may help</h2>
      <ul>
        <li>The bench edits a method in a form too; nobody needs its text editor.</li>
        <li>In the text editor Tab leaves the text, as everywhere; its other keys stand beside it.</li>
        <li>A list in a calculator can be filled in rows, or as one text: “As text”.</li>
        <li>Each chart has its numbers in a table below it; each drawing has a sentence that says what it shows.</li>
        <li>Nothing has to be dragged, and nothing runs out of time.</li>
      </ul>

      <h2 id="report">Something is in the way</h2>
      <p>
        Tell whoever gave you this site, or its project where its files lie, which page it was, what you wanted to do,
        what happened, and what you read or hear the page with. A hindrance counts as a fault, like a wrong figure. For
        a wrong figure see <Link to="/reference/evidence#report">report a figure</Link>.
      </p>
    </Page>
  );
}
