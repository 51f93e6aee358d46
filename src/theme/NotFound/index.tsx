export { default } from '../../site/page/NoSuchPage.tsx';
