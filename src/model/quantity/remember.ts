/** Characters of the longest text that is remembered: what is longer is no name, quantity or text of a step, and would fill the memory. */
const longestRemembered = 5000;

/**
 * A function of one text that remembers what it made of it. When `most` texts are remembered all are forgotten, so that a long run holds no more;
 * texts of more than 5,000 characters never are.
 *
 * @param make gives the same for the same text, and nothing that a caller changes
 */
export function remembering<Made>(most: number, make: (text: string) => Made): (text: string) => Made {
  const made = new Map<string, { value: Made }>();
  return (text) => {
    if (text.length > longestRemembered) return make(text);
    const before = made.get(text);
    if (before) return before.value;
    const value = make(text);
    if (made.size >= most) made.clear();
    made.set(text, { value });
    return value;
  };
}
