import MDXComponents from '@theme-original/MDXComponents';
import { handbookParts } from '../site/mdx/parts.tsx';

export default { ...MDXComponents, ...handbookParts };
