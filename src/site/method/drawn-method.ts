import type { ComponentType } from 'react';
import type { PlanCalendar } from '../../method/page/calendars.ts';
import type { MethodPage } from '../../method/page/types.ts';
import type { MethodLiveProps } from './MethodLive.tsx';

/** A method worked out at its defaults, with the view that shows it and works it out for other cases. */
export interface LiveMethod {
  page: MethodPage;
  calendars: readonly PlanCalendar[];
  View: ComponentType<MethodLiveProps>;
}

/**
 * A method as its page names it: what the page says of it, and how the rest is fetched. The page as sent holds all of it, drawn; its data and its
 * code are wanted only once somebody asks for another case.
 */
export interface DrawnMethod {
  id: string;
  title: string;
  for: string;
  version?: string;
  /** The method itself, and its text for programs, where the page is being written; a browser has to fetch it. */
  here?: LiveMethod & { Head: ComponentType<{ page: MethodPage; address: string }> };
  load: () => Promise<LiveMethod>;
}
