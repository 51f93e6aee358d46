import { BearingSection } from './BearingSection.tsx';
import { CoatedFaces } from './CoatedFaces.tsx';
import { CureLine } from './CureLine.tsx';
import { FeedDirection } from './FeedDirection.tsx';
import { LayerSection } from './LayerSection.tsx';
import { MeasuringGrid } from './MeasuringGrid.tsx';
import { PocketSection } from './PocketSection.tsx';
import { RimMask } from './RimMask.tsx';
import { RouterSled } from './RouterSled.tsx';
import { SecondCup } from './SecondCup.tsx';
import { WindingSticks } from './WindingSticks.tsx';

/** The drawings of the how-to pages, by the name with which a page shows them. None takes a property. */
export const drawings = {
  BearingSection,
  CoatedFaces,
  CureLine,
  FeedDirection,
  LayerSection,
  MeasuringGrid,
  PocketSection,
  RimMask,
  RouterSled,
  SecondCup,
  WindingSticks,
} as const;
