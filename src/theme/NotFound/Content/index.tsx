export { NoSuchPage as default } from '../../../site/page/NoSuchPage.tsx';
