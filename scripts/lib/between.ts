/** A hand-written text with the part between its markers `<!-- name -->` and `<!-- /name -->` renewed. */
export function between(text: string, name: string, part: string): string {
  const [start, end] = [`<!-- ${name} -->`, `<!-- /${name} -->`];
  const [before, after] = [text.indexOf(start), text.indexOf(end)];
  if (before < 0 || after < before) throw new Error(`the markers ${start} and ${end} are missing`);
  return `${text.slice(0, before + start.length)}\n\n${part}\n\n${text.slice(after)}`;
}
