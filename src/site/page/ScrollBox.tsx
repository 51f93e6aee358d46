import { type ReactNode, useEffect, useRef, useState } from 'react';
import { scrollingProps } from '../../calculators/view/scrolling.ts';

/**
 * What may be wider than the page and then scrolls within itself.
 *
 * Only while it does scroll it takes the focus, so that arrow keys can move it and nobody has to pass it for nothing.
 */
export function ScrollBox({ label, className, children }: { label: string; className?: string; children: ReactNode }) {
  const box = useRef<HTMLDivElement>(null);
  const [scrolls, setScrolls] = useState(false);
  useEffect(() => {
    const element = box.current;
    if (!element) return;
    const measure = () => setScrolls(element.scrollWidth > element.clientWidth);
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    for (const child of element.children) observer.observe(child);
    return () => observer.disconnect();
  }, []);
  return (
    <div
      ref={box}
      className={className ?? 'table-scroll'}
      data-scrolls={label}
      {...(scrolls ? scrollingProps(label) : {})}
    >
      {children}
    </div>
  );
}
