/** What an element says while it scrolls sideways: it takes the focus then, so that arrow keys can move it. */
export const scrollingProps = (label: string) =>
  ({ role: 'group', 'aria-label': `${label}, scrolls sideways`, tabIndex: 0 }) as const;

/**
 * Let what may scroll in a part as sent, which bears its name as `data-scrolls`, take the focus while it does, as its live form will.
 *
 * @returns stops the looking
 */
export function watchScrolling(part: Element): () => void {
  const boxes = [...part.querySelectorAll<HTMLElement>('[data-scrolls]')];
  if (boxes.length === 0) return () => undefined;
  const observer = new ResizeObserver(() => {
    for (const box of boxes) {
      const props = scrollingProps(box.dataset['scrolls'] ?? '');
      const scrolls = box.scrollWidth > box.clientWidth;
      for (const [name, value] of Object.entries(props)) {
        if (scrolls) box.setAttribute(name.toLowerCase(), String(value));
        else box.removeAttribute(name.toLowerCase());
      }
    }
  });
  for (const box of boxes) for (const each of [box, ...box.children]) observer.observe(each);
  return () => observer.disconnect();
}
