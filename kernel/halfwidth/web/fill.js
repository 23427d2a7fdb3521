// Fill in: enters what is typed, shows what comes of it, and never loses an entry.

import { Drafts } from "./drafts.js";
import * as grid from "./grid.js";
import { button, isWrong, place, sayCells } from "./said.js";
import { isAway, patiently, reached, renew, seen, send, tell, visit } from "./parts.js";

const LOOK = 1500; // ms between looks for what other windows and files changed
const drafts = new Drafts(document.body.dataset.job, document.body.dataset.page, visit);

const entries = () => [...document.querySelectorAll("[data-entry]")];
const entryAt = (where) => entries().find((input) => place(input) === where);
const isOpen = (input) => drafts.get(place(input)) !== undefined;

function keep(input) {
  if (input.value === input.dataset.seen) {
    drafts.drop(place(input));
  } else {
    drafts.put(place(input), input.value, input.dataset.seen);
  }
}

// --- entering

const due = new Set(); // places to be sent
let sending = null;

function enter(inputs) {
  withdraw();
  for (const input of inputs) {
    keep(input);
    if (isOpen(input)) {
      due.add(place(input));
    }
  }
  flush();
}

function flush() {
  if (!sending && due.size > 0) {
    sending = sendDue().finally(() => {
      sending = null;
      if (due.size > 0 && !isAway()) {
        flush();
      }
    });
  }
}

async function sendDue() {
  const now = [...due].filter((where) => drafts.get(where));
  due.clear();
  const values = now.flatMap((where) => {
    const [name, row, column] = JSON.parse(where);
    const { typed, seen: before } = drafts.get(where);
    return [["name", name], ["row", row], ["column", column], ["typed", typed], ["seen", before]];
  });
  const typed = new Map(now.map((where) => [where, drafts.get(where).typed]));
  await asking(async () => {
    const answer = await send("enter", values);
    if (answer.status !== 200) {
      tell(`Not entered: ${answer.text}`, "bad");
      return;
    }
    show(answer.text, typed);
  }, () => now.forEach((where) => due.add(where)));
}

/** Sends for what is computed from what was entered, and shows that it is under way. */
async function asking(action, otherwise) {
  document.getElementById("answers").setAttribute("aria-busy", "true");
  try {
    await reached(() => patiently(action()), otherwise);
  } finally {
    document.getElementById("answers").removeAttribute("aria-busy");
  }
}

// --- showing

/** Shows what the program sent. What was sent along and is entered is no draft any more. */
function show(text, sent = new Map()) {
  const fresh = renew(text, (part) => {
    const input = part.dataset.of && document.getElementById(`f-${part.dataset.of}`);
    return input && isOpen(input) && !sent.has(place(input));
  });
  if (seen() !== askedAt) {
    withdraw();
  }
  const known = new Map([...fresh.querySelectorAll("[data-entry]")].map((e) => [place(e), e]));
  for (const input of entries()) {
    const now = known.get(place(input));
    if (now) {
      take(input, now, sent);
    } else if (input.dataset.row && !isOpen(input)) {
      blank(input); // its row is there no more
    }
  }
  for (const body of document.querySelectorAll("table.entry tbody")) {
    const name = body.closest("[data-table]").dataset.table;
    const table = fresh.querySelector(`[data-table="${CSS.escape(name)}"] tbody`);
    if (table) {
      grid.resize(body, table);
    }
  }
  document.querySelectorAll("table.entry tbody").forEach(grid.grow);
  document.querySelectorAll("[data-table]").forEach(sayCells);
  sayRefused();
  return fresh;
}

function blank(input) {
  input.value = "";
  input.placeholder = "";
  input.dataset.seen = "";
  input.dataset.said = "";
  input.setAttribute("aria-invalid", "false");
}

/** Beside the answers: what is typed and does not count, so that they are not taken for its. */
function sayRefused() {
  const answers = document.getElementById("answers");
  answers.querySelector(".refused-ones")?.remove();
  const wrong = entries().filter((input) => isWrong(input) && input.dataset.kept !== "true");
  if (wrong.length > 0) {
    const names = wrong.map((input) => input.ariaLabel
      ?? document.querySelector(`label[for="${input.id}"]`)?.innerText ?? input.dataset.name);
    const note = document.createElement("p");
    note.className = "warning refused-ones";
    note.textContent = `Not entered: ${names.join("; ")}. Previous values still apply.`;
    answers.prepend(note);
  }
}

