import { BooleanNumber } from "@univerjs/core";
import { FunctionType } from "@univerjs/preset-sheets-core";
import type { IFunctionInfo } from "@univerjs/preset-sheets-core";
import { sheetName } from "./metadata";
import type { FunctionMeta } from "./metadata";

const flag = (yes: boolean | undefined): BooleanNumber => (yes ? BooleanNumber.TRUE : BooleanNumber.FALSE);

/** The grid's argument hint and autocomplete entry of one function. */
export const hintOf = (meta: FunctionMeta): IFunctionInfo => ({
  functionName: sheetName(meta),
  functionType: FunctionType.User,
  description: meta.description ?? "",
  abstract: meta.description ?? "",
  functionParameter: meta.parameters.map((p) => ({
    name: p.name,
    detail: p.description ?? "",
    example: p.name,
    require: flag(!p.optional),
    repeat: flag(p.repeating),
  })),
});
