import { rated, strict } from "./rated";

export const damping = rated({
  id: "damping",
  property: "damping",
  heading: "damping",
  text: "How the grade damps vibration",
  asked: "where damping is wanted",
  askedBy: ["damping"],
  fields: ["damping"],
  asks: ({ given }) => given.damping === "yes",
  words: () => strict,
});
