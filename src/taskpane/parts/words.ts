/** "1 cell", "12 cells". */
export const counted = (count: number, word: string): string => `${count} ${word}${count === 1 ? "" : "s"}`;
