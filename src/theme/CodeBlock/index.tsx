export { CodeSample as default } from '../../site/page/CodeSample.tsx';
