/**
 * Sizes of the class's tray, mm, from which the drawings of the how-to pages are made. They are the defaults of
 * methods/class-of-twelve.yaml and what it works out of them; tests/docs/tray.test.ts holds each of them to it.
 */
export const tray = {
  length: 420,
  width: 220,
  thickness: 19,
  cornerRadius: 25,
  /** The channel for the inlay, along the grain, with round ends. */
  channel: { length: 280, width: 18, depth: 6 },
  /** The blank as it is sawn before it is planed: the tray with what is left to cut away. */
  blank: { length: 527.95, width: 226.35, thickness: 27 },
  /** What the saw leaves outside the outline, for the bit to take. */
  outlineClearance: 3,
  template: { thickness: 12 },
  /** The straight bit with which the channel is routed, and the guide collar that runs in the window. */
  channelBit: { diameter: 10, collar: 16 },
  /** The bit with a bearing at its tip that trims the outline to the template. */
  templateBit: { diameter: 12.7, cuttingLength: 25.4 },
  roundOver: 3,
} as const;

/** What follows from the sizes of the tray, mm. */
export const trayDerived = {
  /** From each end of the tray to the end of the channel. */
  beyondChannel: (tray.length - tray.channel.length) / 2,
  /** From each long edge to the channel, where it lies in the middle. */
  besideChannel: (tray.width - tray.channel.width) / 2,
  /** Wood under the floor of the channel. */
  underChannel: tray.thickness - tray.channel.depth,
  /** From the bit to the edge of the window that guides its collar. */
  collarOffset: (tray.channelBit.collar - tray.channelBit.diameter) / 2,
} as const;
