/** Lines of so many characters at most, unless a single word has more. */
export function wrapped(text: string, longest: number): string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(" ")) {
    const isFull = line !== "" && line.length + word.length >= longest;
    if (isFull) lines.push(line);
    line = isFull || line === "" ? word : `${line} ${word}`;
  }
  return [...lines, line];
}
