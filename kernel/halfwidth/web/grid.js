// Moves in tables of readings by keyboard, and lays blocks from a spreadsheet into them.

const cells = (row) => [...row.querySelectorAll("[data-entry]")];

/** The rows of a table; why an entry is refused stands in a row of its own below them. */
export const rowsOf = (body) => [...body.querySelectorAll(":scope > tr:not(.why)")];
const lastRow = (body) => rowsOf(body).at(-1);

function neighbour(input, down, right) {
  const row = input.closest("tr");
  const rows = rowsOf(row.parentElement);
  const at = cells(row).indexOf(input);
  return cells(rows[rows.indexOf(row) + down] ?? row)[at + right] ?? null;
}

/** Adds an empty row where the last one has something in it. */
export function grow(body) {
  const last = lastRow(body);
  if (last && cells(last).some((cell) => cell.value !== "")) {
    add(body);
  }
}

/** Adds an empty row. */
export function add(body) {
  const row = lastRow(body).cloneNode(true);
  const number = rowsOf(body).length + 1;
  row.querySelector("th").textContent = number;
  for (const cell of cells(row)) {
    cell.value = "";
    cell.placeholder = "";
    cell.dataset.row = number;
    cell.dataset.seen = "";
    cell.dataset.said = "";
    cell.setAttribute("aria-invalid", "false");
    cell.removeAttribute("aria-describedby");
    cell.setAttribute("aria-label", `${cell.dataset.name}, row ${number}, ${cell.dataset.column}`);
  }
  body.append(row);
}

/** The first cell of the next column, at the foot of one. */
function nextColumn(input) {
  const [top] = rowsOf(input.closest("tbody"));
  return cells(top)[cells(input.closest("tr")).indexOf(input) + 1] ?? null;
}

function go(to) {
  to?.focus();
  to?.select();
  return to !== null;
}

/** Whether the caret cannot go further in that direction within the cell. */
function atEnd(input, right) {
  const all = input.selectionStart === 0 && input.selectionEnd === input.value.length;
  return all || (right ? input.selectionStart === input.value.length : input.selectionEnd === 0);
}

/** Acts on a key in a cell. Returns whether it was one of ours. */
export function key(event, input) {
  const body = input.closest("tbody");
  switch (event.key) {
    case "Enter": {
      grow(body);
      const below = neighbour(input, event.shiftKey ? -1 : 1, 0);
      const foot = input.closest("tr") === lastRow(body);
      return go(foot || below === input ? nextColumn(input) : below);
    }
    case "ArrowDown":
      return go(neighbour(input, 1, 0));
    case "ArrowUp":
      return go(neighbour(input, -1, 0));
    case "ArrowRight":
      return atEnd(input, true) && go(neighbour(input, 0, 1));
    case "ArrowLeft":
      return atEnd(input, false) && go(neighbour(input, 0, -1));
    default:
      return false;
  }
}

const lined = (text) => text.replace(/\r\n?/g, "\n").replace(/\n$/, "").split("\n");

/** Whether the first line of a block names the columns that it would fall into. */
export function isHeading(text, input) {
  const row = cells(input.closest("tr"));
  const bare = (name) => name.replace(/\[.*\]/, "").trim().toLowerCase();
  return lined(text)[0].split("\t").every((name, i) => (
    bare(name) === bare(row[row.indexOf(input) + i]?.dataset.column ?? "")));
}

/**
 * Lays a block of cells into the table from this cell on, but for a line of headings. Returns the
 * cells it wrote into.
 */
export function paste(text, input) {
  const lines = lined(text).slice(isHeading(text, input) ? 1 : 0);
  const body = input.closest("tbody");
  const column = cells(input.closest("tr")).indexOf(input);
  let row = input.closest("tr");
  const written = [];
  lines.forEach((line, at) => {
    const typed = line.split("\t");
    typed.forEach((value, i) => {
      const cell = cells(row)[column + i];
      if (cell) {
        cell.value = value.trim();
        written.push(cell);
      }
    });
    if (at < lines.length - 1) {
      if (row === lastRow(body)) {
        add(body); // below a blank line, too: a missing reading is one line of the block
      }
      const rows = rowsOf(body);
      row = rows[rows.indexOf(row) + 1];
    }
  });
  grow(body);
  return written;
}

/** Gives the table as many rows as the one that was sent. */
export function resize(body, sent) {
  while (rowsOf(body).length < sent.children.length) {
    body.append(document.importNode(sent.children[rowsOf(body).length], true));
  }
  const blank = (row) => cells(row).every((cell) => cell.value === "" && cell.dataset.seen === "");
  const inUse = (row) => row.contains(document.activeElement);
  while (
    rowsOf(body).length > sent.children.length
    && blank(lastRow(body)) && !inUse(lastRow(body))
  ) {
    lastRow(body).remove();
  }
}
