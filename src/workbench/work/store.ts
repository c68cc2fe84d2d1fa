import { openDB } from "idb";
import type { DBSchema, IDBPDatabase } from "idb";
import { present } from "../../core/present";

/** A state of the sheet as it was kept in this browser. */
export interface Version {
  readonly key: number;
  /** Milliseconds since 1970. */
  readonly at: number;
  readonly text: string;
}

interface Schema extends DBSchema {
  versions: { key: number; value: Omit<Version, "key"> };
}

const most = 10;

/** The last ten versions, in the browser's own database. */
export class Store {
  private constructor(private readonly db: IDBPDatabase<Schema>) {}

  static async open(): Promise<Store> {
    return new Store(
      await openDB<Schema>("bushcell", 1, {
        upgrade: (db) => void db.createObjectStore("versions", { autoIncrement: true }),
      }),
    );
  }

  /** Last kept first; a tab may keep on writing its version while another one begins some. */
  async versions(): Promise<Version[]> {
    const [keys, values] = await Promise.all([this.db.getAllKeys("versions"), this.db.getAll("versions")]);
    return values.map((value, i) => ({ ...value, key: present(keys[i]) })).sort((a, b) => b.at - a.at || b.key - a.key);
  }

  async version(key: number): Promise<string | undefined> {
    return (await this.db.get("versions", key))?.text;
  }

  /** The key of a version that holds this text. */
  async keyOf(text: string): Promise<number> {
    const [newest] = await this.versions();
    return newest?.text === text ? newest.key : this.put(text);
  }

  /** Writes over a version, or a new one and drops what is older than the last ten; all of it or nothing. */
  async put(text: string, over?: number): Promise<number> {
    const change = this.db.transaction("versions", "readwrite");
    const written = change.store.put({ at: Date.now(), text }, over);
    const keys = await change.store.getAllKeys();
    const old = keys.slice(0, Math.max(0, keys.length - most)).map((key) => change.store.delete(key));
    await Promise.all([...old, written, change.done]);
    return written;
  }
}
