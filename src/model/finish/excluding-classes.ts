/** Classes of finish that the table of moisture-excluding effectiveness speaks of and that are used on a board. */
export const excludingClasses = [
  'linseed-oil',
  'tung-oil',
  'furniture-wax',
  'lacquer',
  'shellac',
  'spar-varnish',
  'urethane-varnish',
  'epoxy',
] as const;
export type ExcludingClass = (typeof excludingClasses)[number];
