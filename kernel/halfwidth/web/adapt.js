// Adapt: a step or a block becomes a field where it stands; what the change comes to is shown below
// while it is typed, and kept in the job's copy of the page when the engineer says so.

import { Drafts } from "./drafts.js";
import { stepEditor, tokens } from "./editor.js";
import { patiently, reached, send, tell } from "./parts.js";

const LOOK = 2000; // ms between looks for what another editor changed
const SLOW = 250; // ms after which it is said that something is being tried
const AGREE = 428; // the status of an answer that asks whether it is really meant
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
  form.dataset.place = place;
  item.classList.toggle("changing", how === "replace");
  item.querySelector(".tools").before(form);

  const first = Number(how === "replace" ? item.dataset.first : item.dataset.last)
    + (how === "replace" ? 0 : 1);
  const edit = (typed) => [
    ["how", how], ["first", item.dataset.first], ["last", item.dataset.last],
    ["fenced", item.dataset.fenced], ["typed", typed], ["seen", version], ["with", values],
  ];
  let asked = 0;
  let settled = false;

  async function attempt(typed) {
    if (settled) {
      return; // it was kept or dropped since
    }
    if (typed === original) {
      drafts.drop(place);
    } else {
      drafts.put(place, typed, first);
    }
    const mine = ++asked;
    const slow = setTimeout(() => working("Being tried …"), SLOW);
    await reached(async () => {
      const answer = await patiently(send("try", edit(typed)));
      if (mine === asked) {
        show(answer);
      }
    });
    clearTimeout(slow);
  }

  /** Where the engineer looks, besides the note at the top of the window. */
  function working(words) {
    if (!outcome.querySelector(".working")) {
      outcome.prepend(made("p", { className: "small working", textContent: words }));
    }
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
    const agreed = event.submitter?.value === "agreed" ? [["agreed", "1"]] : [];
    const slow = setTimeout(() => working("Being tried before it is kept …"), SLOW);
    reached(async () => {
      const answer = await patiently(send("keep", [...edit(editor.text()), ...agreed]));
      clearTimeout(slow);
      if (answer.status === 200) {
        settled = true;
        drafts.drop(place);
        delete form.dataset.place;
        await load();
        document.getElementById(answer.text)?.scrollIntoView({ block: "center" });
      } else {
        show(answer);
        if (answer.status === AGREE) {
          outcome.lastElementChild.append(
            made("button", { type: "submit", value: "agreed", textContent: "Keep it as it is" }));
        }
      }
    });
  });
  drop.addEventListener("click", () => {
    asked++;
    settled = true;
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

/** Shows what was typed beside what stands there now, so that it can be taken up again. */
function gone(place) {
  const { typed, seen: line } = drafts.get(place);
  const [how, , source] = JSON.parse(place);
  const near = items().find((item) => Number(item.dataset.last) >= Number(line)) ?? items().at(-1);
  const field = made("textarea", { id: `change-${++count}`, value: typed, readOnly: true });
  const before = made("details", {}, made("summary", { textContent: "What stood there before" }),
    made("pre", { textContent: source }));
  const up = made("button", { type: "button",
    textContent: how === "replace" ? "Change what stands here to it" : "Put it in below this" });
  const drop = made("button", { type: "button", textContent: "Drop" });
  const box = made("section", { className: "gone" },
    made("label", { htmlFor: field.id,
      textContent: "You typed this and did not keep it. The lines it was meant for were changed"
        + " meanwhile, in another window or editor; what follows stands there now." }),
    field, before, made("p", { className: "hands" }, up, drop));
  up.addEventListener("click", () => {
    drafts.drop(place);
    drafts.put(key(near, how), typed, line);
    box.remove();
    open(near, how)?.focus();
  });
  drop.addEventListener("click", () => {
    drafts.drop(place);
    box.remove();
  });
  near.before(box);
}

function reopen(before) {
  const places = new Set([...drafts.places(), ...before]);
  for (const place of places) {
    const [how] = JSON.parse(place);
    const item = items().find((one) => key(one, how) === place);
    if (item) {
      open(item, how);
    } else if (drafts.get(place)) {
      gone(place);
    }
  }
}

// --- the sheet

/** Where the window stands: at which item, and what is being typed into. */
function stand() {
  const top = items().find((item) => item.getBoundingClientRect().bottom > 0);
  const field = document.activeElement?.closest("form.change textarea");
  return {
    source: top?.dataset.source,
    at: top?.getBoundingClientRect().top,
    open: [...document.querySelectorAll("form.change[data-place]")].map((form) => form.dataset.place),
    typing: field?.form.dataset.place,
    caret: [field?.selectionStart, field?.selectionEnd],
  };
}

function restore({ source, at, typing, caret }) {
  const top = items().find((item) => item.dataset.source === source);
  if (top) {
    window.scrollBy(0, top.getBoundingClientRect().top - at);
  }
  const form = [...document.querySelectorAll("form.change")]
    .find(({ dataset: { place } }) => place === typing);
  const field = form?.querySelector("textarea");
  field?.focus({ preventScroll: true });
  field?.setSelectionRange(...caret);
}

let loading = null;

/** Shows the page as it is now; what is being typed stays open. */
function load() {
  loading ??= loadNow().finally(() => {
    loading = null;
  });
  return loading;
}

async function loadNow() {
  const wanted = new URLSearchParams(location.search).get("with");
  const answer = await patiently(send("adapt", wanted ? [["with", wanted]] : []));
  if (answer.status !== 200) {
    tell(answer.text, "bad");
    return;
  }
  const sent = new DOMParser().parseFromString(answer.text, "text/html").getElementById("parts");
  const before = stand();
  ({ version, with: values } = sent.dataset);
  document.getElementById("parts").replaceWith(document.importNode(sent, true));
  paint();
  reopen(before.open);
  restore(before);
}

async function look() {
  const shown = version;
  const answer = await send("version");
  if (answer.status === 200 && answer.text !== shown && version === shown && !loading) {
    await load();
  }
}

reached(async () => {
  await load();
  document.getElementById(location.hash.slice(1))?.scrollIntoView({ block: "center" });
  setInterval(() => document.hidden || reached(look), LOOK);
});
