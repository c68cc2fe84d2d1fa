import type { IWorkbookData, Univer } from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import type { Corner, Picture } from "../../../port/sheet";
import { picturesIn } from "./keptPictures";
import type { KeptPicture } from "./keptPictures";

/** The pictures over the grid's cells. Its part for them is loaded with the first one, so that no other sheet waits for it. */
export class GridPictures {
  private drawing: typeof import("./drawing") | undefined;
  private started: Promise<void> | undefined;

  constructor(
    private readonly univer: Univer,
    private readonly api: FUniver,
  ) {}

  /** To be called before a record is opened: the grid would forget its pictures. */
  async prepare(record: IWorkbookData): Promise<void> {
    if ([...picturesIn(record).values()].some(({ length }) => length > 0)) await this.load();
  }

  async add(at: Corner, picture: Picture): Promise<void> {
    const { layPicture } = await this.load();
    await this.started;
    await layPicture(this.api, at, picture);
  }

  on(sheetId: string): KeptPicture[] {
    return this.drawing?.picturesOn(this.api, sheetId) ?? [];
  }

  private async load(): Promise<typeof import("./drawing")> {
    this.drawing = await import("./drawing");
    this.started ??= this.drawing.startDrawing(this.univer, this.api);
    return this.drawing;
  }
}
