// Says how cells of readings were understood, and why they are refused.

import * as grid from "./grid.js";

/** The place of a field or cell in the sheet, as one word. */
export const place = (input) =>
  JSON.stringify([input.dataset.name, input.dataset.row ?? "0", input.dataset.column ?? ""]);

/** Whether what is typed into a field or cell was refused. */
export const isWrong = (input) => input.getAttribute("aria-invalid") === "true";

/** Says below a table how the cell in use was understood, and at each cell why it is refused. */
export function sayCells(table) {
  grid.rowsOf(table.querySelector("tbody")).forEach(sayRow);
  const line = table.querySelector("[data-cell]");
  const active = table.contains(document.activeElement) ? document.activeElement : null;
  const wrong = [...table.querySelectorAll("[data-entry]")].filter(isWrong).length;
  const words = [];
  if (active?.dataset.said && !isWrong(active)) {
    words.push(`Row ${active.dataset.row}, ${active.dataset.column}: ${active.dataset.said}`);
  }
  if (wrong > 0) {
    words.push(wrong === 1 ? "1 entry is refused." : `${wrong} entries are refused.`);
  }
  if (line.textContent !== words.join(" ")) {
    line.textContent = words.join(" ");
  }
}

/** Below a row of readings: why any of its cells is refused. */
function sayRow(row) {
  const wrong = [...row.querySelectorAll("[data-entry]")].filter(isWrong);
  const now = JSON.stringify(wrong.map(({ dataset: d }) => [d.row, d.column, d.said, d.conflict]));
  const old = row.nextElementSibling?.matches("tr.why") ? row.nextElementSibling : null;
  if ((old?.dataset.now ?? "[]") === now) {
    return;
  }
  old?.remove();
  row.querySelectorAll("[data-entry]").forEach((cell) => cell.removeAttribute("aria-describedby"));
  if (wrong.length === 0) {
    return;
  }
  const below = document.createElement("tr");
  below.className = "why";
  below.dataset.now = now;
  const space = document.createElement("td");
  space.colSpan = row.children.length;
  space.append(...wrong.map((cell) => {
    const one = document.createElement("p");
    one.className = "said refused";
    one.id = `why-${cell.dataset.name}-${cell.dataset.row}-${[...row.children].indexOf(cell.closest("td"))}`;
    one.textContent = `${cell.dataset.column}: ${cell.dataset.said}`;
    if (cell.dataset.conflict === "true") {
      one.append(button("Enter mine", "mine"), button("Keep that", "theirs"));
      one.dataset.about = place(cell);
    }
    cell.setAttribute("aria-describedby", one.id);
    return one;
  }));
  below.append(space);
  row.after(below);
}

/** A button that does something to the sheet, told by a word. */
export function button(words, action) {
  const made = document.createElement("button");
  made.type = "button";
  made.textContent = words;
  made.dataset.do = action;
  return made;
}
