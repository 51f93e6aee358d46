export { codeOf, longestAddress, typedAddress } from './code.ts';
export { packetOf } from './packet.ts';
export type { MethodPacket, PacketOptions, SheetDocument } from './types.ts';
