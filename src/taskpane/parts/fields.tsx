import { Input, Select } from "@fluentui/react-components";
import type { InputProps, SelectProps } from "@fluentui/react-components";

const narrow = { minWidth: 0, width: "100%" } as const;

/** Fluent's own controls, which would otherwise be wider than half a pane. */
export const Choice = (props: SelectProps) => <Select {...props} root={{ style: narrow }} select={{ style: narrow }} />;

/** A line of text, with the unit that counts for a plain number behind it. */
export function TextBox({ unit, ...props }: Omit<InputProps, "contentAfter"> & { unit?: string }) {
  return (
    <Input
      {...props}
      autoComplete="off"
      contentAfter={unit || undefined}
      root={{ style: narrow }}
      input={{ style: narrow }}
    />
  );
}

/** One of some words; none is told as such. */
export const WordChoice = ({ words, ...props }: SelectProps & { words: readonly string[] }) => (
  <Choice {...props}>
    {words.map((word) => (
      <option key={word} value={word}>
        {word || "not stated"}
      </option>
    ))}
  </Choice>
);
