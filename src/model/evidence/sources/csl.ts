/** An item of the source list in CSL-JSON (citation style language data, schema 1.0.2); `note` says how the copy was read. */
export interface CslItem {
  readonly id: string;
  readonly type:
    | 'report'
    | 'book'
    | 'chapter'
    | 'article-journal'
    | 'regulation'
    | 'legislation'
    | 'standard'
    | 'dataset'
    | 'webpage';
  readonly title: string;
  /** Short name for a line beside a number; the whole title where absent. */
  readonly 'title-short'?: string;
  readonly author?:
    | readonly { readonly family: string; readonly given?: string }[]
    | readonly { readonly literal: string }[];
  readonly publisher?: string;
  readonly 'container-title'?: string;
  readonly number?: string;
  readonly volume?: string;
  readonly page?: string;
  readonly issued?: { readonly 'date-parts': readonly (readonly number[])[] };
  readonly note?: string;
}

/** Author of the handbook and of most reports on wood cited here, as libraries list it. */
export const forestProducts = 'U.S. Department of Agriculture, Forest Service, Forest Products Laboratory';
