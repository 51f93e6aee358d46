import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { rounded } from './kit/lines.ts';
import { Never, Resin, Right, Words } from './kit/marks.tsx';

const size = { width: 340, height: 176 };
const board = { width: 104, height: 66, y: 42, corner: 9 };
const places = [
  { x: 4, name: 'at the rim', words: ['food lies', 'on wood'] },
  { x: 118, name: 'in the centre', words: ['dry or whole,', 'wrapped food'] },
  { x: 232, name: 'under a knife', words: ['not in a', 'cutting board'] },
] as const;

/** Where resin may lie on a board for food. */
export function ResinPlaces() {
  const [rim, centre, knife] = places;
  return (
    <Drawing
      title="Where resin may lie on a board for food"
      description="Three boards from above. First: resin in a line near the rim; food lies on the wood beside it. Second: resin in the centre; food lies on it, so the papers of the resin decide, and dry or wrapped food is the mildest case. Third, crossed out: resin under a knife; a cutting edge scores it and takes off crumbs of plastic, so it does not go into a cutting board."
      {...size}
      caption="Best where no food lies. In the centre only with the maker’s papers for that food. Never where a knife goes."
    >
      {places.map(({ x, name, words }) => (
        <g key={name}>
          <path
            className={styles.grain}
            d={[12, 24, 54].map((down) => `M${x + 4} ${board.y + down}h${board.width - 8}`).join('')}
          />
          <path className={styles.wood} d={rounded(x, board.y, board.width, board.height, board.corner)} />
          <Words x={x + board.width / 2} y={board.y + board.height + 22} anchor="middle">
            {name}
          </Words>
          <Words x={x + board.width / 2} y={board.y + board.height + 42} anchor="middle" muted>
            {words}
          </Words>
        </g>
      ))}
      <Resin d={rounded(rim.x + 10, board.y + board.height - 17, board.width - 20, 9, 4.4)} />
      <Resin d={rounded(centre.x + 18, board.y + 24, board.width - 36, 18, 8.9)} />
      <Resin d={rounded(knife.x + 18, board.y + 24, board.width - 36, 18, 8.9)} />
      <path className={styles.paper} d={`M${knife.x + 20} ${board.y + 40}l52 -30l10 2q-4 12 -14 18l-44 18Z`} />
      <path className={styles.solid} d={`M${knife.x + 72} ${board.y + 8}l22 -14l5 7l-21 14Z`} />
      <Right x={rim.x + board.width / 2} y={22} />
      <Words x={centre.x + board.width / 2} y={28} anchor="middle">
        ask first
      </Words>
      <Never x={knife.x + 40} y={22} />
    </Drawing>
  );
}
