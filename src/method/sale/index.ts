export { type BatchLabelWords, batchLabelDocument, batchLabelLines, batchLabelOf } from './batch-label.ts';
export { dayNotes } from './day-notes.ts';
export { type SaleFacts, saleFacts } from './facts.ts';
export { type Listing, listingOf } from './listing.ts';
export { quoteDocument } from './quote.ts';
export { priceNotes, type QuotePrice, quotePrice } from './quote-price.ts';
export {
  daysAfter,
  promiseNotes,
  type QuoteTexts,
  type QuoteTyped,
  readQuote,
  startFault,
  usualDays,
  usualRepair,
} from './typed.ts';
