import { pathNumber } from './path.ts';
import { lineStyle, type Sheet } from './sheet.ts';

/**
 * A sheet as an SVG file at true size: one unit is a millimetre, curves are true curves. Its texts are our own; nothing of
 * a drawing that was read goes into it but numbers.
 */
export function sheetSvg(sheet: Sheet): string {
  const n = (value: number) => pathNumber(value, 3);
  const lines = sheet.lines.map(({ role, data }) => {
    const { width, dashes } = lineStyle[role];
    const dashed = dashes.length > 0 ? ` stroke-dasharray="${dashes.join(' ')}"` : '';
    return `  <path class="${role}" d="${data}" fill="none" stroke="#000" stroke-width="${width}"${dashed}/>`;
  });
  const texts = sheet.texts.map(
    ({ text, at, size }) =>
      `  <text x="${n(at.x)}" y="${n(sheet.height - at.y)}" font-family="sans-serif" font-size="${n(size)}">${text}</text>`,
  );
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${n(sheet.width)}mm" height="${n(sheet.height)}mm" viewBox="0 0 ${n(sheet.width)} ${n(sheet.height)}">`,
    ...lines,
    ...texts,
    '</svg>',
    '',
  ].join('\n');
}
