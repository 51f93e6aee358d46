import Icon from '@theme-original/Admonition/Icon/Warning';
import type { ComponentProps } from 'react';

/** The sign beside the heading of a note, for the eye alone: the heading says it. */
export default function WarningSign(props: ComponentProps<'svg'>) {
  return <Icon {...props} aria-hidden="true" />;
}
