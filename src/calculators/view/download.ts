/** Hand a text, or the bytes of a file, to the reader as a file. */
export function download(name: string, type: string, content: string | Uint8Array<ArrayBuffer>): void {
  const address = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  URL.revokeObjectURL(address);
}
