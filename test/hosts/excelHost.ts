import { answered } from "./cells";
import type { CellValue } from "./cells";
import { runBatch } from "./batch";
import type { Batch, BatchAnswer } from "./batch";
import { Workbook } from "./workbook";

/** Kinds of messages that Excel sends on its own account. */
const call = { messageCategory: 1, messageType: 1000 };
const event = { messageCategory: 65536 };
const events = { changed: 10, calculated: 16 } as const;

/** What a call is allowed to be given: errors and data types, as functions.json asks; without data types where a host is older. */
export const given = { errorsAndTypes: 12, errorsAlone: 4 } as const;

export interface Entry {
  readonly messageCategory: number;
  readonly messageType: number;
  readonly targetId: string;
  readonly message: unknown;
  readonly id: number;
}

/** How the add-in is reached. */
export interface Bridge {
  send(entries: readonly Entry[]): Promise<void>;
  /** An event of the older interface, which has a bridge of its own. */
  selected(): Promise<void>;
}

export interface Call {
  readonly name: string;
  /** As they stand on the wire. */
  readonly args: readonly unknown[];
  readonly flags?: number;
}

/**
 * Excel behind the bridge, whichever form the bridge has: takes the batches that office.js sends, keeps a workbook for
 * them, calls functions of the add-in and tells what changed.
 */
export class ExcelHost {
  readonly book = new Workbook();
  calls = 0;
  batches = 0;
  /** When all that was written is computed: a browser that closes before would leave calls without an answer. */
  settled: Promise<void> = Promise.resolve();
  private next = 1;
  private readonly waiting = new Map<number, (answer: CellValue[][]) => void>();

  /** @param send delivers entries to the add-in */
  constructor(private readonly bridge: Bridge) {}

  /** One request of the rich API. */
  answer(body: Batch): BatchAnswer {
    const service = Object.values(body.ObjectPaths).find(({ ObjectPathType }) => ObjectPathType === 2);
    if (service) return this.serve(body);
    this.batches++;
    const before = this.book.changes;
    const done = runBatch(this.book, body);
    if (this.book.changes > before) this.settled = this.settled.then(() => this.recalculate());
    return done;
  }

  /** Excel's own services: the functions' answers come through one of them. */
  private serve({ Actions }: Batch): BatchAnswer {
    const Results = Actions.flatMap(({ Id, ActionType, Name, ArgumentInfo }) => {
      if (ActionType !== 3) return [];
      if (Name === "SetInvocationArrayResults") this.receive(ArgumentInfo!.Arguments![0] as Received[]);
      return [{ ActionId: Id, Value: Name === "_GetEnabledFeatures" ? [1, 2, 3, 4] : null }];
    });
    return { Results };
  }

  private receive(results: readonly Received[]): void {
    for (const [id, isAnswer, value, code] of results) {
      const cells = isAnswer ? value : [[{ code: `thrown ${code}`, message: String(value) }]];
      this.waiting.get(id)!((cells as unknown[][]).map((row) => row.map(answered)));
      this.waiting.delete(id);
    }
  }

  /** Calls functions of the add-in, all in one message. */
  async callAll(calls: readonly Call[]): Promise<CellValue[][][]> {
    const ids = calls.map(() => this.next++);
    const answers = ids.map((id) => new Promise<CellValue[][]>((resolve) => this.waiting.set(id, resolve)));
    this.calls += calls.length;
    await this.bridge.send(
      calls.map(({ name, args, flags = given.errorsAndTypes }, i) => ({
        ...call,
        targetId: "",
        message: [ids[i], name, args, "Sheet1!A1", flags],
        id: ids[i]!,
      })),
    );
    return Promise.all(answers);
  }

  async select(sheet: string, row: number, col: number, rows = 1, cols = 1): Promise<void> {
    this.book.selection = { sheet, row, col, rows, cols };
    await this.bridge.selected();
  }

  /** Computes every formula with the add-in's functions and says so. */
  async recalculate(): Promise<void> {
    await this.tell(events.changed);
    await this.book.compute((calls) => this.callAll(calls));
    await this.tell(events.calculated);
  }

  private tell(messageType: number): Promise<void> {
    return this.bridge.send([{ ...event, messageType, targetId: "Workbook", message: "{}", id: 0 }]);
  }
}

type Received = readonly [id: number, isAnswer: boolean, value: unknown, code?: number];
