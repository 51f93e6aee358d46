/** A job on the way from a tree to a sold board: the page that says how, and what works it out. */
export interface Job {
  id: string;
  /** What is done, as the head of a list. */
  label: string;
  /** What the reader comes away with. */
  gives: string;
  /** Name of the file in docs/ that says how. */
  page: string;
  /** Its calculators by id, each with the how-to pages that it serves; the first is the one to read with it. */
  calculators: Readonly<Record<string, readonly string[]>>;
  /** Rooms of the site in which it is done, by their paths. */
  rooms?: readonly { to: string; label: string }[];
}

/**
 * The work in its own order. The first page, the list of calculators, the calculators' own pages and the how-to pages all take from
 * here which page and which calculator belong together.
 */
export const jobs: readonly Job[] = [
  {
    id: 'choose',
    label: 'Choose the wood',
    gives: 'a wood, and the reasons for it',
    page: 'choosing-a-wood',
    calculators: { 'width-change': ['choosing-a-wood', 'salvaged-stock', 'seasonal-movement'] },
  },
  {
    id: 'season',
    label: 'Season it',
    gives: 'the moisture to aim for, and when it is reached',
    page: 'moisture-and-acclimatising',
    calculators: {
      'equilibrium-moisture': ['moisture-and-acclimatising'],
      acclimatise: ['moisture-and-acclimatising'],
    },
  },
  {
    id: 'draw',
    label: 'Draw it so that it may move',
    gives: 'how wide and how narrow it gets through the year',
    page: 'seasonal-movement',
    calculators: {
      'seasonal-movement': [
        'seasonal-movement',
        'wide-boards-panels-and-inlays',
        'resin-and-moving-wood',
        'gluing-up-a-panel',
        'what-may-be-promised',
      ],
    },
  },
  {
    id: 'order',
    label: 'Order the stock',
    gives: 'boards to buy, and what can be cut from those at hand',
    page: 'buying-and-ordering-stock',
    calculators: { 'stock-order': ['buying-and-ordering-stock'], 'board-yield': ['salvaged-stock'] },
  },
  {
    id: 'flatten',
    label: 'Flatten it',
    gives: 'passes, and the thickness that is left',
    page: 'flattening-a-wide-board',
    calculators: { 'flatten-plan': ['flattening-a-wide-board'] },
  },
  {
    id: 'template',
    label: 'Shape it to a template',
    gives: 'a template that the bit can follow, and a safe speed',
    page: 'making-and-using-templates',
    calculators: {
      'template-fit': ['making-and-using-templates', 'routing-to-a-template'],
      'cutter-speed': ['routing-to-a-template', 'making-the-pocket', 'boring-clean-holes'],
    },
  },
  {
    id: 'sand',
    label: 'Sand it',
    gives: 'the grits in order, and sheets to buy',
    page: 'sanding-to-a-finish',
    calculators: { 'grit-sequence': ['sanding-to-a-finish'] },
  },
  {
    id: 'dose',
    label: 'Dose the resin',
    gives: 'grams of each part for each cup, and how long a cup can be worked',
    page: 'dosing-and-mixing-resin',
    calculators: {
      'resin-dose': ['dosing-and-mixing-resin', 'pouring-an-inlay', 'one-tray', 'test-cup'],
      'working-time': ['working-time-of-resin', 'test-cup'],
    },
  },
  {
    id: 'pour',
    label: 'Pour it',
    gives: 'how deep in one go, in how many layers',
    page: 'pouring-an-inlay',
    calculators: {
      'pour-heat': ['pouring-an-inlay', 'pouring-without-overheating'],
      'flood-coat': ['coating-a-whole-face'],
    },
  },
  {
    id: 'cure',
    label: 'Let it cure',
    gives: 'when to pour again, sand, oil and use',
    page: 'recoat-and-cure',
    calculators: { 'cure-clock': ['recoat-and-cure'] },
  },
  {
    id: 'finish',
    label: 'Finish it',
    gives: 'a finish, its coats, and what it keeps out',
    page: 'choosing-a-finish',
    calculators: { 'finish-coats': ['oiling-and-waxing'], 'finish-and-moisture': ['choosing-a-finish'] },
  },
  {
    id: 'label',
    label: 'Food and the label',
    gives: 'what may be said, and the papers behind it',
    page: 'food-contact',
    calculators: { 'food-contact': ['food-contact'] },
  },
  {
    id: 'sell',
    label: 'Sell it, or teach it',
    gives: 'a card for the buyer, and cases to hand to a class',
    page: 'care',
    calculators: { 'care-card': ['care'] },
    rooms: [{ to: '/class', label: 'A class' }],
  },
  {
    id: 'whole',
    label: 'All of it as one method',
    gives: 'steps, timetable, bill and sheets of a whole piece, worked out for your own',
    page: 'writing-a-method',
    calculators: {},
    rooms: [
      { to: '/methods', label: 'Methods' },
      { to: '/bench', label: 'The bench' },
      { to: '/batches', label: 'What was made' },
    ],
  },
];

/** The how-to pages of a calculator by name, the one to read with it first. */
export function pagesOfCalculator(id: string): readonly string[] {
  return jobs.flatMap(({ calculators }) => calculators[id] ?? []);
}

/** The calculators of a how-to page by id, in the order of the work. */
export function calculatorsOfPage(page: string): readonly string[] {
  return jobs.flatMap(({ calculators }) =>
    Object.entries(calculators).flatMap(([id, pages]) => (pages.includes(page) ? [id] : [])),
  );
}

/** What somebody looks for in a hurry: what has happened, and where it says what to do now. */
export const emergencies = [
  { label: 'A cup grows hot', to: '/how-to/heat-build-up-in-resin#hot' },
  { label: 'Resin in an eye or on skin', to: '/how-to/resin-and-hardeners#first' },
  { label: 'Oily rags', to: '/how-to/oily-rags#after' },
] as const;
