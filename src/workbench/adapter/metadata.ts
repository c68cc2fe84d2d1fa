/** The parts of Office's custom-function metadata (functions.json) that a host acts on. */
export interface ParameterMeta {
  readonly name: string;
  readonly description?: string;
  readonly dimensionality?: "scalar" | "matrix";
  readonly optional?: boolean;
  readonly repeating?: boolean;
}
export interface FunctionMeta {
  readonly id: string;
  readonly name: string;
  readonly description?: string;
  readonly parameters: readonly ParameterMeta[];
}
export interface Metadata {
  /** Without it a host answers a cell error itself and does not call the function. */
  readonly allowErrorForDataTypeAny?: boolean;
  readonly functions: readonly FunctionMeta[];
}

/** The prefix of every function in a sheet; Excel takes it from the add-in's manifest. */
export const namespace = "BUSH";

/** A function as it is typed: `BUSH.PRESSURE`. */
export const sheetName = (meta: FunctionMeta): string => `${namespace}.${meta.name.toUpperCase()}`;

/** `BUSH.PRESSURE(load, bore, length, [units])` */
export function signature(meta: FunctionMeta): string {
  const names = meta.parameters.map((p) => {
    const name = p.repeating ? `${p.name}, …` : p.name;
    return p.optional ? `[${name}]` : name;
  });
  return `${sheetName(meta)}(${names.join(", ")})`;
}
