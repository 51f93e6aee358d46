/**
 * A function of one text that remembers what it made of it. When `most` texts are remembered all are forgotten, so that a long run holds no more.
 *
 * @param make gives the same for the same text, and nothing that a caller changes
 */
export function remembering<Made>(most: number, make: (text: string) => Made): (text: string) => Made {
  const made = new Map<string, { value: Made }>();
  return (text) => {
    const before = made.get(text);
    if (before) return before.value;
    const value = make(text);
    if (made.size >= most) made.clear();
    made.set(text, { value });
    return value;
  };
}
