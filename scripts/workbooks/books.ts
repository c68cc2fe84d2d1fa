import type { FileBook } from "./book";
import { fit } from "./fit";
import { quotes } from "./quotes";
import { sizing } from "./sizing";
import { worked } from "./worked";

export const books: readonly FileBook[] = [sizing, fit, quotes, worked];