function take(input, now, sent) {
  const where = place(input);
  const mine = sent.get(where);
  const wrong = isWrong(now);
  const refused = wrong && now.dataset.kept !== "true";
  if (mine !== undefined && !refused) {
    input.dataset.seen = now.dataset.seen;
    if (drafts.get(where)?.typed === mine) {
      drafts.drop(where);
      input.value = now.dataset.seen;
    } else {
      keep(input); // typed on meanwhile, upon what is entered now
    }
  }
  if (mine !== undefined || !isOpen(input)) {
    input.setAttribute("aria-invalid", wrong);
    input.dataset.kept = now.dataset.kept ?? "";
    input.dataset.said = now.dataset.said ?? "";
    input.dataset.conflict = now.dataset.conflict ?? "";
    input.dataset.theirs = now.dataset.seen;
  }
  if (!isOpen(input)) {
    input.dataset.seen = now.dataset.seen;
    input.placeholder = now.placeholder ?? "";
    input.title = now.title;
    input.value = now.dataset.seen;
  }
}

// --- while typing

let reading = 0;

async function read(input) {
  const mine = ++reading;
  const values = Object.entries({
    name: input.dataset.name,
    row: input.dataset.row ?? "0",
    column: input.dataset.column ?? "",
    typed: input.value,
  });
  const answer = await send("read", values).catch(() => null);
  if (answer === null || mine !== reading || document.activeElement !== input) {
    return;
  }
  if (input.dataset.row) {
    input.dataset.said = answer.text;
    sayCells(input.closest("[data-table]"));
  } else {
    const said = document.getElementById(`s-${input.dataset.name}`);
    said.className = answer.status === 200 ? "said" : "said unsure";
    said.textContent = answer.text;
  }
}

let pause;

document.addEventListener("input", ({ target }) => {
  if (target.matches("[data-entry]")) {
    keep(target);
    clearTimeout(pause);
    pause = setTimeout(() => read(target), 120);
    const body = target.closest("tbody");
    if (body) {
      grid.grow(body);
    }
  }
});

document.addEventListener("change", ({ target }) => {
  if (target.matches("[data-entry]")) {
    reading++;
    clearTimeout(pause);
    enter([target]);
  } else if (target.matches("[data-load]") && target.files.length > 0) {
    load(target);
  }
});

document.addEventListener("focusin", ({ target }) => {
  if (target.matches("td [data-entry]")) {
    sayCells(target.closest("[data-table]"));
  }
});

document.addEventListener("keydown", (event) => {
  const input = event.target.closest("[data-entry]");
  const plain = !event.ctrlKey && !event.metaKey && !event.altKey;
  if ((event.ctrlKey || event.metaKey) && event.key === "z" && !(input && isOpen(input))) {
    event.preventDefault();
    undo();
  } else if (input && plain && event.key === "Escape") {
    input.value = input.dataset.seen;
    enter([input]);
    input.setAttribute("aria-invalid", "false");
  } else if (input?.dataset.row && plain) {
    if (grid.key(event, input)) {
      event.preventDefault();
    }
  } else if (input && plain && event.key === "Enter") {
    event.preventDefault();
    const all = entries();
    all[all.indexOf(input) + 1]?.focus();
  }
});

document.addEventListener("paste", (event) => {
  const input = event.target.closest("td [data-entry]");
  const text = event.clipboardData.getData("text/plain");
  if (input && /[\t\n]/.test(text.replace(/\n$/, ""))) {
    event.preventDefault();
    if (grid.isHeading(text, input)) {
      tell("The first line of what was pasted names the columns, and is left out.");
    }
    enter(grid.paste(text, input));
  }
});

document.addEventListener("click", ({ target }) => {
  const action = target.dataset?.do;
  if (action === "undo") {
    undo();
  } else if (action === "take") {
    takeBack(target.dataset.first);
  } else if (action === "leave") {
    tell("");
  } else if (action === "mine" || action === "theirs") {
    const said = target.closest(".said");
    settle(said.dataset.about ? entryAt(said.dataset.about)
      : document.getElementById(`f-${said.dataset.of}`), action);
  }
});

