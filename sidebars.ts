import type { SidebarsConfig } from '@docusaurus/plugin-content-docs';
import { howToOrder } from './src/site/how-to-order.ts';

/** The how-to pages by the stages of the work. Nothing folds away, so all of them are there without a script. */
const sidebars: SidebarsConfig = {
  howTo: [
    'index',
    ...howToOrder.flatMap(({ label, pages }) =>
      label === undefined ? [...pages] : [{ type: 'category' as const, label, collapsible: false, items: [...pages] }],
    ),
  ],
};

export default sidebars;
