export { useBaseUrlUtils } from './framework.tsx';

export default (path: string): string => path;
