// Talks to the program, and puts the parts of the sheet that changed in their places.

import { root } from "./root.js";

const body = document.body;
const notice = document.getElementById("notice");
const busy = document.getElementById("busy");
const page = body.dataset.page?.split("/").map(encodeURIComponent).join("/");

export const visit = body.dataset.visit ?? "";

export function address(view) {
  return `${root()}/${view}/${page}?visit=${encodeURIComponent(visit)}`;
}

/** Tells something at the top of the sheet; nothing takes it away. */
export function tell(words, kind = "") {
  notice.textContent = words;
  notice.className = `notice ${kind}`;
}

class Away extends Error {}

let away = false;

/** Whether the program did not answer when it was asked last. */
export const isAway = () => away;

/** Asks the program; tells if it is away, and when it is back. */
export async function reached(action, otherwise = () => {}) {
  try {
    await action();
    if (away) {
      away = false;
      tell("");
    }
  } catch (problem) {
    if (!(problem instanceof Away)) {
      throw problem;
    }
    away = true;
    otherwise();
    tell(problem.message, "bad");
  }
}

/** Sends values and returns the answer; Away if the program does not answer or knows us no more. */
export async function send(view, values = []) {
  let answer;
  try {
    answer = await fetch(address(view), { method: "POST", body: new URLSearchParams(values) });
  } catch {
    throw new Away(
      "The program does not answer. What you type is kept in this browser and is entered as soon"
        + " as the program runs again; leave this window open.");
  }
  if (answer.status === 403) {
    throw new Away(
      "The program was started anew. Open the address that it printed, in this browser: what you"
        + " typed is kept here and is entered then.");
  }
  return { status: answer.status, text: answer.status === 204 ? "" : await answer.text() };
}

/** Shows how far a long computation is, with a way to stop it, until the promise is settled. */
export async function patiently(promise) {
  const from = Date.now();
  const timer = setInterval(async () => {
    busy.hidden = Date.now() - from < 600;
    if (busy.hidden) {
      return;
    }
    const words = await fetch(address("progress")).then((r) => (r.ok ? r.text() : ""), () => "");
    busy.firstElementChild.textContent = words ? `Computing: ${words}` : "Computing";
  }, 300);
  try {
    return await promise;
  } finally {
    clearInterval(timer);
    busy.hidden = true;
  }
}

busy?.querySelector("button").addEventListener("click", () => send("stop").catch(() => {}));

const shown = new Map();
let hash = document.getElementById("parts")?.dataset.hash ?? "";

/** What the window shows now. */
export const seen = () => hash;

function replace(old, fresh) {
  const before = old.querySelector("img");
  const after = fresh.querySelector("img");
  if (before && after) {
    before.alt = after.alt; // the old picture stays until the new one is there
    if (before.getAttribute("src") !== after.getAttribute("src")) {
      before.src = after.getAttribute("src");
    }
  } else {
    const made = document.importNode(fresh, true);
    made.open = old.open; // of a table that is folded away until somebody looks
    old.replaceWith(made);
  }
}

/**
 * Puts the sheet that the program sent in place, part by part.
 *
 * @param keep tells whether a part stays as it is, for it belongs to something being typed
 * @return the sent sheet, for what is not a part
 */
export function renew(text, keep = () => false) {
  const sent = new DOMParser().parseFromString(text, "text/html");
  const place = document.getElementById("parts");
  hash = sent.getElementById("parts").dataset.hash;
  const fresh = [...sent.querySelectorAll("[data-part]")];
  const same = fresh.length === document.querySelectorAll("[data-part]").length
    && fresh.every((part) => document.getElementById(part.id));
  for (const part of fresh) {
    const old = document.getElementById(part.id);
    if (old && !keep(part) && shown.get(part.id) !== part.outerHTML) {
      replace(old, part);
      shown.set(part.id, part.outerHTML);
    }
  }
  if (!same) {
    views(sent, place);
  }
  return sent;
}

// Plots and tables come and go with the values.
function views(sent, place) {
  const old = place.querySelector(".views");
  const fresh = sent.querySelector(".views");
  if (old && fresh) {
    const looked = [...old.querySelectorAll("details[open]")].map((table) => table.id);
    const made = document.importNode(fresh, true);
    old.replaceWith(made);
    looked.forEach((id) => made.querySelector(`#${id}`)?.setAttribute("open", ""));
  }
}
