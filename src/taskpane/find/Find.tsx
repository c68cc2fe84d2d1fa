import { Button } from "@fluentui/react-components";
import { useState } from "react";
import type { NamedDuty } from "../../core/duties";
import { BushError, orFault } from "../../core/errors";
import type { Grade } from "../../core/grades/model";
import { referenceTo } from "../../port/address";
import { useShared } from "../parts/styles";
import { withText } from "../state/form";
import { neededText } from "../state/needed";
import { quantityText } from "../state/quantity";
import type { PaneState } from "../state/usePane";
import type { Subject } from "../figures/told";
import type { Room } from "../figures/room";
import { turnText, zoneFits, zoneNeeds } from "./turns";
import type { ZoneFit } from "./turns";

interface Props {
  pane: PaneState;
  subject: Subject;
  rooms: readonly Room[];
}

/** The questions turned round: how short, how loaded, how tight. */
export function Find({ pane, subject, rooms }: Props) {
  const s = useShared();
  const { duty, one } = subject;
  // below the headings and the verdict
  const named = (heading: string): Found[] =>
    rooms.flatMap((room, at) =>
      room.field === heading || room.field.startsWith(`${heading}, `) ? [{ room, row: at + 3 }] : [],
    );
  const args = argsOf(pane, one.grade.name);
  return (
    <section aria-label="Find" className={s.figure}>
      <h2 className={s.heading}>Find</h2>
      {duty.part !== "washer" && <Turns found={named("length")} side="least" word={one.word} args={args} />}
      <Turns found={named("load")} side="greatest" word={one.word} args={args} />
      {duty.part !== "washer" && <Zones key={one.grade.name} pane={pane} subject={subject} />}
    </section>
  );
}

/** Where a field may move to, and the row of DUTYROOM's answer that says so. */
interface Found {
  readonly room: Room;
  readonly row: number;
}

/** One answer for each step that states the field. */
function Turns(props: { found: readonly Found[]; side: "least" | "greatest"; word: string; args: string }) {
  const { found, side, word, args } = props;
  if (found.length === 0) return <Answer text={turnText(undefined, side, word)} />;
  return found.map(({ room, row }) => (
    <Answer key={row} text={turnText(room, side, word)} formula={roomFormula(room, row, side, word, args)} />
  ));
}

/** The cell of DUTYROOM's answer that holds it. */
function roomFormula(room: Room, row: number, side: "least" | "greatest", word: string, args: string): string {
  const isHolding = word !== "fails" && word !== "no data";
  const column = (side === "least") === isHolding ? 4 : 7;
  return (room.least ?? room.greatest) ? `=INDEX(BUSH.DUTYROOM(${args}),${row},${column})` : "";
}

/** Arguments of a function of one duty and one grade; without cells of its own the duty is named for what it is. */
function argsOf({ duty: { origin, system }, own }: PaneState, grade: string): string {
  const { table, duty } = origin ?? {};
  const area = table ? referenceTo(table) : "duty";
  const named = typeof duty === "string" ? `"${duty}"` : (duty ?? "");
  const rest = [own.count > 0 ? own.inUse?.reference : "", system === "inch" ? '"inch"' : ""].join(",");
  return [area, named, `"${grade}"`, rest].join(",").replace(/,+$/, "");
}

function Answer({ text, formula = "" }: { text: string; formula?: string | undefined }) {
  const s = useShared();
  return (
    <div>
      <p className={s.text}>{text}</p>
      {formula && <p className={s.mono}>{formula}</p>}
    </div>
  );
}

/** What the search found for a duty, or why it could judge no pair. */
interface Search {
  readonly of: NamedDuty;
  readonly fits?: readonly ZoneFit[];
  readonly why?: string;
}

function searchOf(duty: NamedDuty, grade: Grade): Search {
  const fits = orFault(() => zoneFits(duty, grade));
  return fits instanceof BushError ? { of: duty, why: fits.message } : { of: duty, fits };
}

/** The tightest ISO 286 zones that never bind and stay put, to be taken over into the form. */
function Zones({ pane, subject }: { pane: PaneState; subject: Subject }) {
  const s = useShared();
  const { duty, one } = subject;
  const [found, setFound] = useState<Search>();
  const missing = zoneNeeds(duty);
  const [first] = missing;
  if (first !== undefined)
    return (
      <div className={s.row}>
        <p className={s.quiet}>Zones that never bind and stay put: needs {missing.map(neededText).join(", ")}.</p>
        <Button size="small" onClick={() => pane.askFor(first)}>
          State {neededText(first)}
        </Button>
      </div>
    );
  const { fits, why } = found?.of === duty ? found : {};
  return (
    <>
      <Button size="small" onClick={() => setFound(searchOf(duty, one.grade))}>
        Find the tightest zones that never bind and stay put
      </Button>
      {why && (
        <p className={s.text} role="status">
          {why}.
        </p>
      )}
      {fits && <ZonesFound fits={fits} pane={pane} subject={subject} />}
    </>
  );
}

function ZonesFound({ fits, pane, subject }: { fits: readonly ZoneFit[]; pane: PaneState; subject: Subject }) {
  const s = useShared();
  const use = ({ boreZone, outsideZone }: ZoneFit) => {
    const { form, setForm } = pane.duty;
    setForm(withText(withText(form, 0, "boreZone", boreZone), 0, "outsideZone", outsideZone));
  };
  const length = (value: number) => quantityText("length", value, subject.system);
  if (fits.length === 0)
    return (
      <p className={s.text} role="status">
        None of the pairs of zones from H7 to B11 and p7 to zc9 holds through all states of this duty.
      </p>
    );
  return (
    <>
      <ul className={s.list} aria-label="Zones found">
        {fits.slice(0, 3).map((fit) => (
          <li key={fit.boreZone + fit.outsideZone}>
            bore {fit.boreZone}, outside {fit.outsideZone}: clearance {length(fit.least)} to {length(fit.greatest)},{" "}
            {fit.verdict}{" "}
            <Button size="small" onClick={() => use(fit)}>
              Use {fit.boreZone} and {fit.outsideZone}
            </Button>
          </li>
        ))}
      </ul>
      <p className={s.mono}>=BUSH.FITTABLE({argsOf(pane, subject.one.grade.name)})</p>
    </>
  );
}
