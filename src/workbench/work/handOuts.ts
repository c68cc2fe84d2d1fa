import { handOutPage } from "../../book/handOut/page";
import { exercises, handOut } from "../../book/handOut/handOut";
import type { HandOutWish } from "../../book/handOut/handOut";
import { handOutSheets } from "../../book/handOut/sheets";
import { present } from "../../core/present";
import { freeName } from "../../port/names";
import type { GridPort } from "../grid/port";

/** Where a hand-out goes. */
type Target = "sheets" | "page";

interface Asked {
  readonly wish: HandOutWish;
  readonly target: Target;
}

/** Asks for a hand-out and makes it; a sentence on what was made, none where nothing was wanted. */
export async function makeHandOut(port: GridPort, download: (name: string, data: string) => void): Promise<string> {
  const asked = await askForHandOut();
  if (!asked) return "";
  const made = handOut(asked.wish);
  if (asked.target === "page") {
    download(`${made.title}.html`, handOutPage(made));
    return `Saved as ${made.title}.html: the answers begin on a page of their own.`;
  }
  const free = (name: string): string => freeName(name, (one) => port.hasSheet(one));
  const names = [free(made.title), free(made.answersTitle)] as const;
  port.addSheets(handOutSheets(made, names));
  return `Added the sheets ${names.join(" and ")}.`;
}

function askForHandOut(): Promise<Asked | undefined> {
  const dialog = document.createElement("dialog");
  dialog.className = "ask";
  dialog.setAttribute("aria-labelledby", "hand-out-title");
  // a page of ours, without a word from outside in it
  dialog.innerHTML = `<h2 id="hand-out-title">Hand-out for a class</h2>
<form class="hand-out" method="dialog">
<label>Number <input name="number" type="number" min="0" max="999999" step="1" value="1" required></label>
<p>The same number brings the same figures.</p>
<label>Units <select name="system"><option value="metric">metric</option><option value="inch">inch</option></select></label>
<label><input name="mistake" type="checkbox"> Results to check, one of them wrong; the answers tell which</label>
<fieldset><legend>Calculations</legend></fieldset>
<div class="buttons"><button value="sheets">Add as sheets</button><button value="page">Save as page</button><button value="" formnovalidate>Cancel</button></div>
</form>`;
  const form = present(dialog.querySelector("form"));
  present(form.querySelector("fieldset")).append(
    ...exercises.map(({ name }) => {
      const label = document.createElement("label");
      const box = Object.assign(document.createElement("input"), {
        type: "checkbox",
        name: "chosen",
        value: name,
        checked: true,
      });
      label.append(box, ` ${name}`);
      return label;
    }),
  );
  document.body.append(dialog);
  dialog.showModal();
  return new Promise((resolve) =>
    dialog.addEventListener("close", () => {
      const given = new FormData(form);
      const { returnValue } = dialog;
      dialog.remove();
      if (returnValue !== "sheets" && returnValue !== "page") return resolve(undefined);
      resolve({
        target: returnValue,
        wish: {
          number: Number(given.get("number")),
          system: given.get("system") === "inch" ? "inch" : "metric",
          chosen: given.getAll("chosen").map(String),
          hasMistake: given.has("mistake"),
        },
      });
    }),
  );
}
