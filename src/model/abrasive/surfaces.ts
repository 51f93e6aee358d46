/** What a tool leaves on wood or resin, and the grade that takes its marks out. All of it is common practice. */
export interface StartSurface {
  id: string;
  label: string;
  /** P number of the grade to start with. */
  first: number;
  why: string;
}

/** Surfaces that sanding starts from, coarsest first. */
export const startSurfaces: readonly StartSurface[] = [
  {
    id: 'rough-sawn',
    label: 'Rough from the saw',
    first: 60,
    why: 'Saw marks and fuzz are deep; flattening first is quicker.',
  },
  {
    id: 'router-flattened',
    label: 'Flattened with a router',
    first: 80,
    why: 'The passes leave ridges and swirl marks.',
  },
  {
    id: 'planed',
    label: 'From the planer or jointer',
    first: 80,
    why: 'Knife marks, and tear-out where the grain turns.',
  },
  {
    id: 'resin-as-cast',
    label: 'Resin as it was cast',
    first: 80,
    why: 'A meniscus, drips and dust stand over the surface.',
  },
  { id: 'planed-clean', label: 'Planed with sharp knives, no tear-out', first: 120, why: 'Only knife marks remain.' },
  {
    id: 'hand-planed',
    label: 'Hand-planed or scraped',
    first: 180,
    why: 'The surface is cut, not scratched; only plane tracks remain.',
  },
];

/** The starting surface of this id. */
export function startSurfaceById(id: string): StartSurface | undefined {
  return startSurfaces.find((surface) => surface.id === id);
}

/** A finish and the last grade before it. All of it is common practice: the sheet of the finish wins. */
export interface FinishKind {
  id: string;
  label: string;
  /** P number of the last grade. */
  last: number;
  /** Whether the finish itself holds water and raises the grain. */
  waterBased: boolean;
  why: string;
}

/** Finishes, by what they ask of the surface. */
export const finishKinds: readonly FinishKind[] = [
  {
    id: 'oil-or-wax',
    label: 'Oil or wax',
    last: 320,
    waterBased: false,
    why: 'Nothing covers the scratches, so they must be too fine to see.',
  },
  {
    id: 'hard-wax-oil',
    label: 'Hard-wax oil',
    last: 180,
    waterBased: false,
    why: 'Sanded finer, the surface takes up too little; makers often ask for P120 to P180.',
  },
  {
    id: 'film',
    label: 'Varnish or lacquer',
    last: 220,
    waterBased: false,
    why: 'The film fills what P220 leaves, and holds to it.',
  },
  {
    id: 'water-based',
    label: 'Water-based finish',
    last: 220,
    waterBased: true,
    why: 'As for varnish; its water raises the grain, so it is raised before.',
  },
  {
    id: 'resin-polish',
    label: 'Clear polish on resin',
    last: 2000,
    waterBased: false,
    why: 'Compound takes out what P2000 leaves; coarser scratches stay as haze.',
  },
];

/** The finish of this id. */
export function finishKindById(id: string): FinishKind | undefined {
  return finishKinds.find((finish) => finish.id === id);
}

/** How the sanding is done, and how fast: minutes for a square metre and one grade, and square metres from one disc or sheet. */
export interface SandingMethod {
  id: string;
  label: string;
  minutes: number;
  /** Up to P150, and finer. */
  coarse: number;
  fine: number;
}

/** Ways of sanding. Common practice, to a factor of two. */
export const sandingMethods: readonly SandingMethod[] = [
  { id: 'random-orbit', label: 'Random-orbit sander, 5 or 6 in disc', minutes: 12, coarse: 0.5, fine: 1 },
  { id: 'by-hand', label: 'By hand with a block, quarter sheet', minutes: 40, coarse: 0.15, fine: 0.3 },
  { id: 'drum', label: 'Drum sander', minutes: 4, coarse: 15, fine: 15 },
];

/** The method of this id. */
export function sandingMethodById(id: string): SandingMethod | undefined {
  return sandingMethods.find((method) => method.id === id);
}
