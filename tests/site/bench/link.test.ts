import { deflateRawSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { starterMethod } from '../../../src/method/record/starter.ts';
import { fragmentOf, linkOf, longestLink, readFragment } from '../../../src/site/bench/link.ts';

const packed = (content: string | Uint8Array) =>
  `#method=${deflateRawSync(content, { level: 9 }).toString('base64url')}`;

describe('a method in a link', () => {
  test('any text comes back the same', async () => {
    await fc.assert(
      fc.asyncProperty(fc.string({ unit: 'grapheme', maxLength: 400 }), async (text) => {
        expect(await readFragment((await fragmentOf(text)) ?? '')).toEqual({ ok: true, text });
      }),
      { numRuns: 40 },
    );
  });

  test('the small method to begin from fits, and its address holds nothing that a mail program breaks', async () => {
    const made = await linkOf('https://kerf.example/bench', starterMethod);
    if (!made.ok) throw new Error(made.message);
    expect(made.link.length).toBeLessThan(2_500);
    expect(made.link).toMatch(/^https:\/\/kerf\.example\/bench#method=[A-Za-z0-9_-]+$/);
  });

  test('one that is too long is refused with its length, and the file is offered', async () => {
    const long = Array.from({ length: 20_000 }, (_, at) => `${(at * 7919) % 10_007}`).join(' ');
    const made = await linkOf('https://kerf.example/bench', long);
    expect(made).toMatchObject({ ok: false });
    expect(made).toHaveProperty('message', expect.stringMatching(/would be [\d,]+ characters long.*8,000.*file/));
    expect(longestLink).toBe(8_000);
  });

  test('an address without a method is none', async () => {
    for (const fragment of ['', '#', '#how', '#methods=abc', '#metho'])
      expect(await readFragment(fragment)).toBeUndefined();
  });
});

describe('a hostile link', () => {
  test('200 MB in a small link stops while it is unpacked', async () => {
    const fragment = packed(new Uint8Array(200_000_000));
    expect(fragment.length).toBeLessThan(262_144);
    const before = process.memoryUsage().arrayBuffers;
    expect(await readFragment(fragment)).toEqual({
      ok: false,
      message: expect.stringContaining('more than 131,072 characters'),
    });
    expect(process.memoryUsage().arrayBuffers - before).toBeLessThan(50_000_000);
  });

  test('what is cut, turned or no base64 is told as damaged', async () => {
    const whole = (await fragmentOf(starterMethod)) ?? '';
    const cut = [whole.slice(0, -20), whole.slice(0, 40), '#method=', '#method=%3Cscript%3E', '#method=a', `${whole}!`];
    for (const fragment of cut)
      expect(await readFragment(fragment), fragment.slice(0, 40)).toEqual({
        ok: false,
        message: expect.stringContaining('damaged'),
      });
  });

  test('bytes that are no text, and a text of too many characters, are refused', async () => {
    expect(await readFragment(packed(Uint8Array.of(0xff, 0xfe, 0x41)))).toMatchObject({ ok: false });
    expect(await readFragment(packed('a'.repeat(131_073)))).toMatchObject({ ok: false });
    expect(await readFragment(packed('a'.repeat(131_072)))).toMatchObject({ ok: true });
    expect(await readFragment(`#method=${'A'.repeat(300_000)}`)).toMatchObject({ ok: false });
  });

  test('nothing that is typed behind the # ends in an exception', async () => {
    await fc.assert(
      fc.asyncProperty(fc.string({ maxLength: 200 }), async (typed) => {
        await readFragment(`#method=${typed}`);
      }),
      { numRuns: 200 },
    );
  });
});
