/** The same messages in another language: every key, none more, in MessageFormat 2 with the same arguments. */
export type Translated<Words> = { readonly [Key in keyof Words]: string };
