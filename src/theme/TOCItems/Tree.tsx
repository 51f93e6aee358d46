export { ContentsTree as default } from '../../site/page/ContentsTree.tsx';
