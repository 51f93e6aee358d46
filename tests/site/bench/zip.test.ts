import fc from 'fast-check';
import { strToU8, unzipSync, zipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { fileName, freeName, nameOfFile, tidyName, titleOf } from '../../../src/site/bench/names.ts';
import { readZip, zipOf } from '../../../src/site/bench/zip.ts';

const bytesOf = (files: Record<string, Uint8Array>) => zipSync(files) as Uint8Array<ArrayBuffer>;
const drafts = [
  { name: 'First tray', text: 'title: First\n' },
  { name: 'First Tray!', text: 'title: Second, größer\n' },
  { name: '../../etc/passwd', text: '# nothing\n' },
  { name: 'CON', text: 'a: 1\n' },
  { name: '木', text: 'b: 2\n' },
];

describe('a zip of all drafts', () => {
  test('holds a file for each, by names that are safe everywhere', () => {
    const files = unzipSync(zipOf(drafts));
    expect(Object.keys(files)).toEqual([
      'first-tray.yaml',
      'first-tray-2.yaml',
      'etc-passwd.yaml',
      'method-con.yaml',
      'method.yaml',
    ]);
    expect(new TextDecoder().decode(files['first-tray-2.yaml'])).toBe('title: Second, größer\n');
    expect(zipOf(drafts)).toEqual(zipOf(drafts));
  });

  test('comes back whole, whatever is in it', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.record({ name: fc.string(), text: fc.string({ unit: 'grapheme' }) }), {
          minLength: 1,
          maxLength: 5,
        }),
        async (some) => {
          const plain = some.map(({ name, text }) => ({
            name,
            text: text.replace(/^\ufeff+/, '').replace(/\r\n?/g, '\n'),
          }));
          const read = await readZip(zipOf(plain), 'all.zip');
          expect(read).toMatchObject({ ok: true, files: plain.map(({ text }) => ({ text })), left: [] });
        },
      ),
      { numRuns: 40 },
    );
  });

  test('made elsewhere, with folders, other files and a remark behind it, it is read too', async () => {
    const zip = bytesOf({
      'methods/': new Uint8Array(),
      'methods/tray.yaml': strToU8('title: Tray\r\n'),
      'methods/stored.yml': [strToU8('title: Stored'), { level: 0 }] as unknown as Uint8Array,
      '__MACOSX/methods/._tray.yaml': strToU8('x'),
      'notes.txt': strToU8('y'),
    });
    const remarked = new Uint8Array([...zip, ...strToU8('hello')]);
    remarked[zip.length - 2] = 5;
    expect(await readZip(remarked, 'all.zip')).toEqual({
      ok: true,
      files: [
        { name: 'tray', text: 'title: Tray\n' },
        { name: 'stored', text: 'title: Stored' },
      ],
      left: ['._tray', 'notes'],
    });
  });
});

describe('a damaged or hostile zip is refused in words', () => {
  const whole = zipOf([
    { name: 'a', text: 'title: Tray\n'.repeat(40) },
    { name: 'b', text: 'title: Other\n' },
  ]);

  test('cut anywhere, it is refused', async () => {
    for (let length = 0; length < whole.length; length += 1)
      expect(await readZip(whole.slice(0, length), 'all.zip')).toMatchObject({
        ok: false,
        message: expect.stringMatching(/^all\.zip cannot be read\. .*Nothing was taken from it\.$/),
      });
  });

  test('with one byte turned it is refused, or what it gives is what was packed', async () => {
    const packed = ['title: Tray\n'.repeat(40), 'title: Other\n'];
    for (let at = 0; at < whole.length; at += 1) {
      const turned = whole.slice();
      turned[at] = (turned[at] as number) ^ 0x41;
      const read = await readZip(turned, 'all.zip');
      if (!read.ok) continue;
      for (const { text } of read.files) expect(packed).toContain(text);
      // One whose name was hit is no method any more, and is named.
      expect(read.files.length + read.left.length).toBe(2);
    }
  });

  test.each([
    ['no zip', strToU8('<script>window.ran = 1</script>'.repeat(9)), /not a whole zip/],
    ['no method in it', bytesOf({ 'a.txt': strToU8('x') }), /No file in it ends in \.yaml/],
    ['not UTF-8', bytesOf({ 'a.yaml': Uint8Array.of(0xff, 0xfe, 0x41) }), /“a” is not text in UTF-8/],
    ['a bomb', bytesOf({ 'a.yaml': new Uint8Array(5_000_000) }), /“a” is larger than a method can be/],
    [
      'too many',
      bytesOf(Object.fromEntries(Array.from({ length: 201 }, (_, at) => [`${at}.yaml`, strToU8('a')]))),
      /more than 200 files/,
    ],
  ] as const)('%s', async (_, bytes, message) => {
    const read = await readZip(bytes as Uint8Array<ArrayBuffer>, 'all.zip');
    expect(read).toMatchObject({ ok: false, message: expect.stringMatching(message) });
  });

  test('a bomb that states a small size stops at that size', async () => {
    const zip = bytesOf({ 'a.yaml': new Uint8Array(5_000_000) });
    const view = new DataView(zip.buffer, zip.byteOffset);
    for (let at = 0; at < zip.length - 4; at += 1)
      if (view.getUint32(at, true) === 5_000_000) view.setUint32(at, 100, true);
    expect(await readZip(zip, 'all.zip')).toMatchObject({
      ok: false,
      message: expect.stringContaining('“a” is damaged'),
    });
  });

  test('one locked with a password is told as such', async () => {
    const zip = bytesOf({ 'a.yaml': strToU8('a: 1') });
    const view = new DataView(zip.buffer, zip.byteOffset);
    for (let at = 0; at < zip.length - 4; at += 1)
      if (view.getUint32(at, true) === 0x02014b50) view.setUint16(at + 8, 1, true);
    expect(await readZip(zip, 'all.zip')).toMatchObject({ ok: false, message: expect.stringContaining('password') });
  });
});

describe('names', () => {
  test('of files are safe and differ, whatever the draft is called', () => {
    fc.assert(
      fc.property(fc.array(fc.string({ unit: 'binary', maxLength: 90 }), { maxLength: 12 }), (names) => {
        const files: string[] = [];
        for (const name of names) files.push(fileName(name, { taken: files }));
        expect(new Set(files).size).toBe(names.length);
        for (const file of files) expect(file).toMatch(/^[a-z0-9][a-z0-9-]{0,70}\.yaml$/);
      }),
    );
    expect(fileName('Größe & Länge')).toBe('gro-e-lange.yaml');
    expect(fileName('lpt1')).toBe('method-lpt1.yaml');
  });

  test('of drafts are one line, free, and numbered where they are taken', () => {
    expect(tidyName('  a\n\u202eb\u0000 c ')).toBe('a b c');
    expect(freeName('Tray', ['tray', 'Tray (2)'])).toBe('Tray (3)');
    expect(freeName('\n', [])).toBe('A method');
    expect([...freeName('x'.repeat(200), ['x'.repeat(80)])].length).toBeLessThanOrEqual(80);
    expect(nameOfFile('C:\\shop\\My tray.yaml')).toBe('My tray');
  });

  test('the title of a text is read by its line alone', () => {
    expect(titleOf('method: 1\ntitle: A tray # small\nsteps: [')).toBe('A tray');
    expect(titleOf('title: "A \\"fine\\" tray"\n')).toBe('A "fine" tray');
    expect(titleOf("title: 'It''s'\n")).toBe("It's");
    expect(titleOf('  title: below\n')).toBeUndefined();
    expect(titleOf('title:\nmore: 1')).toBeUndefined();
  });
});
