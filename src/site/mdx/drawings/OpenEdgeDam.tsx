import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { grain } from './kit/lines.ts';
import { Arrow, Resin, Words } from './kit/marks.tsx';

const size = { width: 340, height: 232 };
const view = { y: 58, width: 156, height: 104 };
const [first, second] = [6, 178];

/** Damming a pocket that runs out at an open or live edge, from above: seal the joint, then try it before the pour. */
export function OpenEdgeDam() {
  const edge = (x: number) => `${x + 116} ${view.y}c-8 22 10 30 2 52s8 34 0 52`;
  return (
    <Drawing
      title="A dam at a live edge, and its test, seen from above"
      description="Left: a pocket runs out of a board at its wavy live edge. A strip that resin does not hold to, 5 mm higher than the fill, is clamped against the edge, and a bead of silicone or clay closes the foot of the gap along the wave, outside the pocket. Right: the test. The seal coat has been brushed on and has gelled; a spoonful of resin lies in the mouth of the pocket, and a dry paper under the edge shows within ten minutes whether it leaks, before the pocket is filled."
      {...size}
      caption="Bead outside, along the foot. Never test with water: seal coat first, let it gel, then a spoonful of resin, and watch the paper for ten minutes (common practice)."
    >
      {[first, second].map((x) => (
        <g key={x}>
          <path className={styles.grain} d={grain(x, view.y, 112, 30, 2) + grain(x, view.y + 74, 112, 30, 2)} />
          <path className={styles.wood} d={`M${edge(x)}H${x}V${view.y}Z`} />
          <path
            className={styles.seal}
            d={`M${x + 116} ${view.y}c-5 14 0 24 1 36M${x + 119} ${view.y + 68}q0 10 -1 36`}
          />
          <path className={styles.solid} d={`M${x + 126} ${view.y - 8}h10v${view.height + 16}h-10Z`} />
        </g>
      ))}
      <path
        className={styles.paper}
        d={`M${first + 117} ${view.y + 36}H${first + 44}a16 16 0 0 0 0 32H${first + 119}`}
      />
      <path
        className={styles.paper}
        d={`M${second + 117} ${view.y + 36}H${second + 44}a16 16 0 0 0 0 32H${second + 119}`}
      />
      <Resin d={`M${second + 117} ${view.y + 37}h-16v30h18q4 -16 -2 -30Z`} />
      <path className={styles.line} d={`M${second + 96} ${view.y + view.height + 6}h58v18h-58Z`} />
      <Words x={first} y={22}>
        bead outside
      </Words>
      <Arrow from={{ x: first + 76, y: 28 }} to={{ x: first + 114, y: view.y + 12 }} />
      <Words x={first + 150} y={view.y - 14} anchor="end">
        dam
      </Words>
      <Words x={second} y={22}>
        a spoonful
      </Words>
      <Arrow from={{ x: second + 70, y: 28 }} to={{ x: second + 106, y: view.y + 46 }} />
      <Words x={first + 60} y={view.y + 57} anchor="middle">
        pocket
      </Words>
      <Words x={second + 92} y={view.y + view.height + 22} anchor="end">
        dry paper?
      </Words>
      <Words x={first + 70} y={size.height - 12} anchor="middle">
        1 dam and bead
      </Words>
      <Words x={second + 76} y={size.height - 12} anchor="middle">
        2 try it
      </Words>
    </Drawing>
  );
}
