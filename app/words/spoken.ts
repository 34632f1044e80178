/** What another language has to say for the English words: the same keys, any text. */
export type Spoken<T> = T extends string
  ? string
  : T extends (...about: infer About) => infer Said
    ? (...about: About) => Said extends string ? string : Said
    : { readonly [Key in keyof T]: Spoken<T[Key]> };
