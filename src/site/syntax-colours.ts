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

export const syntaxColours = inks('#24211c', '#f2ecde', '#5d564a', '#7c3a1d');
export const syntaxColoursDark = inks('#ece5d8', '#26231e', '#b5ab9a', '#e3a57f');
