/** The rooms of the site, as the head of every page names them. */
export const rooms = [
  { to: '/woods', label: 'Woods' },
  { to: '/calculators', label: 'Calculators' },
  { to: '/how-to', label: 'How-to' },
  { to: '/methods', label: 'Methods' },
  { to: '/reference', label: 'Reference' },
] as const;

/** What the foot of every page links to. */
export const footLinks = [
  { to: '/reference/evidence', label: 'Where the figures come from' },
  { to: '/reference/sources', label: 'Sources' },
  { to: '/reference/equations', label: 'Equations' },
  { to: '/reference/checks', label: 'Checks' },
  { to: '/reference/tables', label: 'Tables' },
  { to: '/reference/food-rules', label: 'Rules on food' },
  { to: '/reference/rules', label: 'Rules for a method' },
  { to: '/reference/method-format', label: 'Format of a method' },
  { to: '/reference/schemas', label: 'Schemas' },
  { to: '/shop', label: 'Your shop record' },
  { to: '/bench', label: 'The bench' },
  { to: '/class', label: 'A class' },
  { to: '/batches', label: 'What was made' },
  { to: '/kept', label: 'What this browser keeps' },
  { to: '/access', label: 'Access for everybody' },
  { to: '/privacy', label: 'Privacy' },
  { to: '/offline', label: 'Without a network' },
] as const;
