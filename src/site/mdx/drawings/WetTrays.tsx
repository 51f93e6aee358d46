import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { box } from './kit/lines.ts';
import { Arrow, Measure, Words } from './kit/marks.tsx';

const size = { width: 340, height: 214 };
const rack = { x: 62, width: 216, top: 34, shelf: 40, shelves: 4 };
const trayHeight = 10;

/** Twelve wet trays over night: on points, on shelves, with air between them. */
export function WetTrays() {
  const bottom = rack.top + rack.shelves * rack.shelf;
  const shelves = Array.from({ length: rack.shelves }, (_, at) => rack.top + (at + 1) * rack.shelf);
  const wide = rack.width / 3 - 12;
  return (
    <Drawing
      title="Twelve wet trays on one rack"
      description="A rack with four shelves, three trays on each: twelve. Each tray stands on the points of a nail board or on small plastic points, so that both faces can be oiled and air reaches the underside. A hand’s breadth of air is left above every tray; nothing lies on another, and each has its name on tape at the shelf."
      {...size}
      caption="Every tray on points, air above and below, nothing on top of another, the name at the shelf. Level shelves for wet resin."
    >
      <path
        className={styles.wood}
        d={`M${rack.x} ${rack.top}V${bottom + 8}M${rack.x + rack.width} ${rack.top}V${bottom + 8}`}
      />
      {shelves.map((y) => (
        <g key={y}>
          <path className={styles.wood} d={`M${rack.x} ${y}h${rack.width}`} />
          {[0, 1, 2].map((place) => {
            const x = rack.x + 6 + place * (rack.width / 3);
            return (
              <g key={x}>
                <path className={styles.paper} d={box(x, y - trayHeight - 7, wide, trayHeight)} />
                <path
                  className={styles.dimension}
                  d={`M${x + 6} ${y - 1}l3 -6l3 6M${x + wide - 12} ${y - 1}l3 -6l3 6`}
                />
              </g>
            );
          })}
        </g>
      ))}
      <Measure
        from={{ x: rack.x + rack.width + 14, y: rack.top + rack.shelf }}
        to={{ x: rack.x + rack.width + 14, y: rack.top + 2 * rack.shelf - trayHeight - 7 }}
      />
      <Words x={rack.x + rack.width + 22} y={rack.top + 58}>
        air
      </Words>
      <Arrow from={{ x: 42, y: bottom - 28 }} to={{ x: rack.x + 14, y: bottom - 4 }} />
      <Words x={4} y={bottom - 32}>
        points
      </Words>
      <Words x={size.width / 2} y={22} anchor="middle">
        four shelves, three trays each
      </Words>
    </Drawing>
  );
}
