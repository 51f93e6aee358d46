import { BearingSection } from './BearingSection.tsx';
import { BoardTally } from './BoardTally.tsx';
import { CoatedFaces } from './CoatedFaces.tsx';
import { CornerReach } from './CornerReach.tsx';
import { CureLine } from './CureLine.tsx';
import { EndGrainCuts } from './EndGrainCuts.tsx';
import { FeedDirection } from './FeedDirection.tsx';
import { FlatsawnCup } from './FlatsawnCup.tsx';
import { HollowAndHump } from './HollowAndHump.tsx';
import { LayerSection } from './LayerSection.tsx';
import { MeasuringGrid } from './MeasuringGrid.tsx';
import { PocketSection } from './PocketSection.tsx';
import { RimMask } from './RimMask.tsx';
import { RouterSled } from './RouterSled.tsx';
import { SecondCup } from './SecondCup.tsx';
import { ShortGrain } from './ShortGrain.tsx';
import { TableFeed } from './TableFeed.tsx';
import { TemplateTiles } from './TemplateTiles.tsx';
import { WindingSticks } from './WindingSticks.tsx';

/** The drawings of the how-to pages, by the name with which a page shows them. A page takes its own alone (remark-handbook.ts); this list is for who asks about all. */
export const drawings = {
  BearingSection,
  BoardTally,
  CoatedFaces,
  CornerReach,
  CureLine,
  EndGrainCuts,
  FeedDirection,
  FlatsawnCup,
  HollowAndHump,
  LayerSection,
  MeasuringGrid,
  PocketSection,
  RimMask,
  RouterSled,
  SecondCup,
  ShortGrain,
  TableFeed,
  TemplateTiles,
  WindingSticks,
} as const;
