import { BackingBlock } from './BackingBlock.tsx';
import { BearingSection } from './BearingSection.tsx';
import { BoardTally } from './BoardTally.tsx';
import { CareCardFolded } from './CareCardFolded.tsx';
import { ClassRoom } from './ClassRoom.tsx';
import { CoatedFaces } from './CoatedFaces.tsx';
import { ColourFirst } from './ColourFirst.tsx';
import { CornerReach } from './CornerReach.tsx';
import { CupOrTray } from './CupOrTray.tsx';
import { CureLine } from './CureLine.tsx';
import { DryOnEdge } from './DryOnEdge.tsx';
import { DustAtSource } from './DustAtSource.tsx';
import { DustTent } from './DustTent.tsx';
import { EdgeProfiles } from './EdgeProfiles.tsx';
import { EndGrainCuts } from './EndGrainCuts.tsx';
import { FeedDirection } from './FeedDirection.tsx';
import { FlatsawnCup } from './FlatsawnCup.tsx';
import { FloodCoat } from './FloodCoat.tsx';
import { GelTest } from './GelTest.tsx';
import { GritLadder } from './GritLadder.tsx';
import { GuideOffset } from './GuideOffset.tsx';
import { HeatTool } from './HeatTool.tsx';
import { HollowAndHump } from './HollowAndHump.tsx';
import { KnotPocket } from './KnotPocket.tsx';
import { LayerSection } from './LayerSection.tsx';
import { LayOnBoard } from './LayOnBoard.tsx';
import { LeftoverTray } from './LeftoverTray.tsx';
import { LevelFlush } from './LevelFlush.tsx';
import { MeasuringGrid } from './MeasuringGrid.tsx';
import { OilThin } from './OilThin.tsx';
import { OilyCloths } from './OilyCloths.tsx';
import { OpenEdgeDam } from './OpenEdgeDam.tsx';
import { PanelClamps } from './PanelClamps.tsx';
import { PlungePasses } from './PlungePasses.tsx';
import { PocketSection } from './PocketSection.tsx';
import { RaisedGrain } from './RaisedGrain.tsx';
import { ResinPlaces } from './ResinPlaces.tsx';
import { RigidInlay } from './RigidInlay.tsx';
import { RimMask } from './RimMask.tsx';
import { RoundEnds } from './RoundEnds.tsx';
import { RouterSled } from './RouterSled.tsx';
import { SandingPasses } from './SandingPasses.tsx';
import { ScaleReadings } from './ScaleReadings.tsx';
import { SecondCup } from './SecondCup.tsx';
import { ShimHeights } from './ShimHeights.tsx';
import { ShortGrain } from './ShortGrain.tsx';
import { StickeredStack } from './StickeredStack.tsx';
import { StirAndScrape } from './StirAndScrape.tsx';
import { TableFeed } from './TableFeed.tsx';
import { TemplateTiles } from './TemplateTiles.tsx';
import { TestCup } from './TestCup.tsx';
import { TrayStage } from './TrayStage.tsx';
import { UndersideMark } from './UndersideMark.tsx';
import { WetTrays } from './WetTrays.tsx';
import { WindingSticks } from './WindingSticks.tsx';

/**
 * The drawings of the how-to pages, by the name with which a page shows them. A page loads its own alone (remark-handbook.ts); this list is
 * for whoever asks about all of them.
 */
export const drawings = {
  BackingBlock,
  BearingSection,
  BoardTally,
  CareCardFolded,
  ClassRoom,
  CoatedFaces,
  ColourFirst,
  CornerReach,
  CupOrTray,
  CureLine,
  DryOnEdge,
  DustAtSource,
  DustTent,
  EdgeProfiles,
  EndGrainCuts,
  FeedDirection,
  FlatsawnCup,
  FloodCoat,
  GelTest,
  GritLadder,
  GuideOffset,
  HeatTool,
  HollowAndHump,
  KnotPocket,
  LayOnBoard,
  LayerSection,
  LeftoverTray,
  LevelFlush,
  MeasuringGrid,
  OilThin,
  OilyCloths,
  OpenEdgeDam,
  PanelClamps,
  PlungePasses,
  PocketSection,
  RaisedGrain,
  ResinPlaces,
  RigidInlay,
  RimMask,
  RoundEnds,
  RouterSled,
  SandingPasses,
  ScaleReadings,
  SecondCup,
  ShimHeights,
  ShortGrain,
  StickeredStack,
  StirAndScrape,
  TableFeed,
  TemplateTiles,
  TestCup,
  TrayStage,
  UndersideMark,
  WetTrays,
  WindingSticks,
} as const;
