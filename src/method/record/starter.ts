const advice = {
  draft: '# A shop method. Change it line by line: what is wrong with it is told beside it, as you type.',
  file: '# A shop method. Change it line by line, and after each change: kerf check <this file>',
} as const;

/** A method to begin from: small, whole, to be changed line by line. So a draft of the bench begins. */
export const starterMethod = `${advice.draft}
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
  discs: { what: "Sanding discs, P80 to P320", kind: abrasive, needs: [{ from: /calculations/grits/figures/discs, per: batch }] }
  cloths: { what: Cotton cloths, kind: cloth, needs: [{ amount: 2, per: piece }] }
  gloves: { what: Nitrile gloves, kind: gloves, needs: [{ amount: 4, per: batch }] }

# What is needed and stays.
tools:
  sander: { what: Random orbit sander, kind: random-orbit-sander }
  extractor: { what: Dust extractor, kind: dust-extractor }
  mask: { what: Fitted particle mask, kind: respirator }
  glasses: { what: Safety glasses, kind: eye-protection }
  ears: { what: Ear muffs, kind: hearing-protection }
  # Mineral oil is not known to heat its cloths; drying oils do, and nobody tells cloths apart in a bin.
  rag-can: { what: "Metal can with a tight lid, a third full of water", kind: rag-can }

# A step follows the one above it, unless “after” says otherwise.
steps:
  sand:
    title: Sand, grit by grit
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
        with:
          surface: planed
          finish: oil-or-wax
          drawer: "P80, P120, P150, P220, P320"
          area: { from: /calculations/coats/figures/area }
  oil:
    title: First coat of oil
    act: oil
    does: |
      The can stands ready first, water in it, lid beside it; count the cloths out. Wipe oil on both faces and the edges, and let it soak.
      {/calculations/coats/verdict}
    hands: { setUp: 5 min, each: 5 min }
    uses: [oil, cloths, gloves]
    tools: [rag-can]
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
  wipe:
    title: Wipe it dry, cloths into the can
    act: clear-up
    does: |
      After {/calculations/coats/figures/soak} wipe dry what still stands on it. Every cloth into the water, counted, lid on, before the gloves come off.
    hands: { setUp: 5 min, each: 4 min }
    uses: [cloths, gloves]
    tools: [rag-can]
    after:
      - { step: oil, least: { from: /calculations/coats/figures/soak, take: low }, most: 60 min }
  oil-again:
    title: Second coat of oil
    act: oil
    does: Wipe on another thin coat, and let it soak as well.
    hands: { setUp: 5 min, each: 5 min }
    uses: [oil, cloths, gloves]
    tools: [rag-can]
    after:
      - { step: wipe, least: { from: /calculations/coats/figures/recoat, take: high } }
  wipe-again:
    title: Wipe it dry again, cloths into the can
    act: clear-up
    does: Wipe it dry as after the first coat, and count the cloths into the water, lid on.
    hands: { setUp: 5 min, each: 4 min }
    uses: [cloths, gloves]
    tools: [rag-can]
    after:
      - { step: oil-again, least: { from: /calculations/coats/figures/soak, take: low }, most: 60 min }
`;

/** The same as `kerf new` writes it: a file is judged by a command. */
export const starterFile = starterMethod.replace(advice.draft, advice.file);
