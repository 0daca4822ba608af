/** A pure function that looks at the same thing only once. What it gave is forgotten together with the thing. */
export function remembered<K extends object, V>(look: (thing: K) => V): (thing: K) => V {
  const seen = new WeakMap<K, { readonly value: V }>();
  return (thing) => {
    let known = seen.get(thing);
    if (known === undefined) seen.set(thing, (known = { value: look(thing) }));
    return known.value;
  };
}