/** Settles which of two entries stands. */
function settle(input, which) {
  input.dataset.seen = input.dataset.theirs;
  if (which === "theirs") {
    input.value = input.dataset.theirs;
    input.setAttribute("aria-invalid", "false");
    drafts.drop(place(input));
    look(true);
  } else {
    enter([input]);
  }
  input.focus();
}

/** What the sheet was like when it was asked whether to take values back; null if it was not. */
let askedAt = null;

/** Takes that question away: what it names may not be the last that was entered any more. */
function withdraw() {
  if (askedAt !== null) {
    askedAt = null;
    if (document.querySelector("#notice [data-do=take]")) {
      tell("");
    }
  }
}

/** Takes the last entry back; asks first if that is more than one value. */
function undo() {
  return reached(async () => {
    const { status, text } = await send("last");
    const [first, count, words] = text.split("\n");
    if (status !== 200) {
      tell(text || "There is nothing to take back.", text ? "bad" : "");
    } else if (count === "1") {
      await takeBack(first);
    } else {
      tell(`Take back ${words}? `);
      const notice = document.getElementById("notice");
      const yes = button(`Take ${count} values back`, "take");
      yes.dataset.first = first;
      notice.append(yes, button("Leave them", "leave"));
      askedAt = seen();
      yes.focus();
    }
  });
}

function takeBack(first) {
  return asking(async () => {
    const answer = await send("undo", [["first", first]]);
    if (answer.status === 200) {
      tell(show(answer.text).querySelector("#parts").dataset.told);
    } else {
      tell(answer.text, "bad");
    }
  });
}

/** Its bytes, not its text: the program tells what they are. */
function base64(file) {
  return new Promise((done, failed) => {
    const reader = new FileReader();
    reader.onload = () => done(reader.result.replace(/^[^,]*,/, ""));
    reader.onerror = () => failed(reader.error);
    reader.readAsDataURL(file);
  });
}

async function load(input) {
  const file = input.files[0];
  let bytes;
  try {
    bytes = await base64(file);
  } catch (unread) {
    tell(`${file.name} cannot be read: ${unread.message}`, "bad");
    return;
  } finally {
    input.value = "";
  }
  const cells = entries().filter((cell) => cell.dataset.row && cell.dataset.name === input.dataset.load);
  const seenCells = cells.flatMap(({ dataset: { name, row, column, seen: before } }) => [
    ["name", name], ["row", row], ["column", column], ["seen", before],
  ]);
  await asking(async () => {
    const answer = await send("load", [["table", input.dataset.load], ["file", file.name], ["bytes", bytes], ...seenCells]);
    if (answer.status === 200) {
      for (const cell of cells) {
        drafts.drop(place(cell)); // the file stands in place of what was refused
        due.delete(place(cell));
      }
      tell(show(answer.text).querySelector("#parts").dataset.told);
    } else {
      tell(`The file was not entered: ${answer.text}`, "bad");
    }
  });
}

// --- what others change

async function look(always) {
  if (sending || (document.hidden && !always)) {
    return;
  }
  if (isAway()) {
    flush();
  }
  await reached(async () => {
    const answer = await send("fill", [["seen", always ? "" : seen()]]);
    if (answer.status === 200 && !sending) {
      show(answer.text);
    }
  });
  flush();
}

// What an earlier window could not enter any more.
for (const where of drafts.places()) {
  const input = entryAt(where) ?? growTo(where);
  const { typed, seen: before } = drafts.get(where);
  if (input?.value === typed) {
    drafts.drop(where); // it arrived, though the answer did not
  } else if (input) {
    input.value = typed;
    input.dataset.seen = before;
    due.add(where);
  }
}

function growTo(where) {
  const [name, row] = JSON.parse(where);
  const body = document.querySelector(`[data-table="${CSS.escape(name)}"] tbody`);
  while (body && grid.rowsOf(body).length < Number(row)) {
    grid.add(body);
  }
  return entryAt(where);
}

asking(async () => {
  const answer = await send("fill", [["first", "1"]]);
  if (answer.status === 200) {
    show(answer.text);
  } else {
    tell(answer.text, "bad");
  }
}).then(flush).then(() => setInterval(() => look(false), LOOK));
