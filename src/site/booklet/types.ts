/** A stage of the work, as it is printed in one. */
export interface Booklet {
  id: string;
  title: string;
  /** Ids of every caution of its pages, each once. */
  cautions: readonly string[];
  pages: readonly { name: string; title: string; description: string }[];
}
