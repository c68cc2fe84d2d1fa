import type { Host } from "../edge/host";

/** An error on its way to a Google sheet: `message` where it is thrown, `text` where it stands among other cells. */
export class SheetsError {
  readonly message: string;
  readonly text: string;

  constructor(code: string, message?: string) {
    this.message = message ?? code;
    this.text = message === undefined ? code : `${code} ${message}`;
  }
}

export const sheets: Host = { error: (code, message) => new SheetsError(code, message) };
