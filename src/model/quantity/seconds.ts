/** Lengths of time in s. */
export const minute = 60;
export const hour = 3600;
export const day = 86_400;
export const week = 604_800;
