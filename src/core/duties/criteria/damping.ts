import { rated, strict } from "./rated";

export const damping = rated({
  id: "damping",
  property: "damping",
  heading: "damping",
  text: "How the grade damps vibration",
  asked: "where damping is wanted",
  fields: ["damping"],
  asks: ({ given }) => given.damping === "yes",
  words: () => strict,
});
