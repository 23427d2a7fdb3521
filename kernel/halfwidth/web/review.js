// Review: works out on request where results come from, since that takes many runs of the page.

import { patiently, reached, send, tell } from "./parts.js";

/** What stands in the fields of the sheet, by name: a new sheet has none of it. */
const typed = () => new Map(
  [...document.querySelectorAll("main input[name]")].map(({ name, value }) => [name, value]));

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
    for (const field of document.querySelectorAll("main input[name]")) {
      field.value = before.get(field.name) ?? field.value;
    }
    document.getElementById("trace").scrollIntoView();
  });
});
