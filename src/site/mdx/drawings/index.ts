import { BearingSection } from './BearingSection.tsx';
import { BoardTally } from './BoardTally.tsx';
import { CoatedFaces } from './CoatedFaces.tsx';
import { CornerReach } from './CornerReach.tsx';
import { CureLine } from './CureLine.tsx';
import { DustTent } from './DustTent.tsx';
import { EndGrainCuts } from './EndGrainCuts.tsx';
import { FeedDirection } from './FeedDirection.tsx';
import { FlatsawnCup } from './FlatsawnCup.tsx';
import { GelTest } from './GelTest.tsx';
import { GuideOffset } from './GuideOffset.tsx';
import { HeatTool } from './HeatTool.tsx';
import { HollowAndHump } from './HollowAndHump.tsx';
import { KnotPocket } from './KnotPocket.tsx';
import { LayerSection } from './LayerSection.tsx';
import { MeasuringGrid } from './MeasuringGrid.tsx';
import { OpenEdgeDam } from './OpenEdgeDam.tsx';
import { PlungePasses } from './PlungePasses.tsx';
import { PocketSection } from './PocketSection.tsx';
import { ResinPlaces } from './ResinPlaces.tsx';
import { RimMask } from './RimMask.tsx';
import { RoundEnds } from './RoundEnds.tsx';
import { RouterSled } from './RouterSled.tsx';
import { ScaleReadings } from './ScaleReadings.tsx';
import { SecondCup } from './SecondCup.tsx';
import { ShortGrain } from './ShortGrain.tsx';
import { StirAndScrape } from './StirAndScrape.tsx';
import { TableFeed } from './TableFeed.tsx';
import { TemplateTiles } from './TemplateTiles.tsx';
import { WindingSticks } from './WindingSticks.tsx';

/**
 * The drawings of the how-to pages, by the name with which a page shows them. A page loads its own alone (remark-handbook.ts); this list is
 * for whoever asks about all of them.
 */
export const drawings = {
  BearingSection,
  BoardTally,
  CoatedFaces,
  CornerReach,
  CureLine,
  DustTent,
  EndGrainCuts,
  FeedDirection,
  FlatsawnCup,
  GelTest,
  GuideOffset,
  HeatTool,
  HollowAndHump,
  KnotPocket,
  LayerSection,
  MeasuringGrid,
  OpenEdgeDam,
  PlungePasses,
  PocketSection,
  ResinPlaces,
  RimMask,
  RoundEnds,
  RouterSled,
  ScaleReadings,
  SecondCup,
  ShortGrain,
  StirAndScrape,
  TableFeed,
  TemplateTiles,
  WindingSticks,
} as const;
