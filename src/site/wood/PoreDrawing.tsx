import type { PoreArrangement, Species } from '../../model/species/types.ts';
import styles from './wood.module.css';

const width = 300;
const height = 170;
/** Heights of the ring boundaries; earlywood, which grew first, lies above each. */
const boundaries = [6, 44, 86, 122, 164];

/** A repeatable scatter in 0 to 1, so that the server and the browser draw the same pores. */
function scatter(index: number): number {
  const x = Math.sin(index * 127.1 + 11.7) * 43758.5453;
  return x - Math.floor(x);
}

interface Pore {
  x: number;
  y: number;
  r: number;
}

/** Pores of one ring, as the word for their arrangement means them. */
function poresOf(arrangement: PoreArrangement, top: number, bottom: number, ring: number): Pore[] {
  if (arrangement === 'none') return [];
  const deep = bottom - top;
  const count = arrangement === 'diffuse-porous' ? 70 : 78;
  return Array.from({ length: count }, (_, i) => {
    const seed = ring * 1000 + i;
    const x = 6 + scatter(seed) * (width - 12);
    const depth = scatter(seed + 500);
    if (arrangement === 'diffuse-porous') return { x, y: top + 3 + depth * (deep - 6), r: 1.1 };
    if (arrangement === 'semi-ring-porous') return { x, y: top + 3 + depth * (deep - 6), r: 2.3 - 1.6 * depth };
    const early = i < 46;
    return early
      ? { x: 6 + (i / 46) * (width - 12) + scatter(seed) * 3, y: top + 4 + depth * 5, r: 2.4 }
      : { x, y: top + 13 + depth * (deep - 17), r: 0.7 };
  });
}

const words: Record<PoreArrangement, string> = {
  'ring-porous': 'Ring-porous: a band of large pores at the start of each ring, small ones after it.',
  'semi-ring-porous': 'Semi-ring-porous: pores grow smaller across each ring.',
  'diffuse-porous': 'Diffuse-porous: small pores, spread evenly over each ring.',
  none: 'A softwood has no pores; the dark line of each ring is its latewood.',
};

/** End grain drawn from the word for the pore arrangement, not from the wood: a reminder of what to look for under a lens. */
export function PoreDrawing({ arrangement, kind }: { arrangement: PoreArrangement | null; kind: Species['kind'] }) {
  if (!arrangement) return null;
  const pores = boundaries
    .slice(1)
    .flatMap((bottom, ring) => poresOf(arrangement, boundaries[ring] ?? 0, bottom, ring));
  return (
    <figure className={styles.grain}>
      <svg viewBox={`0 0 ${width} ${height}`} aria-hidden="true" focusable="false">
        {boundaries.map((y) => (
          <path
            key={y}
            d={`M0 ${y}Q${width / 2} ${y - 8} ${width} ${y}`}
            className={kind === 'softwood' ? styles.latewood : styles.ring}
          />
        ))}
        {pores.map((pore) => (
          <circle
            key={`${pore.x}`}
            cx={pore.x.toFixed(1)}
            cy={(pore.y - 8 * (1 - ((2 * pore.x) / width - 1) ** 2) * 0.5).toFixed(1)}
            r={pore.r.toFixed(1)}
          />
        ))}
        <rect x="1" y="1" width={width - 2} height={height - 2} />
      </svg>
      <figcaption>
        {words[arrangement]} <span className="quiet">Drawn from the word, not from this wood.</span>
      </figcaption>
    </figure>
  );
}
