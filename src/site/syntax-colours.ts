import type { PrismTheme } from 'prism-react-renderer';

/** Code in one ink with a second for what was written as text; readable on both papers. */
function inks(plain: string, ground: string, quiet: string, accent: string): PrismTheme {
  return {
    plain: { color: plain, backgroundColor: ground },
    styles: [
      { types: ['comment', 'punctuation', 'operator'], style: { color: quiet } },
      { types: ['string', 'number', 'boolean', 'attr-value'], style: { color: accent } },
    ],
  };
}

/** The colours of code in one scheme of a site. */
export const syntaxColours = ({
  ink,
  wash,
  muted,
  accent,
}: Record<'ink' | 'wash' | 'muted' | 'accent', string>): PrismTheme => inks(ink, wash, muted, accent);
