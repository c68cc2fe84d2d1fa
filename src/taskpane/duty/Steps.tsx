import { Button } from "@fluentui/react-components";
import type { FieldKey } from "../../core/duties";
import { present } from "../../core/present";
import { useShared } from "../parts/styles";
import type { DutyState } from "../state/dutyState";
import { isOfStep, choicesOf } from "../state/fields";
import { keysAt, withStep, withText, withoutStep } from "../state/form";
import type { Texts } from "../state/form";
import { FieldInput } from "./FieldInput";

/** The first fields of a step; what seldom changes is folded. */
const seldom: readonly FieldKey[] = ["swing", "stroke", "temperature"];

/** Further steps of the duty: load, speed and time of each, rests too. The first is what stands in the form above. */
export function Steps({ duty }: { duty: DutyState }) {
  const s = useShared();
  const { form, setForm } = duty;
  const later = form.slice(1);
  return (
    <>
      {later.map((texts, i) => (
        <Step key={i} duty={duty} row={i + 1} texts={texts} />
      ))}
      <div className={s.row}>
        <Button size="small" onClick={() => setForm(withStep(form))}>
          Add a step
        </Button>
        {later.length === 0 && <span className={s.quiet}>Other loads, speeds and rests, each with its time</span>}
      </div>
    </>
  );
}

function Step({ duty, row, texts }: { duty: DutyState; row: number; texts: Texts }) {
  const s = useShared();
  const { form, system, read, setForm } = duty;
  const asked = keysAt(form, row).filter((key) => isOfStep(key) && key !== "motion");
  const folded = asked.filter((key) => seldom.includes(key));
  const input = (key: FieldKey) => (
    <FieldInput
      key={key}
      name={key}
      text={texts[key] ?? ""}
      read={present(read.rows[row])}
      system={system}
      placeholder={key === "time" ? undefined : "as above"}
      words={key === "motion" ? ["", ...choicesOf("motion")] : undefined}
      onChange={(text) => setForm(withText(form, row, key, text))}
    />
  );
  return (
    <fieldset className={s.step} data-step={row + 1}>
      <legend className={s.minor}>Step {row + 1}</legend>
      <div className={s.pair}>
        {input("motion")}
        {asked.filter((key) => !seldom.includes(key)).map(input)}
      </div>
      {folded.length > 0 && (
        <details open={folded.some((key) => texts[key])}>
          <summary className={s.summary}>Also different in this step</summary>
          <div className={s.pair}>{folded.map(input)}</div>
        </details>
      )}
      <Button size="small" onClick={() => setForm(withoutStep(form, row))}>
        Take step {row + 1} out
      </Button>
    </fieldset>
  );
}
