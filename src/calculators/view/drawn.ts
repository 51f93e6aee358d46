import type { ComponentType } from 'react';
import type { CalculatorAheadProps, CalculatorViewProps } from './CalculatorView.tsx';
import type { Shown } from './shown.ts';

/** A calculator with the view that shows it. */
export interface Live {
  shown: Shown;
  CalculatorView: ComponentType<CalculatorViewProps>;
  /** Works out ahead what the view is first drawn with. */
  CalculatorAhead: ComponentType<CalculatorAheadProps>;
}

/**
 * A calculator as a page names it: what the page says of it, and how its code is fetched. The page as sent holds its form and its answer
 * already; the code is wanted only once somebody asks for something else.
 */
export interface Drawn {
  id: string;
  title: string;
  summary: string;
  /** True where it begins with the rules of the reader's market. */
  asksMarket: boolean;
  /** The code itself, where the page is being written; a browser has to fetch it. */
  live?: Live;
  load: (rest: Rest) => Promise<Live>;
}

/** Waits until a reader rests: what runs then keeps no key waiting. */
export type Rest = () => Promise<void>;

/** What makes a calculator live, fetched and not yet run. */
export interface Pieces {
  view: () => Promise<Pick<Live, 'CalculatorView' | 'CalculatorAhead'>>;
  shown: () => Promise<Shown>;
}

/** Run what was fetched piece by piece, each once the reader rests: what they do comes between. */
export async function pieceByPiece({ view, shown }: Pieces, rest: Rest): Promise<Live> {
  await rest();
  const views = await view();
  await rest();
  return { ...views, shown: await shown() };
}
