import { mild, rated, strict } from "./rated";

export const dirt = rated({
  id: "dirt",
  property: "dirt",
  heading: "dirt",
  text: "How the grade runs in dirt; where there is some, a step milder than where it is heavy",
  asked: "where there is dirt",
  askedBy: ["dirt"],
  fields: ["dirt"],
  asks: ({ given }) => given.dirt === "some" || given.dirt === "heavy",
  words: ({ given }) => (given.dirt === "some" ? mild : strict),
});
