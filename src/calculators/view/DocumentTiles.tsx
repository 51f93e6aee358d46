import type { Drawing } from '../../model/evidence/index.ts';
import { eitherPaper as sheet } from '../../model/outline/tiles.ts';
import type { ReaderUnits } from '../../model/quantity/index.ts';
import { tileMarks } from '../kit/tile-marks.ts';
import { Shapes, Words } from './DrawingView.tsx';
import drawn from './drawing.module.css';
import styles from './paper.module.css';

interface TrueSizeProps {
  drawing: Drawing;
  title: string;
  units: ReaderUnits;
}

/** A drawing at true size, a sheet of paper a tile. */
export function TrueSize({ drawing, title, units }: TrueSizeProps) {
  return tileMarks(drawing, title, units).map((tile) => {
    const [x, y, width, height] = tile.window;
    const [cutX, cutY, cutWidth, cutHeight] = tile.cut;
    return (
      <div key={`${tile.row},${tile.column}`} className={styles.tile} data-part="tile">
        <svg
          viewBox={`0 0 ${sheet.width} ${sheet.height}`}
          style={{ width: `${sheet.width}mm`, height: `${sheet.height}mm` }}
          aria-hidden="true"
        >
          <title>{drawing.title}</title>
          <svg x={cutX} y={cutY} width={width} height={height} viewBox={`${x} ${y} ${width} ${height}`}>
            <title>{drawing.title}</title>
            <Shapes marks={tile.drawing} />
            {tile.crosses.map((path) => (
              <path key={path} className={styles.cross} d={path} />
            ))}
          </svg>
          <rect className={styles.cut} x={cutX} y={cutY} width={cutWidth} height={cutHeight} />
          {tile.bars.map((path) => (
            <path key={path} className={styles.bar} d={path} />
          ))}
          {tile.words.map((words) => (
            <Words key={words.text} words={words} />
          ))}
          {tile.key.map(({ role, path, ...words }) => (
            <g key={role} className={drawn.shapes}>
              <path className={drawn[role]} d={path} vectorEffect="non-scaling-stroke" />
              <Words words={words} />
            </g>
          ))}
        </svg>
      </div>
    );
  });
}
