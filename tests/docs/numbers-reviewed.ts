/**
 * Numbers that stand in a sentence about the class, its trays or a channel, and are none of the case: rules of the trade, another board that the
 * sentence names, an exercise. By page, as written. What is said of the case itself never belongs here: quote it, `<Tray at="/parameters/length" />`.
 */
export const reviewed: Readonly<Record<string, readonly string[]>> = {
  'choosing-a-wood': ['300 mm'],
  'colour-and-pigment': ['0.04 g', '0.1 %', '37 g'],
  'dosing-and-mixing-resin': ['1 g', '2.3 %', '20 g'],
  'edges-feet-and-handles': ['16 mm', '101 mm', '160 mm', '4.7 mm'],
  'gluing-up-a-panel': ['100 mm'],
  'lesson-plans': ['10 days'],
  'making-and-using-templates': [
    '1220 × 610 mm',
    '140 × 45 mm',
    '286 × 24 mm',
    '48 × 24 in',
    '60 mm',
    '210 mm',
    '264 mm',
  ],
  'making-the-pocket': ['9 mm', '286 × 24 mm', '240 mm', '210 mm', '264 mm'],
  'oiling-and-waxing': ['3 coats'],
  'one-tray': ['10 days'],
  'pouring-an-inlay': ['28 mm'],
  'pouring-without-overheating': ['4.4 hours', '45 mm', '15 mm'],
  'salvaged-stock': ['0.4 %'],
  'sanding-to-a-finish': ['32 minutes'],
  'signing-photographing-and-packing': ['1.2 kg', '2 kg'],
  'wide-boards-panels-and-inlays': ['200 mm', '7.2 mm'],
  'working-time-of-resin': ['7.7 hours'],
};
