import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { circle } from './kit/lines.ts';
import { Arrow, Never, Right, Words } from './kit/marks.tsx';

const size = { width: 340, height: 218 };
const neck = { width: 36, height: 66 };
const blade = { width: 92, height: 56 };
const top = 40;
const views = [
  { x: 60, along: true },
  { x: 238, along: false },
] as const;

/** A paddle with its grain along the handle, and one with short grain across it. */
export function ShortGrain() {
  return (
    <Drawing
      title="Grain along a handle, and across it"
      description="Two paddles of one shape. Left: the grain runs along the handle and holds; the one weak place is the short stretch between the hanging hole and the end. Right: the grain runs across the handle; a crack goes straight through the neck along the fibres."
      {...size}
      caption="Lay the template so that the grain runs along every thin part. Across a neck it breaks at the first knock."
    >
      {views.map(({ x, along }) => {
        const [left, foot] = [x - neck.width / 2, top + neck.height];
        return (
          <g key={String(along)}>
            {along
              ? [-12, 0, 12].map((off) => (
                  <path key={off} className={styles.grain} d={`M${x + off} ${top}V${foot + blade.height}`} />
                ))
              : [12, 24, 36, 48, 60].map((off) => (
                  <path key={off} className={styles.grain} d={`M${left} ${top + off}h${neck.width}`} />
                ))}
            {(along ? [-36, -24, 24, 36] : [10, 22, 34, 46]).map((off) => (
              <path
                key={off}
                className={styles.grain}
                d={
                  along
                    ? `M${x + off} ${foot + 8}V${foot + blade.height}`
                    : `M${x - blade.width / 2} ${foot + off}h${blade.width}`
                }
              />
            ))}
            <path
              className={styles.wood}
              d={`M${left} ${foot}V${top + 8}a8 8 0 0 1 8 -8h${neck.width - 16}a8 8 0 0 1 8 8V${foot}h${(blade.width - neck.width) / 2 - 10}a10 10 0 0 1 10 10v${blade.height - 20}a10 10 0 0 1 -10 10h${20 - blade.width}a10 10 0 0 1 -10 -10v${20 - blade.height}a10 10 0 0 1 10 -10Z`}
            />
            <path className={styles.paper} d={circle(x, top + 18, 6)} />
            {!along && <path className={styles.never} d={`M${left - 8} ${foot - 18}l14 -4l10 5l12 -5l16 4`} />}
            <Words x={x} y={foot + blade.height + 22} anchor="middle">
              {along ? 'along: holds' : 'across: breaks'}
            </Words>
          </g>
        );
      })}
      <Right x={60} y={24} />
      <Never x={238} y={22} />
      <Arrow from={{ x: 104, y: top + 6 }} to={{ x: 66, y: top + 6 }} />
      <Words x={108} y={top + 10}>
        {['weak: hole', 'to end']}
      </Words>
    </Drawing>
  );
}
