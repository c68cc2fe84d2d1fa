import { mergeClasses } from "@fluentui/react-components";
import { memo } from "react";
import { verdictText } from "../../core/duties";
import type { NamedDuty, Ranked } from "../../core/duties";
import { kindText } from "../../core/grades/model";
import type { Library } from "../../core/grades/model";
import type { System } from "../../core/kinds";
import { useShared } from "../parts/styles";
import { counted } from "../parts/words";
import { useStyles } from "./styles";
import { UseBar } from "./UseBar";
import { dataText, lifeText, ownCautions, reasonsOf } from "./words";

interface ItemProps {
  one: Ranked;
  duty: NamedDuty;
  library: Library;
  system: System;
  isChosen: boolean;
  toggle(name: string): void;
  show(names: readonly string[]): void;
}

/** A grade of the list: its verdict, every reason in the open, and the cautions that change no verdict folded. */
export const Item = memo(
  function ItemView({ one, duty, library, system, isChosen, toggle, show }: ItemProps) {
    const s = useShared();
    const own = useStyles();
    const { grade, checks, word, use } = one;
    const reasons = reasonsOf(one, system);
    const cautions = ownCautions(one, duty, system, library);
    return (
      <li className={own.item}>
        <div className={own.top}>
          <button type="button" className={own.name} onClick={() => show([grade.name])}>
            {grade.name}
          </button>
          <label className={own.choose}>
            <input
              type="checkbox"
              className={own.box}
              checked={isChosen}
              onChange={() => toggle(grade.name)}
              aria-label={`Choose ${grade.name} to compare`}
            />
            compare
          </label>
        </div>
        <p className={s.quiet}>
          {kindText[grade.kind]}
          {grade.values.family && ` · ${grade.values.family}`} · {dataText(one)}
          {lifeText(one, system) && ` · ${lifeText(one, system)}`}
        </p>
        <p className={s.text}>
          <strong>{word}</strong>
          {verdictText(checks, system, one).slice(word.length)}
        </p>
        <UseBar use={use} word={word} />
        {reasons.length > 0 && (
          <ul className={s.list}>
            {reasons.map((reason) => (
              <li key={reason}>{reason}</li>
            ))}
          </ul>
        )}
        {cautions.length > 0 && (
          <details>
            <summary className={s.summary}>{counted(cautions.length, "caution")}</summary>
            <ul className={mergeClasses(s.list, s.quiet)}>
              {cautions.map((caution) => (
                <li key={caution}>{caution}</li>
              ))}
            </ul>
          </details>
        )}
      </li>
    );
  },
  (a, b) => a.one === b.one && a.isChosen === b.isChosen && a.system === b.system,
);
