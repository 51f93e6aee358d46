const signs: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', '#39': "'", '#x27': "'" };

/** The words of a heading that is given as HTML: without its tags, and with what stands for a sign written as that sign. */
export const headingWords = (html: string): string =>
  html.replace(/<[^>]*>/g, '').replace(/&(#?\w+);/g, (whole, name: string) => signs[name.toLowerCase()] ?? whole);
