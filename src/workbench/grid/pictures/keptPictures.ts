import type { IWorkbookData } from "@univerjs/core";

/** A point in a cell; offsets in pixels. */
export interface CellPoint {
  readonly row: number;
  readonly rowOffset: number;
  readonly column: number;
  readonly columnOffset: number;
}

/** A picture as the grid keeps it. */
export interface KeptPicture {
  readonly unitId: string;
  readonly subUnitId: string;
  readonly drawingId: string;
  /** Only 0 is a picture. */
  readonly drawingType: number;
  readonly imageSourceType: string;
  /** Its address, which carries all of it. */
  readonly source: string;
  readonly sheetTransform: { readonly from: CellPoint; readonly to: CellPoint };
  /** As it is drawn; pixels, degrees. */
  readonly transform?: {
    readonly width?: number;
    readonly height?: number;
    readonly angle?: number;
    readonly flipX?: boolean;
    readonly flipY?: boolean;
  };
  /** What is cut off. */
  readonly srcRect?: object | null;
  /** Our own, which the grid keeps with the rest. */
  readonly name?: string;
  readonly words?: string;
}

/** By the id of their sheet, as the grid's record has them. */
export type KeptPictures = Record<
  string,
  { readonly data: Record<string, KeptPicture>; readonly order: readonly string[] }
>;

/** The part of the grid's record that holds them as text. */
export const picturesResource = "SHEET_DRAWING_PLUGIN";

/** The pictures of a record by the id of their sheet, the lowest of those that lie over each other first. */
export function picturesIn({ resources }: IWorkbookData): Map<string, KeptPicture[]> {
  const { data } = resources?.find(({ name }) => name === picturesResource) ?? {};
  const sheets = Object.entries(data ? (JSON.parse(data) as KeptPictures) : {});
  return new Map(sheets.map(([id, kept]) => [id, inOrder(kept)]));
}

export const inOrder = ({ data, order }: KeptPictures[string]): KeptPicture[] =>
  order.flatMap((id) => data[id] ?? []).filter(({ drawingType }) => drawingType === 0);
