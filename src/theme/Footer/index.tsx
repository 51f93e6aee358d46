export { Footer as default } from '../../site/chrome/Footer.tsx';
