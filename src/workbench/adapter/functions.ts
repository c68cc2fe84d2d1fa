import { BaseFunction } from "@univerjs/preset-sheets-core";
import type { BaseValueObject, IFunctionNames } from "@univerjs/preset-sheets-core";
import { callFunction } from "./call";
import type { HostFunction } from "./customFunctions";
import { sheetName } from "./metadata";
import type { FunctionMeta } from "./metadata";
import { givenOf, gridValue } from "./values";

/**
 * A host function as a class of the grid. The grid's simpler registration by plain callback turns blanks into 0 and
 * text such as "3E5" into a number, so it will not do.
 */
export function gridFunction(
  meta: FunctionMeta,
  fn: HostFunction,
  takesErrors: boolean,
): [new () => BaseFunction, IFunctionNames] {
  const name = sheetName(meta);
  class GridFunction extends BaseFunction {
    constructor() {
      super(name);
    }
    override calculate(...variants: BaseValueObject[]): BaseValueObject {
      return gridValue(callFunction(meta, fn, variants.map(givenOf), takesErrors));
    }
  }
  return [GridFunction, name];
}
