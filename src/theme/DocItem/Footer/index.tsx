export { HowToFooter as default } from '../../../site/page/HowToFooter.tsx';
