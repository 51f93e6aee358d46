import { Drawing } from './Drawing.tsx';
import styles from './drawings.module.css';

const layers = [
  { y: 46, words: '3rd pour, 15 mm' },
  { y: 81, words: '2nd pour, 15 mm' },
  { y: 116, words: '1st pour, 15 mm' },
];

/** A section through a deep pocket that is filled in three pours. */
export function LayerSection() {
  return (
    <Drawing
      title="A deep pocket filled in three pours, in section"
      description="Section through a board with a pocket 45 mm deep, filled in three pours of 15 mm each. A thick line along its walls and bottom is the seal coat. Heat leaves mostly upwards, little of it down through the wood."
      width={420}
      height={206}
      caption="A pocket of 45 mm in three pours. The thick line is the seal coat. Heat leaves mostly through the top: each pour loses its own before the next one covers it."
    >
      <path className={styles.wood} d="M10 46H90V151H330V46H410V182H10Z" />
      {[0, 1, 2, 3].map((line) => (
        <path key={line} className={styles.grain} d={`M10 ${58 + line * 26}h80M330 ${58 + line * 26}h80`} />
      ))}
      <path className={styles.grain} d="M10 166h400" />
      {layers.map(({ y, words }, place) => (
        <g key={y}>
          <rect className={place % 2 === 0 ? styles.resin : styles.resinPale} x="90" y={y} width="240" height="35" />
          <text x="210" y={y + 23} textAnchor="middle">
            {words}
          </text>
        </g>
      ))}
      <path className={styles.seal} d="M90 46V151H330V46" />
      {[150, 210, 270].map((x) => (
        <path key={x} className={styles.arrow} d={`M${x} 38V14m-6 8l6 -8l6 8`} />
      ))}
      <path className={styles.arrow} d="M210 188v14m-4 -5l4 5l4 -5" />
      <text x="340" y="26">
        heat
      </text>
    </Drawing>
  );
}
