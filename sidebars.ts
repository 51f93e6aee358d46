import type { SidebarsConfig } from '@docusaurus/plugin-content-docs';
import { type HowToGroup, howToOrder } from './src/site/how-to-order.ts';

type Items = Extract<SidebarsConfig[string], unknown[]>;

/** A group as the sidebar has it. Nothing folds away, so all of it is there without a script. */
function itemsOf({ label, pages }: HowToGroup): Items {
  if (label === undefined) return [...pages];
  return [{ type: 'category', label, collapsible: false, items: [...pages] }];
}

/** The how-to pages by the stages of the work. */
const sidebars: SidebarsConfig = { howTo: ['index', ...howToOrder.flatMap<Items[number]>(itemsOf)] };

export default sidebars;
