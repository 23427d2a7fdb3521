// Adapt: a step or a block becomes a field where it stands; what the change comes to is shown below
// while it is typed, and kept in the job's copy of the page when the engineer says so.

import { Drafts } from "./drafts.js";
import { stepEditor, tokens } from "./editor.js";
import { patiently, reached, send, tell } from "./parts.js";

const LOOK = 2000; // ms between looks for what another editor changed
const drafts = new Drafts(document.body.dataset.job, document.body.dataset.page, "adapt");

let version = ""; // of the page's text that is shown
let values = ""; // which values it was run with

const items = () => [...document.querySelectorAll(".item")];

/** Names a change by the text it began with: lines move when something above is changed. */
function key(item, how) {
  const same = items().filter((other) => other.dataset.source === item.dataset.source);
  return JSON.stringify([how, same.indexOf(item), item.dataset.source]);
}

// --- colours

function paint() {
  for (const code of document.querySelectorAll(".item.java .source code")) {
    code.replaceChildren(...tokens(code.textContent).map(({ kind, text }) => {
      if (!kind) {
        return text;
      }
      const span = document.createElement("span");
      span.className = kind;
      span.textContent = text;
      return span;
    }));
  }
}

// --- a change

let count = 0;

function made(tag, properties = {}, ...children) {
  const element = Object.assign(document.createElement(tag), properties);
  element.append(...children);
  return element;
}

/** The words over a field. */
function heading(item, how) {
  if (how === "replace") {
    const { first, last } = item.dataset;
    return first === last ? `Line ${first}` : `Lines ${first} to ${last}`;
  }
  const columns = item.dataset.source.split("\n")[0];
  return item.dataset.kind === "rows"
    ? `One more row, with the columns ${columns}`
    : `Below line ${item.dataset.last}`;
}

/** Opens the field for a change, with the text kept from before if there is one. */
function open(item, how) {
  const there = item.querySelector("form.change");
  if (there) {
    there.querySelector("textarea").focus();
    return;
  }
  const place = key(item, how);
  const original = how === "replace" ? item.dataset.source : "";
  const field = made("textarea", { id: `change-${++count}`, value: drafts.get(place)?.typed ?? original });
  const outcome = made("div", { className: "outcome" });
  outcome.setAttribute("aria-live", "polite");
  const keep = made("button", { type: "submit", textContent: "Keep" });
  const drop = made("button", { type: "button", textContent: "Drop" });
  const form = made("form", { className: "change" },
    made("label", { htmlFor: field.id, textContent: heading(item, how) }),
    field, outcome, made("p", { className: "hands" }, keep, drop));
  item.classList.toggle("changing", how === "replace");
  item.querySelector(".tools").before(form);

  const first = Number(how === "replace" ? item.dataset.first : item.dataset.last)
    + (how === "replace" ? 0 : 1);
  const edit = (typed) => [
    ["how", how], ["first", item.dataset.first], ["last", item.dataset.last],
    ["fenced", item.dataset.fenced], ["typed", typed], ["seen", version], ["with", values],
  ];
  let asked = 0;

  async function attempt(typed) {
    if (typed === original) {
      drafts.drop(place);
    } else {
      drafts.put(place, typed, version);
    }
    const mine = ++asked;
    await reached(async () => {
      const answer = await patiently(send("try", edit(typed)));
      if (mine === asked) {
        show(answer);
      }
    });
  }

  function show(answer) {
    if (answer.status !== 200) {
      editor.show([]);
      outcome.replaceChildren(made("p", { className: "warning", textContent: answer.text }));
      return;
    }
    const trial = new DOMParser().parseFromString(answer.text, "text/html").querySelector(".trial");
    const list = trial.querySelector(".problems");
    editor.show([...list.children].map((problem) => (
      { line: Number(problem.dataset.line), text: problem.textContent })));
    list.remove();
    outcome.replaceChildren(document.importNode(trial, true));
  }

  const editor = stepEditor(field, { firstLine: first, change: attempt });
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    asked++;
    reached(async () => {
      const answer = await send("keep", edit(editor.text()));
      if (answer.status === 200) {
        drafts.drop(place);
        location.hash = answer.text;
        location.reload();
      } else {
        show(answer);
      }
    });
  });
  drop.addEventListener("click", () => {
    asked++;
    drafts.drop(place);
    form.remove();
    item.classList.remove("changing");
    item.querySelector(`[data-how="${how}"]`).focus();
  });
  if (drafts.get(place)) {
    attempt(field.value);
  }
  return field;
}

document.addEventListener("click", ({ target }) => {
  const how = target.dataset?.how;
  if (how) {
    open(target.closest(".item"), how)?.focus();
  }
});

// --- what was not kept when the window closed, or another editor changed the page

function gone(place) {
  const { typed } = drafts.get(place);
  const field = made("textarea", { id: `change-${++count}`, value: typed, readOnly: true });
  const drop = made("button", { type: "button", textContent: "Drop" });
  const box = made("section", { className: "gone" },
    made("label", { htmlFor: field.id,
      textContent: "Typed before and not kept; the lines it began with are there no more:" }),
    field, drop);
  drop.addEventListener("click", () => {
    drafts.drop(place);
    box.remove();
  });
  document.getElementById("sheet").prepend(box);
}

function reopen() {
  for (const place of drafts.places()) {
    const [how] = JSON.parse(place);
    const item = items().find((one) => key(one, how) === place);
    if (item) {
      open(item, how);
    } else {
      gone(place);
    }
  }
}

async function look() {
  const answer = await send("version");
  if (answer.status === 200 && answer.text !== version) {
    location.reload();
  }
}

reached(async () => {
  const wanted = new URLSearchParams(location.search).get("with");
  const answer = await patiently(send("adapt", wanted ? [["with", wanted]] : []));
  if (answer.status !== 200) {
    tell(answer.text, "bad");
    return;
  }
  const sent = new DOMParser().parseFromString(answer.text, "text/html").getElementById("parts");
  ({ version, with: values } = sent.dataset);
  document.getElementById("parts").replaceWith(document.importNode(sent, true));
  paint();
  reopen();
  document.getElementById(location.hash.slice(1))?.scrollIntoView({ block: "center" });
  setInterval(() => document.hidden || reached(look), LOOK);
});
