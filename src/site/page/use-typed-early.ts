import { type RefObject, useLayoutEffect, useRef } from 'react';

/**
 * Take over what was typed into a field before the page was alive: the browser shows it, and nobody has told the page.
 * Read before anything is drawn anew, which would put the page's own text in its place.
 *
 * @param field the field; its text as the page was sent stands in its attribute
 * @param write takes the text, as if it was typed now
 */
export function useTypedEarly(field: RefObject<HTMLInputElement | null>, write: (text: string) => void): void {
  const take = useRef(write);
  useLayoutEffect(() => {
    const input = field.current;
    if (input && input.value !== input.defaultValue) take.current(input.value);
  }, [field]);
}
