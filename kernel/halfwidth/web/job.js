// All pages: how they stand changes while other windows are at work.

import "./root.js";

setInterval(async () => {
  if (document.hidden || document.body.contains(document.activeElement?.closest("input"))) {
    return;
  }
  const text = await fetch(location.href).then((r) => (r.ok ? r.text() : ""), () => "");
  const fresh = new DOMParser().parseFromString(text, "text/html").querySelector("main");
  const old = document.querySelector("main");
  if (fresh && fresh.innerHTML !== old.innerHTML && !old.contains(document.activeElement)) {
    old.replaceWith(document.importNode(fresh, true));
  }
}, 3000);
