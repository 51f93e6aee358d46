import { describe, expect, test } from 'vitest';
import { starterMethod } from '../../../src/method/record/starter.ts';
import { defaultUnits } from '../../../src/model/quantity/index.ts';
import { TextAnswers, type TextQuestion } from '../../../src/site/bench/text-answers.ts';
import { TextService, type TextWorker } from '../../../src/site/bench/text-service.ts';

const problems = (text: string): TextQuestion => ({ kind: 'problems', text, file: 'a.yaml', units: defaultUnits });

/** A worker that answers when it is told to. */
class SlowWorker implements TextWorker {
  onmessage: TextWorker['onmessage'] = null;
  onerror: TextWorker['onerror'] = null;
  asked: { number: number; question: TextQuestion }[] = [];
  ended = false;
  postMessage(message: { number: number; question: TextQuestion }) {
    this.asked.push(message);
  }
  terminate() {
    this.ended = true;
  }
  reply(at: number) {
    const { number, question } = this.asked[at] as SlowWorker['asked'][number];
    this.onmessage?.({ data: { number, answer: question.text } } as MessageEvent);
  }
}

describe('questions about a text', () => {
  test('of several looks the latest alone is answered, and none builds a queue', async () => {
    const worker = new SlowWorker();
    const service = new TextService(() => worker);
    const asked = ['a', 'ab', 'abc', 'abcd'].map((text) => service.ask(problems(text)));
    expect(worker.asked.map(({ question }) => question.text)).toEqual(['a']);
    worker.reply(0);
    expect(worker.asked.map(({ question }) => question.text)).toEqual(['a', 'abcd']);
    worker.reply(1);
    expect(await Promise.all(asked)).toEqual([undefined, undefined, undefined, 'abcd']);
  });

  test('an offer and a word about a place do not wait for the look', async () => {
    const worker = new SlowWorker();
    const service = new TextService(() => worker);
    void service.ask(problems('a'));
    const offer = service.ask({ kind: 'complete', text: 'offer', offset: 1, units: defaultUnits });
    expect(worker.asked).toHaveLength(2);
    worker.reply(1);
    expect(await offer).toBe('offer');
  });

  test('where a worker fails, or none can be made, the page answers itself, and nobody waits for ever', async () => {
    const here = async () => ({ answer: async ({ text }: TextQuestion) => `here: ${text}` as never });
    const worker = new SlowWorker();
    const service = new TextService(() => worker, here);
    const asked = service.ask(problems('a'));
    worker.onerror?.({} as ErrorEvent);
    expect(await asked).toBe('here: a');
    expect(worker.ended).toBe(true);
    expect(await service.ask(problems('b'))).toBe('here: b');
    const without = new TextService(() => {
      throw new Error('no workers here');
    }, here);
    expect(await without.ask(problems('c'))).toBe('here: c');
    const broken = new TextService(
      () => {
        throw new Error('no workers here');
      },
      async () => ({ answer: () => Promise.reject(new Error('broken')) }),
    );
    expect(await broken.ask(problems('d'))).toBeUndefined();
    expect(await broken.ask(problems('e'))).toBeUndefined();
  });

  test('what could not be fetched without a network is fetched with the next question, and no error is left to the browser', async () => {
    let network = false;
    const worker = new SlowWorker();
    const service = new TextService(
      () => worker,
      async () => {
        if (!network) throw new Error('no network');
        return { answer: async ({ text }: TextQuestion) => `here: ${text}` as never };
      },
    );
    const asked = service.ask(problems('a'));
    let left = true;
    worker.onerror?.({
      preventDefault: () => {
        left = false;
      },
    } as ErrorEvent);
    expect(await asked).toBeUndefined();
    expect(left).toBe(false);
    network = true;
    expect(await service.ask(problems('b'))).toBe('here: b');
  });

  test('closing ends every question', async () => {
    const worker = new SlowWorker();
    const service = new TextService(() => worker);
    const asked = [service.ask(problems('a')), service.ask(problems('b'))];
    service.close();
    expect(await asked[0]).toBeUndefined();
    expect(await Promise.race([asked[1], Promise.resolve('still open')])).toBeUndefined();
  });
});

describe('the answers', () => {
  const answers = new TextAnswers();

  test('a broken text is told where, with the mend; mended it is clean again, and values stand beside references', async () => {
    const broken = starterMethod.replace('    act: sand', '    atc: sand');
    const found = (await answers.answer(problems(broken))) as readonly { line: number; message: string }[];
    const line = broken.split('\n').findIndex((each) => each.includes('atc:')) + 1;
    expect(found.find((each) => each.line === line)).toMatchObject({
      level: 'error',
      fixes: [{ title: expect.stringContaining('act') }],
    });
    const clean = (await answers.answer(problems(starterMethod))) as readonly { level: string }[];
    expect(clean.filter(({ level }) => level === 'error' || level === 'stop')).toEqual([]);
    const offset = starterMethod.indexOf('/calculations/coats/figures/soak') + 3;
    const hover = await answers.answer({ kind: 'hover', text: starterMethod, offset, units: defaultUnits });
    expect(JSON.stringify(hover)).toMatch(/\d+ (to \d+ )?min/);
  });

  test('a shop record changes what is found, and one that is broken is left aside', async () => {
    const ask = { ...problems(starterMethod), shop: 'name: [' } as TextQuestion;
    expect(Array.isArray(await answers.answer(ask))).toBe(true);
  });
});
