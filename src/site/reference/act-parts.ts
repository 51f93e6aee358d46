/** The address of the acts of one part of the work. */
export const addressOfActs = (group: string): string => `/reference/acts/${group}`;

/** The anchor of a caution on the page of the acts that carry it. */
export const anchorOfCaution = (id: string): string => `caution-${id}`;
