// What a message may be said with, by the names of its arguments in their order.

export type Examples = {
  readonly [code: string]: { readonly [argument: string]: unknown };
};
