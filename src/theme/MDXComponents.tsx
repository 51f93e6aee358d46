import MDXComponents from '@theme-original/MDXComponents';
import type { ComponentProps } from 'react';
import { handbookParts } from '../site/mdx/parts.tsx';

/** A box of a list to tick on paper: it cannot be ticked here, and is kept from those who hear the page. */
const Box = (props: ComponentProps<'input'>) => <input {...props} aria-hidden={props.disabled || undefined} />;

export default { ...MDXComponents, input: Box, ...handbookParts };
