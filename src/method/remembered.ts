/**
 * The same function, which keeps its last answers: texts of a method stay while a reader tries sizes, and are read again for each.
 *
 * @param of what depends on its text alone, and whose answer nobody changes
 * @param most answers that are kept; what was asked longest ago is forgotten first
 */
export function remembered<Answer>(of: (text: string) => Answer, most: number): (text: string) => Answer {
  const answers = new Map<string, Answer>();
  return (text) => {
    const known = answers.get(text);
    if (known !== undefined) return known;
    const answer = of(text);
    answers.set(text, answer);
    for (const oldest of answers.keys()) {
      if (answers.size <= most) break;
      answers.delete(oldest);
    }
    return answer;
  };
}
