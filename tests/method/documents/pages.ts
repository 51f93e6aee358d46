import { readFileSync } from 'node:fs';
import { answerMethod } from '../../../src/method/page/answer.ts';
import type { MethodPage, MethodQuestion } from '../../../src/method/page/types.ts';

/** A method of the house as worked out in the community workshop. */
export async function pageOf(id: string, asked: Partial<MethodQuestion> = {}): Promise<MethodPage> {
  const answer = await answerMethod({
    text: readFileSync(`methods/${id}.yaml`, 'utf8'),
    file: `methods/${id}.yaml`,
    shop: readFileSync('methods/shop.yaml', 'utf8'),
    start: '2027-01-12',
    ...asked,
  });
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  return answer.page;
}
