/** The method that `kerf new` writes: small, whole, to be changed line by line. */
export const starterMethod = `# A shop method. Change it line by line, and after each change: kerf check <this file>
method: 1
title: A plain oiled board
for: Whoever writes a method for the first time.
language: en
makes:
  what: Oiled board with round corners
  pieces: { default: 1, least: 1, most: 12 }
sources:
  - text: Our own practice.

# What may be different the next time: each with a default and what is allowed.
parameters:
  wood: { kind: wood, label: Wood, default: sugar-maple }
  length: { kind: quantity, label: Length of the board, default: 400 mm, least: 250 mm, most: 600 mm }
  width: { kind: quantity, label: Width of the board, default: 240 mm, least: 150 mm, most: 300 mm }

# What is used up. A need is an amount, or the figure of a calculation.
materials:
  oil: { what: Mineral oil, kind: finish, needs: [{ from: /calculations/coats/uses/finish, per: batch }] }
  discs: { what: "Sanding discs, P120 to P220", kind: abrasive, needs: [{ amount: 3, per: piece }] }
  cloths: { what: Cotton cloths, kind: cloth, needs: [{ amount: 2, per: piece }] }

# What is needed and stays.
tools:
  sander: { what: Random orbit sander, kind: random-orbit-sander }
  extractor: { what: Dust extractor, kind: dust-extractor }
  mask: { what: Fitted particle mask, kind: respirator }
  glasses: { what: Safety glasses, kind: eye-protection }
  ears: { what: Ear muffs, kind: hearing-protection }

# A step follows the one above it, unless “after” says otherwise.
steps:
  sand:
    title: Sand to P220
    act: sand
    does: |
      By hand or machine: {/calculations/grits/verdict} Vacuum between the grits.
    tell: Under a low lamp no scratch runs across the grain.
    hands: { setUp: 5 min, each: 15 min }
    uses: [discs]
    tools: [sander, extractor, mask, glasses, ears]
    calculations:
      grits:
        use: grit-sequence
        with: { drawer: "P120, P150, P180, P220", area: 0.2 m², finish: oil-or-wax }
  oil:
    title: First coat of oil
    act: oil
    does: |
      Wipe on a thin coat; all pieces take {/calculations/coats/figures/volume} for both coats.
    hands: { setUp: 5 min, each: 5 min }
    uses: [oil, cloths]
    calculations:
      coats:
        use: finish-coats
        with:
          shape: rounded-rectangle
          length: { from: /parameters/length }
          width: { from: /parameters/width }
          thickness: 19 mm
          boards: { from: /makes/pieces }
          finish: mineral-oil
          coats: 2
  oil-again:
    title: Second coat of oil
    act: oil
    does: Wipe on another thin coat, and wipe dry what still stands after an hour.
    hands: { each: 5 min }
    uses: [oil, cloths]
    after:
      - { step: oil, least: { from: /calculations/coats/figures/recoat, take: high } }
`;
