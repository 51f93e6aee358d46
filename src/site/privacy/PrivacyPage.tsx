import useBaseUrl from '@docusaurus/useBaseUrl';
import { NeedsScripts } from '../page/NeedsScripts.tsx';
import { Page } from '../page/Page.tsx';
import { KeptNow } from './KeptNow.tsx';

/** What the site knows of its readers, which is nothing; what their browser keeps for them; and how to be rid of it. */
export default function PrivacyPage() {
  const licences = useBaseUrl('/THIRD-PARTY-LICENCES.txt');
  return (
    <Page
      title="Privacy"
      description="No cookie, no tracking, no request to another place. What this browser keeps of your work, how much it is, and how to take it away."
      width="text"
    >
      <h1>Privacy</h1>
      <p className="lead">
        The site sets no cookie, counts no visits and asks no other place for anything. What you enter stays in this
        browser and is sent nowhere.
      </p>
      <ul>
        <li>
          <strong>No cookie and no tracking.</strong> Nothing of the site tells who you are, and nothing is measured of
          what you do.
        </li>
        <li>
          <strong>No other place.</strong> Pages, fonts, pictures and programs come from this site alone. Each page says
          so in its own policy, by which your browser refuses everything else.
        </li>
        <li>
          <strong>What you type</strong> is worked out in your browser. It stands in the address of the page too, so
          that you can hand a case on: whoever gets that address sees your numbers, and the host of the site may note it
          in its log as it is opened. What stands behind a # in an address, as a method that is handed on does, reaches
          no host.
        </li>
        <li>
          <strong>The host</strong> that serves these files sees what every host sees: the network address of your
          machine, and which files it asks for. Ask whoever runs this site what they keep of that.
        </li>
        <li>
          <strong>Links to sources</strong> lead to other sites, which have their own rules. They are not told from
          which page you come, where the host sends the headers that come with the site.
        </li>
      </ul>
      <h2 id="kept">Kept in this browser now</h2>
      <NeedsScripts instead="Scripts are off: the site keeps nothing while they are. To take away what it kept before, clear the data of this site in the settings of your browser.">
        <KeptNow />
      </NeedsScripts>
      <h2 id="works-of-others">Works of others</h2>
      <p>
        The site is made with the free works of many. <a href={licences}>Their licences</a> go with it.
      </p>
    </Page>
  );
}
