import { Colors, DxfWriter, LWPolylineFlags, Units } from '@tarikjabiri/dxf';
import type { LineRole, Sheet } from './sheet.ts';

/** Layer of each kind of line, so that a machine can be told to cut one and leave another. */
const layers: Readonly<Record<LineRole, string>> = {
  outline: 'OUTLINE',
  rough: 'ROUGH',
  centre: 'CENTRE',
  grain: 'GRAIN',
  scale: 'SCALE',
  edge: 'BLANK',
};

/**
 * A sheet as a DXF file in millimetres, y upwards, one layer for each kind of line. Curves are polylines within the
 * shape's tolerance.
 *
 * The library behind it is only for this: load this module when a DXF is wanted.
 */
export function sheetDxf(sheet: Sheet): string {
  const writer = new DxfWriter();
  writer.setUnits(Units.Millimeters);
  for (const name of new Set(sheet.lines.map(({ role }) => layers[role]))) writer.addLayer(name, Colors.White);
  for (const { role, closed, points } of sheet.lines) {
    writer.addLWPolyline(
      points.map(({ x, y }) => ({ point: { x, y } })),
      { flags: closed ? LWPolylineFlags.Closed : LWPolylineFlags.None, layerName: layers[role] },
    );
  }
  return writer.stringify();
}
