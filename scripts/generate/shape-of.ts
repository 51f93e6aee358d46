import type * as z from 'zod/mini';

type Plain<Type> = Type extends readonly (infer Item)[]
  ? Plain<Item>[]
  : Type extends object
    ? { -readonly [Key in keyof Type]: Plain<Type[Key]> }
    : Type;
type Same<One, Other> =
  (<Any>() => Any extends One ? 1 : 2) extends <Any>() => Any extends Other ? 1 : 2 ? unknown : 'a part more or less';

/** The schema of a type: one that lacks a field of the type, has one more, or allows other values does not compile. */
export const shapeOf =
  <Type>() =>
  <Schema extends z.ZodMiniType>(schema: Schema & Same<Plain<z.output<Schema>>, Plain<Type>>) =>
    schema as unknown as z.ZodMiniType<Type>;
