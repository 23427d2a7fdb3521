// Review: works out on request where results come from, since that takes many runs of the page.

import { patiently, reached, send, tell } from "./parts.js";

const fields = () => [...document.querySelectorAll("main input[name]:not([type=hidden])")];
const known = (field) => `${field.form?.id} ${field.name}`;

/** What stands in the fields of the sheet, by form and name: a new sheet has none of it. */
const typed = () => new Map(fields().map((f) => [known(f), { value: f.value, checked: f.checked }]));

/** A formula that is wider than its place scrolls, by keyboard as well. */
function reachable() {
  for (const line of document.querySelectorAll(".worked p, .each p, .calls p")) {
    if (line.scrollWidth > line.clientWidth && line.clientWidth > 0) {
      line.tabIndex = 0;
    }
  }
}

reachable();
window.addEventListener("resize", reachable);
document.addEventListener("toggle", reachable, true);

document.addEventListener("submit", (event) => {
  const form = event.target;
  if (!form.matches("[data-trace]")) {
    return;
  }
  event.preventDefault();
  const values = [...new FormData(form)];
  reached(async () => {
    const answer = await patiently(send("trace", values));
    if (answer.status !== 200) {
      tell(answer.text, "bad");
      return;
    }
    tell("");
    const before = typed();
    const sent = new DOMParser().parseFromString(answer.text, "text/html").querySelector("main");
    document.querySelector("main").replaceWith(document.importNode(sent, true));
    for (const field of fields()) {
      Object.assign(field, before.get(known(field)) ?? {});
    }
    reachable();
    document.getElementById("trace").scrollIntoView();
  });
});
