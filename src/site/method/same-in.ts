import type { MethodPage } from '../../method/page/types.ts';

/**
 * Whether two pages are the same in some of their parts: what shows no others need not be drawn again. What did not change of a page is the same
 * object as before.
 */
export const sameIn =
  (...parts: readonly (keyof MethodPage)[]) =>
  ({ page }: { page: MethodPage }, { page: other }: { page: MethodPage }): boolean =>
    parts.every((part) => page[part] === other[part]);
