import { HostError, workbookObject } from "./objects";
import type { HostObject } from "./objects";
import type { Workbook } from "./workbook";

/** A request of the rich API: objects by the way that leads to them, and what is done with each, in order. */
export interface Batch {
  readonly ObjectPaths: Readonly<Record<string, ObjectPath>>;
  readonly Actions: readonly Action[];
}
interface ObjectPath {
  readonly Id: number;
  readonly ObjectPathType: number;
  readonly Name: string;
  readonly ParentObjectPathId?: number;
  readonly ArgumentInfo?: ArgumentInfo;
}
interface Action {
  readonly Id: number;
  readonly ActionType: number;
  readonly Name: string;
  readonly ObjectPathId: number;
  readonly ArgumentInfo?: ArgumentInfo;
  readonly QueryInfo?: { readonly Select?: readonly string[] };
}
interface ArgumentInfo {
  readonly Arguments?: readonly unknown[];
  /** In the place of an argument that is an object, the id of its path; else 0. */
  readonly ReferencedObjectPathIds?: readonly number[];
}
export interface BatchAnswer {
  readonly Results: readonly { readonly ActionId: number; readonly Value: unknown }[];
  readonly TraceIds?: readonly number[];
  readonly Error?: { readonly Code: string; readonly Message: string; readonly ActionIndex: number };
}

const path = { root: 1, method: 3, property: 4, indexer: 5, reference: 6 } as const;
const action = { instantiate: 1, query: 2, method: 3, set: 4, trace: 5 } as const;

/** Objects that a batch asks to be kept for later ones, by the name given to them. */
const kept = new WeakMap<Workbook, Map<string, HostObject>>();

export function runBatch(book: Workbook, batch: Batch): BatchAnswer {
  const Results: { ActionId: number; Value: unknown }[] = [];
  const TraceIds: number[] = [];
  const objects = new Map<number, HostObject | null>();
  const references = kept.get(book) ?? new Map<string, HostObject>();
  kept.set(book, references);
  const objectAt = (id: number): HostObject | null => {
    if (!objects.has(id)) objects.set(id, findObject(book, batch.ObjectPaths[id]!, objectAt, references));
    return objects.get(id)!;
  };
  let index = 0;
  try {
    for (const { Id, ActionType, Name, ObjectPathId, ArgumentInfo, QueryInfo } of batch.Actions) {
      const given = argumentsOf(ArgumentInfo, objectAt);
      const say = (Value: unknown) => Results.push({ ActionId: Id, Value });
      // a trace that came through lets office.js add the handler of an event
      if (ActionType === action.trace) {
        TraceIds.push(Id);
        say(null);
      } else {
        const object = objectAt(ObjectPathId);
        if (object === null) say(null);
        else if (ActionType === action.instantiate) say(keep(object, references));
        else if (ActionType === action.query) say(selected(object, QueryInfo?.Select ?? []));
        else if (ActionType === action.set) member(object, "set", Name)(given[0]);
        else if (ActionType === action.method) say(Name.startsWith("_") ? null : called(object, Name, given));
        else throw new HostError("NotImplemented", `an action of type ${ActionType}`);
      }
      index++;
    }
    return { Results, TraceIds };
  } catch (error) {
    if (!(error instanceof HostError)) throw error;
    if (error.code === "NotImplemented") book.notEmulated.push(error.message);
    return { Results, TraceIds, Error: { Code: error.code, Message: error.message, ActionIndex: index } };
  }
}

function argumentsOf(
  { Arguments = [], ReferencedObjectPathIds = [] }: ArgumentInfo = {},
  objectAt: (id: number) => HostObject | null,
): unknown[] {
  return Arguments.map((value, i) => (ReferencedObjectPathIds[i] ? objectAt(ReferencedObjectPathIds[i]) : value));
}

function findObject(
  book: Workbook,
  { ObjectPathType, Name, ParentObjectPathId, ArgumentInfo }: ObjectPath,
  objectAt: (id: number) => HostObject | null,
  references: ReadonlyMap<string, HostObject>,
): HostObject | null {
  if (ObjectPathType === path.root) return workbookObject(book);
  if (ObjectPathType === path.reference) {
    const known = references.get(Name);
    if (!known) throw new HostError("InvalidReference", Name);
    return known;
  }
  const parent = objectAt(ParentObjectPathId!);
  if (parent === null) return null;
  if (ObjectPathType === path.property) return member(parent, "paths", Name)() as HostObject;
  const name = ObjectPathType === path.indexer ? "GetItem" : Name;
  return member(parent, "methods", name)(...argumentsOf(ArgumentInfo, objectAt)) as HostObject | null;
}

/** Ranges move with the sheet, so Excel gives each a name by which a later batch finds it. */
function keep(object: HostObject, references: Map<string, HostObject>): object {
  if (object.kind !== "Range") return {};
  const name = `reference${references.size}`;
  references.set(name, object);
  return { _ReferenceId: name };
}

function called(object: HostObject, name: string, given: readonly unknown[]): unknown {
  const value = member(object, "methods", name)(...given);
  return typeof value === "object" ? {} : (value ?? null);
}

function member(object: HostObject, part: "paths" | "methods" | "set", name: string): (...given: unknown[]) => unknown {
  const found = object[part]?.[name];
  if (!found) throw new HostError("NotImplemented", `${object.kind}: ${part} ${name}`);
  return found;
}

/** The properties that a load names, "worksheet/name" by way of another object; all of them for "*". */
function selected(object: HostObject, names: readonly string[]): object {
  const { values = {}, items } = object;
  if (items) return { _Items: items().map((item) => selected(item, ["*"])) };
  const all = names.length === 0 || names.includes("*");
  const wanted = all ? Object.keys(values) : names;
  return Object.fromEntries(
    wanted.map((name) => {
      const [first = "", ...rest] = name.split("/");
      const key = first[0]!.toUpperCase() + first.slice(1);
      if (rest.length > 0) return [key, selected(member(object, "paths", key)() as HostObject, [rest.join("/")])];
      const value = values[key];
      if (!value && key !== "IsNullObject") throw new HostError("NotImplemented", `${object.kind}: value ${key}`);
      return [key, value?.()];
    }),
  );
}
