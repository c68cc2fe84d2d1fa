import { atBestCare, rated } from "./rated";

export const vacuum = rated({
  id: "vacuum",
  property: "vacuum",
  heading: "vacuum",
  text: "How the grade serves in vacuum; at best care, since PV limits rely on air",
  asked: "in vacuum",
  askedBy: ["vacuum"],
  fields: ["vacuum"],
  asks: ({ given }) => given.vacuum === "yes",
  words: () => atBestCare,
  because: ": PV limits rely on air",
});
