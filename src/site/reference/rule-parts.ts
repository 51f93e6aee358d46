/** The list of all rules, as the page of a group leads back to it. */
export const listOfRules = { to: '/reference/rules', all: 'All rules' };

/** Of what a check says that no rule finds; it stands with the groups of rules. */
export const besidesGroup = 'besides';

/** The address of the rules that concern one thing. */
export const addressOfRules = (group: string): string => `/reference/rules/${group}`;
