import type { Completions, EditContext, EditProblem, Hover } from '../../method/edit/index.ts';
import { completeAt, hoverAt, lookOver, usualNames } from '../../method/edit/index.ts';
import { readShop, type Shop } from '../../method/shop/index.ts';
import type { ReaderUnits } from '../../model/quantity/index.ts';

/** What the editor asks about a text. */
export type TextQuestion =
  | { kind: 'problems'; text: string; file: string; shop?: string; units: ReaderUnits }
  | { kind: 'complete' | 'hover'; text: string; offset: number; units: ReaderUnits };

export interface TextAnswer {
  problems: readonly EditProblem[];
  complete: Completions | undefined;
  hover: Hover | undefined;
}

/** Answers of calculators that are kept from one look to the next. */
const mostKept = 400;

/** Answers the editor's questions about a text; keeps the case that was worked out last, whose values stand beside references. */
export class TextAnswers {
  readonly #memo = new Map<string, unknown>();
  #shop: { text: string; shop: Shop | undefined } | undefined;
  #context: Pick<EditContext, 'worked' | 'shop'> = {};

  #shopOf(text: string | undefined): Shop | undefined {
    if (text === undefined) return undefined;
    if (this.#shop?.text !== text) this.#shop = { text, shop: readShop(text).shop };
    return this.#shop.shop;
  }

  async problems({ text, file, shop: shopText, units }: Extract<TextQuestion, { kind: 'problems' }>) {
    if (this.#memo.size > mostKept) this.#memo.clear();
    const shop = this.#shopOf(shopText);
    const looked = await lookOver(text, file, {
      units,
      names: usualNames,
      memo: this.#memo,
      ...(shop ? { shop } : {}),
    });
    // Of a text that is broken while somebody types the last case that was sound still tells most values.
    const worked = looked.worked ?? this.#context.worked;
    this.#context = { ...(worked ? { worked } : {}), ...(shop ? { shop } : {}) };
    return looked.problems;
  }

  async answer(question: TextQuestion): Promise<TextAnswer[TextQuestion['kind']]> {
    if (question.kind === 'problems') return this.problems(question);
    const { kind, text, offset, units } = question;
    const context = { names: usualNames, units, ...this.#context };
    return kind === 'complete' ? completeAt(text, offset, context) : hoverAt(text, offset, context);
  }
}
