import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, test } from 'vitest';
import { packetHtml } from '../../src/command/sheet-html.ts';
import { packetOf } from '../../src/method/documents/index.ts';
import { answerNumbers } from '../../src/method/page/answer.ts';
import { defaultUnits } from '../../src/model/quantity/index.ts';
import { MethodView } from '../../src/site/method/MethodView.tsx';
import { readMethodTexts } from '../../src/store/index.ts';

/** Brackets of a marked quantity, with some of what stands before and in it. */
const marks = (markup: string) => markup.match(/.{0,40}⟦[^⟧]*⟧?/g) ?? [];
const methods = readMethodTexts();

describe.each(methods.map(({ id, text }) => [id, text] as const))('what is shown of %s', (id, text) => {
  test('holds no mark of a quantity, in its drawings neither', async () => {
    const answered = await answerNumbers({ text, file: `methods/${id}.yaml` });
    if (!answered.ok) throw new Error(JSON.stringify(answered.problems));
    const { page } = answered;
    expect(marks(renderToStaticMarkup(<MethodView page={page} />))).toEqual([]);
    const packet = packetOf(page, { paper: 'a4', made: '2027-01-10' });
    for (const system of ['metric', 'inch'] as const)
      expect(marks(packetHtml(packet, { ...defaultUnits, system }))).toEqual([]);
  });
});
