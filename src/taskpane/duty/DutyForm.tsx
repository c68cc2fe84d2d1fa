import { Button, Field as FieldBox, Radio, RadioGroup } from "@fluentui/react-components";
import { useEffect, useRef } from "react";
import type { FieldKey } from "../../core/duties";
import type { System } from "../../core/kinds";
import { useShared } from "../parts/styles";
import { counted } from "../parts/words";
import { formGroups, groupKeys, headKeys, hintOf, labelOf } from "../state/fields";
import { keysAt, withText } from "../state/form";
import type { PaneState } from "../state/usePane";
import { FieldInput } from "./FieldInput";
import { Group } from "./Group";
import { RowActions } from "./RowActions";
import { Steps } from "./Steps";
import { summaryOf, todoText } from "./words";

/** The duty as a form, made from the list of duty fields: part and motion first, then what they ask. */
export function DutyForm({ pane }: { pane: PaneState }) {
  const s = useShared();
  const { duty, own } = pane;
  const { form, system, read, setForm } = duty;
  const { wanted, onShown } = pane;
  const panel = useRef<HTMLElement>(null);
  useEffect(() => {
    if (!wanted || !panel.current) return;
    showField(panel.current, wanted);
    onShown();
  }, [wanted, onShown]);
  const [texts] = form;
  const asked = keysAt(form, 0);
  const input = (key: FieldKey) => (
    <FieldInput
      key={key}
      name={key}
      text={texts[key] ?? ""}
      read={read.rows[0]}
      system={system}
      words={key === "grade" ? ["", ...own.library.grades.map(({ name }) => name)] : undefined}
      onChange={(text) => setForm(withText(form, 0, key, text))}
    />
  );
  return (
    <section className={s.panel} aria-label="Duty" ref={panel}>
      <FieldBox label="Unit system of plain numbers">
        <RadioGroup layout="horizontal" value={system} onChange={(_, { value }) => duty.setSystem(value as System)}>
          <Radio value="metric" label="metric (mm, N)" />
          <Radio value="inch" label="inch (in, lbf)" />
        </RadioGroup>
      </FieldBox>
      <RowActions duty={duty} port={pane.host.port} />
      <p className={s.quiet}>
        A field takes text with a unit (250 lbf) and, but for words, a band (640 to 960; 800 ± 20 %).
      </p>
      <div className={s.pair}>{headKeys.map(input)}</div>
      {formGroups.map((name) => {
        const { needed, open } = groupKeys(name, asked);
        const keys = [...needed, ...open];
        if (keys.length === 0) return null;
        const isStated = (some: readonly FieldKey[]) => some.some((key) => (texts[key] ?? "") !== "");
        const summary = summaryOf(keys, read.rows[0], system);
        return (
          <Group key={name} name={name} summary={summary} isUsed={needed.length > 0 || isStated(open)}>
            {needed.length > 0 && <div className={s.pair}>{needed.map(input)}</div>}
            {open.length > 0 && needed.length > 0 ? (
              <Group name="More" summary={open.map(labelOf).join(", ").toLowerCase()} isUsed={isStated(open)}>
                <div className={s.pair}>{open.map(input)}</div>
              </Group>
            ) : (
              <div className={s.pair}>{open.map(input)}</div>
            )}
            <details>
              <summary className={s.summary}>What these mean</summary>
              <dl className={s.words}>
                {keys.map((key) => (
                  <div key={key}>
                    <dt>{labelOf(key)}</dt>
                    <dd>{hintOf(key)}</dd>
                  </div>
                ))}
              </dl>
            </details>
            {name === formGroups[0] && <Steps duty={duty} />}
          </Group>
        );
      })}
      <Outcome pane={pane} />
    </section>
  );
}

/** Unfolds what a field stands in and puts the cursor there. */
function showField(panel: HTMLElement, key: FieldKey): void {
  const input = panel.querySelector<HTMLElement>(`[data-field="${key}"]`);
  for (let box = input?.closest("details"); box; box = box.parentElement?.closest("details")) box.open = true;
  input?.scrollIntoView({ block: "center" });
  input?.focus();
}

/** What is still to do, or the way to the grades that hold. */
function Outcome({ pane }: { pane: PaneState }) {
  const s = useShared();
  const { duty, judged, ranked, setShown, goTo } = pane;
  if (!duty.read.duty)
    return (
      <p className={s.quiet} role="status">
        {todoText(duty.read)}
      </p>
    );
  const holding = ranked.filter(({ word }) => word === "fits" || word === "care").length;
  return (
    <Button
      appearance="primary"
      onClick={() => {
        setShown([]);
        goTo("shortlist");
      }}
    >
      {judged === duty.read.duty ? `Show which grades hold (${counted(holding, "grade")})` : "Show which grades hold"}
    </Button>
  );
}
