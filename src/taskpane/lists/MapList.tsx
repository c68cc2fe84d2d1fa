import { Badge, Button, Field as FieldBox, makeStyles, mergeClasses, tokens } from "@fluentui/react-components";
import type { System } from "../../core/kinds";
import type { Decimals } from "../../core/table/decimals";
import { entryOf } from "../../core/table/entry";
import { quoted } from "../../files/list";
import { Choice, TextBox } from "../parts/fields";
import { Notice } from "../parts/Notice";
import { useShared } from "../parts/styles";
import { counted } from "../parts/words";
import { assigned, unitFault } from "./columns";
import type { Mapped } from "./columns";
import type { Understood } from "./understood";
import type { Sort } from "./sort";
import { headingRows, taken } from "./taken";
import type { Taken } from "./taken";

interface Props {
  list: Taken;
  sort: Sort;
  system: System;
  /** For each column its first values as they were read, where the list could be. */
  understood: readonly (readonly Understood[])[] | undefined;
  asksDecimals: boolean;
  onChange(list: Taken): void;
  onFault(text: string): void;
  onRemove(): void;
}

const useStyles = makeStyles({
  list: { border: 0, margin: 0, padding: 0, minWidth: 0, display: "grid", gap: "8px" },
  column: { border: 0, margin: 0, padding: "8px 0", minWidth: 0, borderTop: `1px solid ${tokens.colorNeutralStroke2}` },
  legend: { padding: 0, fontWeight: tokens.fontWeightSemibold, overflowWrap: "anywhere" },
  values: {
    margin: "0 0 4px",
    paddingLeft: "16px",
    color: tokens.colorNeutralForeground2,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
    overflowWrap: "anywhere",
  },
});

/** What each column of a list means: known or guessed first, then the person's word, with its first values as understood. */
export function MapList({ list, sort, system, understood, asksDecimals, onChange, onFault, onRemove }: Props) {
  const s = useShared();
  const own = useStyles();
  const setColumn = (i: number, column: Mapped) =>
    onChange({ ...list, columns: list.columns.map((before, at) => (at === i ? column : before)) });
  const setTop = (top: number) => {
    try {
      onChange(taken(list.list, list.of, sort, top));
    } catch (error) {
      onFault((error as Error).message);
    }
  };
  return (
    <section className={own.list} aria-label={list.of ? `List of ${list.of}` : "List"}>
      <div className={s.pair}>
        <FieldBox label="Whose it is">
          <TextBox value={list.of} onChange={(_, { value }) => onChange({ ...list, of: value })} />
        </FieldBox>
        <FieldBox label="Decimals">
          <Choice value={list.decimals} onChange={(_, { value }) => onChange({ ...list, decimals: value as Decimals })}>
            <option value="ask">{asksDecimals ? "not told: choose" : "by the list"}</option>
            <option value="comma">comma: 1.180 is 1180</option>
            <option value="point">point: 1.180 is 1.18</option>
          </Choice>
        </FieldBox>
      </div>
      <FieldBox label="Headings stand in" hint={`${counted(list.table.rows.length, "row")} below it`}>
        <Choice value={String(list.top)} onChange={(_, { value }) => setTop(Number(value))}>
          {headingRows(list.list).map(({ row, text }) => (
            <option key={row} value={row}>
              {text}
            </option>
          ))}
        </Choice>
      </FieldBox>
      {list.list.remarks.length > 0 && <Notice intent="info">{list.list.remarks.join("; ")}</Notice>}
      <div>
        {list.columns.map((column, i) =>
          column.heading === "" ? null : (
            <fieldset key={i} className={own.column}>
              <legend className={own.legend}>
                {column.heading}{" "}
                {column.isGuess && (
                  <Badge appearance="outline" size="small" color="important">
                    guess
                  </Badge>
                )}
              </legend>
              <Values values={understood?.[i] ?? rawValues(list, i)} className={own.values} />
              <div className={mergeClasses(s.pair, s.uneven)}>
                <FieldBox label="is">
                  <Choice value={column.key} onChange={(_, { value }) => setColumn(i, assigned(column, value, sort))}>
                    <option value="">kept, not used</option>
                    {sort.keys.map((key) => (
                      <option key={key} value={key}>
                        {entryOf(sort.reading.list, key).heading}
                        {column.at !== undefined && key === column.key ? ` from ${column.at}` : ""}
                      </option>
                    ))}
                  </Choice>
                </FieldBox>
                {column.key !== "" && sort.takesUnit(column.key) && (
                  <UnitBox column={column} {...{ sort, system }} onUnit={(unit) => setColumn(i, { ...column, unit })} />
                )}
              </div>
            </fieldset>
          ),
        )}
      </div>
      <div className={s.row}>
        <Button size="small" onClick={onRemove}>
          Take this list away
        </Button>
      </div>
    </section>
  );
}

function UnitBox(props: { column: Mapped; sort: Sort; system: System; onUnit(unit: string): void }) {
  const { column, sort, system, onUnit } = props;
  const fault = unitFault(column, sort);
  const [, assumed] = /\[(.*)\]$/.exec(sort.headingOf(column.key, "", system)) ?? [];
  return (
    <FieldBox
      label="in"
      validationState={fault ? "error" : "none"}
      validationMessage={fault}
      hint={column.unit.trim() === "" ? `taken: ${assumed ?? "none"}` : undefined}
    >
      <TextBox value={column.unit} onChange={(_, { value }) => onUnit(value)} />
    </FieldBox>
  );
}

/** As they stand, while they cannot be read. */
const rawValues = ({ table }: Taken, column: number): Understood[] =>
  table.rows
    .filter((row) => row[column] !== null)
    .slice(0, 3)
    .map((row) => ({ text: String(row[column]) }));

function Values({ values, className }: { values: readonly Understood[]; className: string }) {
  if (values.length === 0) return <p className={className}>nothing stands here</p>;
  return (
    <ul className={className} aria-label="first values">
      {values.map(({ text, told }, i) => (
        <li key={i}>
          {quoted(text)}
          {told !== undefined && ` → ${told}`}
        </li>
      ))}
    </ul>
  );
}
