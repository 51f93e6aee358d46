import type { LayerState } from './client.ts';
import type { LayerSize } from './kept-files.ts';
import type { Heard } from './worker.ts';

/** A size for a reader: whole megabytes above ten, else one place; of a million bytes each. */
export function sizeWords(bytes: number): string {
  const mega = bytes / 1e6;
  return `${mega >= 9.95 ? Math.round(mega) : mega.toFixed(1)} MB`;
}

/** How much of a part is kept, and how large it is. */
export function stateWords({ kept, whole }: LayerState, size: LayerSize | undefined): string {
  const large = size && `${sizeWords(size.bytes)}, ${sizeWords(size.gzip)} over a network that compresses`;
  const much = whole ? 'Kept whole' : kept === 0 ? 'Not kept' : size ? `${kept} of ${size.files} files kept` : 'Begun';
  return large ? `${much}: ${large}.` : `${much}.`;
}

/** What came of keeping everything, in words with a way out. */
export function heardWords(heard: Heard): string {
  if ('done' in heard) return 'Everything is kept now.';
  if ('kept' in heard) return `Keeping: ${heard.kept} of ${heard.of} files of the second part.`;
  switch (heard.refused) {
    case 'full':
      return 'There is no space left for it in this browser. What was kept before stays. Free space on the device and press the button again; what you typed is kept apart from this.';
    case 'other':
      return 'A newer version of the site is being put on the server. What you have stays; open the site again in some minutes.';
    case 'network':
      return 'The network went away. What came so far is kept: press the button again when it is back, and it goes on from there.';
  }
}

/** Whether an address that stands in this page’s own may be linked to: a path of this host. */
export const isWanted = (page: string) => /^\/(?![/\\])/.test(page);
