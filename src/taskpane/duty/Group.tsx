import { useEffect, useState } from "react";
import type { ReactNode } from "react";
import { useShared } from "../parts/styles";

interface Props {
  name: string;
  /** What is stated, in one line. */
  summary: string;
  /** Whether a field of it is used or must be. */
  isUsed: boolean;
  children: ReactNode;
}

/** A part of the form, folded until it is used; it never folds by itself while somebody types in it. */
export function Group({ name, summary, isUsed, children }: Props) {
  const s = useShared();
  const [isOpen, setOpen] = useState(isUsed);
  useEffect(() => {
    if (isUsed) setOpen(true);
  }, [isUsed]);
  return (
    <details className={s.group} open={isOpen} onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
      <summary>
        <h2 className={s.minor} style={{ display: "inline" }}>
          {name}
        </h2>{" "}
        {!isOpen && <span className={s.quiet}>{summary}</span>}
      </summary>
      {children}
    </details>
  );
}
