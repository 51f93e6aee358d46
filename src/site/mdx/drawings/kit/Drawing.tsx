import { createContext, type ReactNode, useId } from 'react';
import styles from './drawings.module.css';

interface DrawingProps {
  /** What is drawn, in a few words. */
  title: string;
  /** What a reader who cannot see it needs from it. */
  description: string;
  /** Of the drawing, in its own units; letters are 15 of them high. */
  width: number;
  height: number;
  /** What to do, or to look for. */
  caption: string;
  children: ReactNode;
}

/** Id of the hatching of the drawing around, by which its resin is told from wood without a colour. */
export const Hatching = createContext('');

/** A line drawing of a how-to page, with its title and description for who cannot see it and a line below for everybody. */
export function Drawing({ title, description, width, height, caption, children }: DrawingProps) {
  const id = useId().replace(/\W/g, '');
  // Letters of a drawing are as wide as they are: whoever measures in inches is told what its numbers are.
  const inMillimetres = /\d mm\b/.test(`${description} ${caption}`);
  return (
    <figure className={styles.drawing}>
      <svg viewBox={`0 0 ${width} ${height}`} role="img" aria-labelledby={`${id}-title ${id}-description`}>
        <title id={`${id}-title`}>{title}</title>
        <desc id={`${id}-description`}>{description}</desc>
        <pattern id={`${id}-hatch`} width="7" height="7" patternUnits="userSpaceOnUse">
          <path className={styles.hatch} d="M-1 1L1 -1M0 7L7 0M6 8L8 6" />
        </pattern>
        <Hatching.Provider value={`${id}-hatch`}>{children}</Hatching.Provider>
      </svg>
      <figcaption>{caption}</figcaption>
      {inMillimetres && <small className="in-inches">Sizes in the drawing are in mm.</small>}
    </figure>
  );
}
