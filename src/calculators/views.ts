import { type ComponentType, type LazyExoticComponent, lazy } from 'react';
import type { ViewProps } from './kit/view.ts';

/** The page part of every calculator, each in a bundle of its own. One line a folder; a test holds the list complete. */
export const views: Readonly<Record<string, LazyExoticComponent<ComponentType<ViewProps>>>> = {
  acclimatise: lazy(() => import('./acclimatise/View.tsx')),
  'board-yield': lazy(() => import('./board-yield/View.tsx')),
  'care-card': lazy(() => import('./care-card/View.tsx')),
  'cure-clock': lazy(() => import('./cure-clock/View.tsx')),
  'cutter-speed': lazy(() => import('./cutter-speed/View.tsx')),
  'finish-and-moisture': lazy(() => import('./finish-and-moisture/View.tsx')),
  'finish-coats': lazy(() => import('./finish-coats/View.tsx')),
  'flatten-plan': lazy(() => import('./flatten-plan/View.tsx')),
  'food-contact': lazy(() => import('./food-contact/View.tsx')),
  'flood-coat': lazy(() => import('./flood-coat/View.tsx')),
  'grit-sequence': lazy(() => import('./grit-sequence/View.tsx')),
  'pour-heat': lazy(() => import('./pour-heat/View.tsx')),
  'resin-dose': lazy(() => import('./resin-dose/View.tsx')),
  'stock-order': lazy(() => import('./stock-order/View.tsx')),
  'equilibrium-moisture': lazy(() => import('./equilibrium-moisture/View.tsx')),
  'seasonal-movement': lazy(() => import('./seasonal-movement/View.tsx')),
  'template-fit': lazy(() => import('./template-fit/View.tsx')),
  'width-change': lazy(() => import('./width-change/View.tsx')),
  'working-time': lazy(() => import('./working-time/View.tsx')),
};
