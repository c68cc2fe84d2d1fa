import { Choice, TextBox } from "../parts/fields";
import { useShared } from "../parts/styles";
import { kindText } from "../../core/grades/model";
import type { GradeKind, PropertyKey } from "../../core/grades/model";
import type { System } from "../../core/kinds";
import { boundUnit, numberProperties } from "./filter";
import type { Filter, Order } from "./filter";
import { useStyles } from "./styles";

interface FilterProps {
  filter: Filter;
  setFilter(filter: Filter): void;
  order: Order;
  setOrder(order: Order): void;
  system: System;
}

/** Sorting and filtering; the search stands open. */
export function FilterBar({ filter, setFilter, order, setOrder, system }: FilterProps) {
  const s = useShared();
  const own = useStyles();
  const set = (part: Partial<Filter>) => setFilter({ ...filter, ...part });
  const unit = filter.property ? boundUnit(filter.property, system) : "";
  return (
    <div className={own.filters} role="search" aria-label="Sort and filter">
      <TextBox
        type="search"
        placeholder="Find by name, family or word"
        aria-label="Find by name, family or word"
        value={filter.text}
        onChange={(_, { value }) => set({ text: value })}
      />
      <details>
        <summary className={s.summary}>Sort and filter</summary>
        <div className={own.filters} style={{ marginTop: 8 }}>
          <div className={own.bound}>
            <Choice aria-label="Sort by" value={order} onChange={(_, { value }) => setOrder(value as Order)}>
              <option value="rank">by verdict</option>
              <option value="name">by name</option>
              {numberProperties.map((p) => (
                <option key={p.key} value={p.key}>
                  by {p.heading}
                </option>
              ))}
            </Choice>
            <Choice
              aria-label="Kind of grade"
              value={filter.kind}
              onChange={(_, { value }) => set({ kind: value as GradeKind | "" })}
            >
              <option value="">all kinds</option>
              {Object.entries(kindText).map(([kind, text]) => (
                <option key={kind} value={kind}>
                  {text}
                </option>
              ))}
            </Choice>
          </div>
          <Choice
            aria-label="Property to bound"
            value={filter.property}
            onChange={(_, { value }) => set({ property: value as PropertyKey | "" })}
          >
            <option value="">any property</option>
            {numberProperties.map((p) => (
              <option key={p.key} value={p.key}>
                {p.heading}
              </option>
            ))}
          </Choice>
          {filter.property !== "" && (
            <div className={own.bound}>
              <Choice
                aria-label="Side of the bound"
                value={filter.side}
                onChange={(_, { value }) => set({ side: value as Filter["side"] })}
              >
                <option value="least">at least</option>
                <option value="most">at most</option>
              </Choice>
              <TextBox
                aria-label="Bound"
                value={filter.bound}
                onChange={(_, { value }) => set({ bound: value })}
                unit={unit}
              />
            </div>
          )}
        </div>
      </details>
    </div>
  );
}
