import { newLine, stepEditor, tokens } from "./editor.js";

const said = [];
const check = (name, found, wanted) => {
  const [a, b] = [JSON.stringify(found), JSON.stringify(wanted)];
  said.push(a === b ? `ok: ${name}` : `WRONG: ${name}: ${a} and not ${b}`);
};
const wait = ms => new Promise(resolve => setTimeout(resolve, ms));

document.addEventListener("securitypolicyviolation", e => said.push("WRONG: " + e.violatedDirective));

const kinds = text => tokens(text).filter(t => t.kind).map(t => t.kind + " " + t.text);
check("tokens", kinds('double x = 1.5e-3 * y2; // m: "so"'),
  ["keyword double", "number 1.5e-3", 'comment // m: "so"']);
check("strings", kinds('String s = "a \\" // b" + \'\\\'\' + "open'),
  ['string "a \\" // b"', "string '\\''", 'string "open']);
check("text blocks", kinds('var s = """\n "no" 1\n"""; /* 2\n */ 0x1F'),
  ["keyword var", 'string """\n "no" 1\n"""', "comment /* 2\n */", "number 0x1F"]);
check("names", kinds("newLine doubleIt année1 $if _2"), []);
for (const text of ["", "a\n", "\n\n", '"', "/*", "'", "é\u{1F600}\u0000 1_000L .5f"]) {
  check("tokens are the text", tokens(text).map(t => t.text).join(""), text);
}
check("indent", newLine("  a;", ""), { text: "\n  ", back: 0 });
check("deeper", newLine("f(x) {", ""), { text: "\n    ", back: 0 });
check("between brackets", newLine("  {", "}"), { text: "\n      \n  ", back: 3 });

const field = document.querySelector("textarea");
const changes = [];
const editor = stepEditor(field, { firstLine: 12, change: text => changes.push(text), pause: 50 });
const key = (name, more = {}) => {
  const event = new KeyboardEvent("keydown", { key: name, bubbles: true, cancelable: true, ...more });
  return field.dispatchEvent(event);
};
const type = (text, from, to = from) => {
  editor.replace(text);
  field.focus();
  field.setSelectionRange(from, to);
};
const box = document.querySelector(".step-editor input");
const paint = document.querySelector(".step-editor-paint");
const original = field.value;

check("the paint is the text", paint.textContent, original + "\n");
check("numbers", document.querySelector(".step-editor-lines").textContent.slice(0, 4), "1213");

for (const property of ["fontSize", "fontFamily", "lineHeight", "letterSpacing", "tabSize",
  "paddingLeft", "paddingTop", "borderLeftWidth", "whiteSpace"]) {
  check("same " + property, getComputedStyle(paint)[property], getComputedStyle(field)[property]);
}
const [a, b] = [paint.getBoundingClientRect(), field.getBoundingClientRect()];
check("same place", [a.left, a.top, a.width, a.height], [b.left, b.top, b.width, b.height]);
const bottom = () => paint.lastChild.getBoundingClientRect().bottom;
const sees = () => field.getBoundingClientRect().top + field.clientTop + field.clientHeight;
check("shows every line", bottom() <= sees(), true);
type("double " + "wide ".repeat(60), 0);
check("shows every line over the scroll bar", bottom() <= sees(), true);
field.scrollLeft = 300;
field.dispatchEvent(new Event("scroll"));
check("scrolls along", [field.scrollLeft, paint.scrollLeft], [300, 300]);
const padding = parseFloat(getComputedStyle(paint).paddingRight); // a textarea leaves it out
const further = paint.scrollWidth - field.scrollWidth;
check("same width of text", further >= 0 && further <= padding + 1, true);

type("a {", 3);
check("Enter is taken", key("Enter"), false);
check("Enter indents", [field.value, field.selectionStart], ["a {\n    ", 8]);
check("a closing bracket goes back", [key("}"), field.value], [false, "a {\n}"]);
type("f()", 2);
key("Enter");
check("between brackets", [field.value, field.selectionStart], ["f(\n    \n)", 7]);
type("a", 1);
check("Tab leaves", [key("Tab"), field.value], [true, "a"]);
box.checked = true;
type("a\nb\nc", 0, 3);
check("Tab indents", [key("Tab"), field.value], [false, "    a\n    b\nc"]);
field.setSelectionRange(0, 11);
check("and back", [key("Tab", { shiftKey: true }), field.value], [false, "a\nb\nc"]);
key("Escape");
check("Escape frees Tab", [box.checked, key("Tab")], [false, true]);

await wait(120);
changes.length = 0;
type("", 0);
for (const letter of "abc") {
  field.setRangeText(letter, field.value.length, field.value.length, "end");
  field.dispatchEvent(new Event("input", { bubbles: true }));
}
check("not yet told", changes, []);
await wait(150);
check("told once", changes, ["abc"]);

type("one\ntwo\nthree", 0);
editor.show([{ line: 13, text: "cannot find <b>two</b>" }, { line: 12, text: "first" }]);
const described = field.getAttribute("aria-describedby").split(" ")
  .map(id => document.getElementById(id).textContent).join(" ");
check("described by", described.includes("Line 12 firstLine 13 cannot find <b>two</b>"), true);
check("invalid", field.getAttribute("aria-invalid"), "true");
check("marked", [...paint.children].map(row => row.classList.contains("wrong")),
  [true, true, false]);
document.querySelectorAll(".step-editor-problems button")[1].click();
check("goes there", [document.activeElement === field, field.selectionStart], [true, 4]);
editor.show([]);
check("sound again", field.getAttribute("aria-invalid"), "false");
check("no problem left", document.querySelectorAll(".step-editor-problems li").length, 0);
check("fits", document.documentElement.scrollWidth <= innerWidth, true);

editor.replace(original);
editor.show([{ line: 14, text: "cannot find symbol: variable halfWave. Is it declared above?" }]);
const out = document.createElement("output");
out.hidden = true;
out.textContent = said.join("\n") + "\nend";
document.body.append(out);
