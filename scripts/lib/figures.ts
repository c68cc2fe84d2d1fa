const marker = /(<!-- (\w+)\.(\w+) -->)[^<]*(<!-- -->)/g;

/** A hand-written text whose figures between `<!-- group.name -->` and `<!-- -->` are renewed; an unknown name is an error. */
export function withFigures(text: string, figures: Readonly<Record<string, Readonly<Record<string, number>>>>): string {
  return text.replace(marker, (_, start: string, group: string, name: string, end: string) => {
    const value = figures[group]?.[name];
    if (value === undefined) throw new Error(`no figure is called ${group}.${name}`);
    return `${start}${value}${end}`;
  });
}
