import jsep from "jsep";

// powers bind tighter than products and from the right, as on paper
jsep.addBinaryOp("^", 11, true);

/** The tree of a written expression, of a working or a unit; throws where it is none. */
export const expression = (text: string): jsep.Expression => jsep(text);
export type Expression = jsep.Expression;
