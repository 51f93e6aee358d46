import styles from './home.module.css';

/** Depths of the rings of the drawing below the top of the pith, in its own units. */
const rings = [14, 27, 39, 50, 62, 73, 85, 98, 110, 121, 133, 146, 158, 169, 181, 194];

/**
 * Where boards come from in a log: three ends of boards over its rings.
 * A drawing to name the cuts by, not a wood in particular.
 */
export function EndGrain() {
  return (
    <figure className={styles.grain}>
      <svg
        viewBox="0 0 420 214"
        role="img"
        aria-label="The end of a half log with its growth rings, and three boards in it: flatsawn above the pith with rings lying across its width, rift to one side with rings at a slant, and quartersawn level with the pith with rings standing across its thickness."
      >
        <defs>
          <clipPath id="half-log">
            <path d="M10 208A200 200 0 0 1 410 208Z" />
          </clipPath>
        </defs>
        <g clipPath="url(#half-log)" className={styles.rings}>
          {rings.map((radius) => (
            <circle key={radius} cx="210" cy="208" r={radius} />
          ))}
        </g>
        <path className={styles.bark} d="M10 208A200 200 0 0 1 410 208Z" />
        <g className={styles.boards}>
          <path d="M130 58h160v26H130z" />
          <path d="M268 108l98 56-12 22-98-56z" />
          <path d="M28 178h148v26H28z" />
        </g>
        <g className={styles.names}>
          <text x="210" y="50" textAnchor="middle">
            flatsawn
          </text>
          <text x="322" y="128" textAnchor="middle" transform="rotate(29.7 322 128)">
            rift
          </text>
          <text x="102" y="171" textAnchor="middle">
            quartersawn
          </text>
        </g>
      </svg>
      <figcaption>
        Look at the end: a board moves most across its width where the rings lie flat, least where they stand on edge.
      </figcaption>
    </figure>
  );
}
