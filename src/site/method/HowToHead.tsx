import Head from '@docusaurus/Head';
import type { MethodPage } from '../../method/page/types.ts';
import { howToText } from './how-to-data.ts';

/** A method for programs. The page as sent holds it: a browser may set no text of a script. */
export const HowToHead = ({ page, address }: { page: MethodPage; address: string }) => (
  <Head>
    <script type="application/ld+json">{howToText(page, address)}</script>
  </Head>
);
