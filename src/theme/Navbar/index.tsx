export { Navbar as default } from '../../site/chrome/Navbar.tsx';
