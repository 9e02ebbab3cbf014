// What several findings and charts ask of one record, worked out once.

/**
 * make, whose answers are kept as long as the record that they are of: it must never change, and make must be pure.
 * @example onceFor((of: { x: number }) => [of.x]) // the same list for the same record
 */
export function onceFor<Of extends object, Made>(make: (of: Of) => Made): (of: Of) => Made {
  const known = new WeakMap<Of, { readonly made: Made }>();
  return (of) => {
    const before = known.get(of);
    if (before) return before.made;
    const made = make(of);
    known.set(of, { made });
    return made;
  };
}
