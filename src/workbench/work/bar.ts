/** Buttons and words above the sheet for what is kept and what leaves. */
export interface Bar {
  button(label: string, title: string, act: () => unknown): HTMLButtonElement;
  /** How the keeping stands. */
  state(text: string, isWarning: boolean): void;
  /** A sentence for what was just done, with something to do about it. */
  note(text: string, action?: { readonly label: string; readonly act: () => unknown }): void;
}

const part = <K extends keyof HTMLElementTagNameMap>(
  tag: K,
  className: string,
  text = "",
): HTMLElementTagNameMap[K] => {
  const made = document.createElement(tag);
  made.className = className;
  made.textContent = text;
  return made;
};

export function showBar(element: HTMLElement): Bar {
  const buttons = part("span", "buttons");
  const state = part("span", "state");
  const note = part("p", "note");
  state.setAttribute("role", "status");
  note.setAttribute("role", "status");
  note.hidden = true;
  element.replaceChildren(buttons, state, note);
  return {
    button(label, title, act) {
      const made = part("button", "", label);
      made.type = "button";
      made.title = title;
      made.addEventListener("click", () => void act());
      buttons.append(made);
      return made;
    },
    state(text, isWarning) {
      if (state.textContent !== text) state.textContent = text;
      state.classList.toggle("warning", isWarning);
    },
    note(text, action) {
      note.hidden = text === "";
      note.replaceChildren(text, " ");
      const add = (label: string, act: () => unknown): void => {
        const made = part("button", "", label);
        made.type = "button";
        made.addEventListener("click", () => {
          note.hidden = true;
          void act();
        });
        note.append(made, " ");
      };
      if (action) add(action.label, action.act);
      add("Close", () => undefined);
    },
  };
}

/** Asks which of some; nothing where none is wanted. */
export function choose<T>(
  title: string,
  options: readonly (readonly [label: string, value: T])[],
): Promise<T | undefined> {
  const dialog = part("dialog", "ask");
  const heading = part("h2", "", title);
  heading.id = "choose-title";
  dialog.setAttribute("aria-labelledby", heading.id);
  const form = part("form", "options");
  form.method = "dialog";
  const add = (label: string, value: string): void => {
    const button = part("button", "", label);
    button.value = value;
    form.append(button);
  };
  options.forEach(([label], i) => add(label, String(i)));
  add("Cancel", "");
  dialog.append(heading, form);
  document.body.append(dialog);
  dialog.showModal();
  return new Promise((resolve) =>
    dialog.addEventListener("close", () => {
      dialog.remove();
      const { returnValue } = dialog;
      resolve(returnValue === "" ? undefined : options[Number(returnValue)]?.[1]);
    }),
  );
}

/** Asks before something is done; the answer is whether to do it. */
export function ask(title: string, lines: readonly string[], yes: string): Promise<boolean> {
  const dialog = part("dialog", "ask");
  const heading = part("h2", "", title);
  heading.id = "ask-title";
  dialog.setAttribute("aria-labelledby", heading.id);
  const list = part("ul", "");
  list.append(...lines.map((line) => part("li", "", line)));
  const form = part("form", "buttons");
  form.method = "dialog";
  const go = part("button", "", yes);
  go.value = "yes";
  form.append(go, part("button", "", "Cancel"));
  dialog.append(heading, list, form);
  document.body.append(dialog);
  dialog.showModal();
  return new Promise((resolve) =>
    dialog.addEventListener("close", () => {
      dialog.remove();
      resolve(dialog.returnValue === "yes");
    }),
  );
}
