/** How-to pages that belong together, in the order in which the work goes; `pages` are names of files in docs/. */
export interface HowToGroup {
  /** Absent where the pages stand by themselves. */
  label?: string;
  pages: readonly string[];
}

/** Where every how-to page stands, in the sidebar and on the first page. The page that lists them is not in it. */
export const howToOrder: readonly HowToGroup[] = [
  { label: 'Begin here', pages: ['one-tray'] },
  // Before the work, since whoever looks for it is in a hurry.
  {
    label: 'Safety with resin and finishes',
    pages: [
      'resin-and-hardeners',
      'epoxy-only',
      'heat-build-up-in-resin',
      'dust-from-cured-resin',
      'resin-waste',
      'solvents',
      'oily-rags',
    ],
  },
  { label: 'Choose the wood', pages: ['choosing-a-wood', 'buying-and-ordering-stock', 'salvaged-stock'] },
  {
    label: 'Prepare the stock',
    pages: [
      'moisture-and-acclimatising',
      'seasonal-movement',
      'wide-boards-panels-and-inlays',
      'flattening-a-wide-board',
      'gluing-up-a-panel',
    ],
  },
  {
    label: 'Shape and sand',
    pages: [
      'making-and-using-templates',
      'making-the-pocket',
      'routing-to-a-template',
      'boring-clean-holes',
      'edges-feet-and-handles',
      'sanding-to-a-finish',
    ],
  },
  {
    label: 'Resin',
    pages: [
      'storage-and-shelf-life',
      'test-cup',
      'dosing-and-mixing-resin',
      'working-time-of-resin',
      'pouring-an-inlay',
      'pouring-without-overheating',
      'colour-and-pigment',
      'bubbles',
      'recoat-and-cure',
      'levelling-the-resin',
      'polishing-resin',
      'coating-a-whole-face',
      'resin-and-moving-wood',
    ],
  },
  { label: 'Finish', pages: ['choosing-a-finish', 'oiling-and-waxing'] },
  { label: 'Food and care', pages: ['food-contact', 'care'] },
  { label: 'Sell and send', pages: ['pricing-a-board', 'what-may-be-promised', 'signing-photographing-and-packing'] },
  {
    label: 'Write it down',
    pages: ['writing-a-method', 'running-a-batch', 'publishing-your-own-site'],
  },
  { label: 'Teach', pages: ['a-room-and-a-class', 'lesson-plans', 'teaching-with-sheets'] },
  { pages: ['glossary'] },
];

/** The name of a stage's booklet in its address. */
export const bookletId = (label: string): string => label.toLowerCase().replaceAll(/[^a-z]+/g, '-');

/** The booklet that holds a page: its address and its title; none for a page that stands by itself. */
export function bookletOf(page: string): { to: string; title: string } | undefined {
  const label = howToOrder.find(({ pages }) => pages.includes(page))?.label;
  return label === undefined ? undefined : { to: `/booklets/${bookletId(label)}`, title: label };
}
