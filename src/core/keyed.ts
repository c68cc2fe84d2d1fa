/** Records whose keys are known words: JavaScript's own functions would make any text of them. */
type Keyed<K extends string, V> = Readonly<Partial<Record<K, V>>>;

export const keysOf = <K extends string>(of: Keyed<K, unknown>): K[] => Object.keys(of) as K[];

/** A record with the same keys, each with what is made of its value. */
export const mapped = <K extends string, A, B>(of: Keyed<K, A>, make: (value: A, key: K) => B): Keyed<K, B> =>
  Object.fromEntries((Object.entries(of) as [K, A][]).map(([key, value]) => [key, make(value, key)])) as Keyed<K, B>;
