import { useShared } from "../parts/styles";

interface Props {
  label: string;
  hint: string;
  words: readonly string[];
  /** The words that count, separated by commas. */
  text: string;
  onChange(text: string): void;
}

const split = (text: string): string[] =>
  text
    .split(/[,;]/)
    .map((word) => word.trim())
    .filter((word) => word !== "");

/** Some of a list of words, each to be ticked; folded until one is. */
export function WordList({ label, hint, words, text, onChange }: Props) {
  const s = useShared();
  const chosen = split(text);
  const toggle = (word: string) =>
    onChange((chosen.includes(word) ? chosen.filter((one) => one !== word) : [...chosen, word]).join(", "));
  // what a sheet says and the list does not know can be taken out
  const all = [...words, ...chosen.filter((word) => !words.includes(word))];
  return (
    <details style={{ gridColumn: "1 / -1" }}>
      <summary className={s.summary} title={hint}>
        {label}: {chosen.length === 0 ? "none stated" : chosen.join(", ")}
      </summary>
      <div role="group" aria-label={label} className={s.ticks}>
        {all.map((word) => (
          <label key={word}>
            <input type="checkbox" checked={chosen.includes(word)} onChange={() => toggle(word)} /> {word}
          </label>
        ))}
      </div>
    </details>
  );
}
