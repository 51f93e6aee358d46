/** The address of the equations of a room. */
export const addressOfEquations = (room: string): string => `/reference/equations/${room}`;
