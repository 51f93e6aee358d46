/** Names that an address has for the case itself, beside the parameters: how many, from when to when, with how many hands, in which hours. */
export const reservedNames = ['pieces', 'start', 'end', 'people', 'hours'] as const;

/**
 * Names that the addresses of sheets, batches, classes and the bench have for themselves, beside a case: a parameter called so would be lost there, or
 * would open another method.
 */
export const addressNames = [
  'method',
  'draft',
  'which',
  'paper',
  'date',
  'open',
  'batch',
  'title',
  'calendar',
] as const;
