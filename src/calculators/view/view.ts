import type { FrameProps } from './Frame.tsx';

/** What the page part of a calculator takes: the frame's props but for those that it brings itself. */
export type ViewProps = Omit<FrameProps, 'calculator' | 'controls' | 'options' | 'extra' | 'worker'>;
