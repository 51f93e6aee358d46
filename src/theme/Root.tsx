export { Root as default } from '../site/chrome/Root.tsx';
