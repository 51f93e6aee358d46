export { type AddressedCase, caseQuery, methodAddress, sheetsAddress } from './address.ts';
export { codeOf, longestAddress, typedAddress } from './code.ts';
export { packetOf } from './packet.ts';
export { styleString } from './style-string.ts';
export type { MethodPacket, PacketOptions, SheetDocument } from './types.ts';
