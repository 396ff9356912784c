/** Marks `Base` with a name so that two quantities of the same shape cannot be mixed up. Nothing exists at run time. */
export type Brand<Base, Name extends string> = Base & { readonly __brand: Name };
