const prototypes = [Object, Array, String, Number, Boolean, Function, Map, Set].map(
  ({ prototype }) => ({ prototype, before: Reflect.ownKeys(prototype).length }),
);

/** Says which prototype that all objects share has been written to; `null` for none. */
export function pollution(): string | null {
  const changed = prototypes.find(
    ({ prototype, before }) => Reflect.ownKeys(prototype).length !== before,
  );
  return changed ? `the prototype of ${changed.prototype.constructor.name} was changed` : null;
}
