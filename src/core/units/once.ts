/** Gives what `make` makes, which is made when it is first asked for and is the same from then on. */
export function once<Made>(make: () => Made): () => Made {
  let made: { readonly value: Made } | null = null;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}
