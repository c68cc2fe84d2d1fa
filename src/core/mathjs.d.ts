import type { FactoryFunction } from "mathjs";

// exported by the library, absent from its typings
declare module "mathjs" {
  export const createUnitClass: FactoryFunction;
}
