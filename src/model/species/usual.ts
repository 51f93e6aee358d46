/** Woods usual for boards and trays, by id (common practice): shown before anything is typed, and first among equals after it. */
export const usualWoods: readonly string[] = [
  'sugar-maple',
  'black-cherry',
  'black-walnut',
  'white-ash',
  'white-oak',
  'northern-red-oak',
  'american-beech',
  'yellow-birch',
];
