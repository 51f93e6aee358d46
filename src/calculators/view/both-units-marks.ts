/** Bears, in a page as sent, the system that a part of it stands in. */
export const systemOfPart = 'data-in';

/** The same while what follows in the page may turn it to the other system; style hides it meanwhile from whoever reads the other. */
export const comingPart = 'data-coming';

/** An element that differs between the systems: its other stands in the template behind the part, in the same order. */
export const bothMark = 'data-both';
