/** Shaft materials that the data name. */
export const shafts = [
  "hardened steel",
  "stainless steel",
  "soft steel",
  "hard-anodised aluminium",
  "chromed",
] as const;
