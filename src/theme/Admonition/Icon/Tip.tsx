import Icon from '@theme-original/Admonition/Icon/Tip';
import type { ComponentProps } from 'react';

/** The sign beside the heading of a note, for the eye alone: the heading says it. */
export default function TipSign(props: ComponentProps<'svg'>) {
  return <Icon {...props} aria-hidden="true" />;
}
