/** The address of the sources of one subject. */
export const addressOfSources = (subject: string): string => `/reference/sources/${subject}`;
