/** The part of the special-function library that these tests use; its own types are not found by module resolution. */
declare module 'cephes' {
  const cephes: { compiled: Promise<unknown>; ellpe(complementaryParameter: number): number };
  export default cephes;
}
