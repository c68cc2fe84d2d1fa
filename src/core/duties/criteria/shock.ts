import { rated, strict } from "./rated";

export const shock = rated({
  id: "shock",
  property: "shock",
  heading: "shock",
  text: "How the grade bears blows",
  asked: "with an impact factor above 1",
  askedBy: ["impactFactor"],
  fields: ["impactFactor"],
  asks: ({ hasBlows }) => hasBlows,
  words: () => strict,
});
