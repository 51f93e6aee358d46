export { StageOfList as default } from '../../../site/page/StageOfList.tsx';
