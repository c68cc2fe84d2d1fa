export {};

// exported by the library, absent from its typings
declare module "mathjs" {
  /** Makes the Unit class over the arithmetic that it is given. */
  export function createUnitClass(parts: Readonly<Record<string, unknown>>): unknown;
}
