/**
 * Makes a field for the Java of a step out of a plain textarea, which stays the field: what is
 * typed, selected, spoken and undone is the browser's. Behind it lies the same text in colours.
 *
 * Tab leaves the field as it leaves any other. Whoever wants Tab to indent ticks the box under the
 * field; Escape takes that back, so that the keyboard is never caught in it.
 */

const INDENT = "    ";

const KEYWORDS = new Set(
  ("abstract assert boolean break byte case catch char class continue default do double else enum "
    + "extends final finally float for if implements import instanceof int interface long new "
    + "package private protected public record return sealed short static super switch this throw "
    + "throws try var void while yield true false null").split(" "));

const TOKEN = new RegExp(
  [
    String.raw`(?<comment>//[^\n]*|/\*[\s\S]*?(?:\*/|$))`,
    String.raw`(?<string>"""[\s\S]*?(?:"""|$)|"(?:\\.|[^"\\\n])*"?|'(?:\\.|[^'\\\n])*'?)`,
    String.raw`(?<word>[\p{L}_$][\p{L}\p{N}_$]*)`,
    String.raw`(?<number>0[xX][\da-fA-F_]+[lL]?|0[bB][01_]+[lL]?`
      + String.raw`|(?:\d[\d_]*(?:\.[\d_]*)?|\.\d[\d_]*)(?:[eE][+-]?\d+)?[fFdDlL]?)`,
  ].join("|"),
  "gu");

/** The pieces of a Java text in order, each with its kind: "" for what has no colour. */
export function tokens(text) {
  const found = [];
  let end = 0;
  for (const match of text.matchAll(TOKEN)) {
    const { comment, string, number } = match.groups;
    const kind = comment !== undefined ? "comment"
      : string !== undefined ? "string"
      : number !== undefined ? "number"
      : KEYWORDS.has(match[0]) ? "keyword" : "";
    if (kind) {
      if (match.index > end) {
        found.push({ kind: "", text: text.slice(end, match.index) });
      }
      found.push({ kind, text: match[0] });
      end = match.index + match[0].length;
    }
  }
  if (end < text.length) {
    found.push({ kind: "", text: text.slice(end) });
  }
  return found;
}

/** What Enter writes between two pieces of text, and how far before its end the caret stands. */
export function newLine(before, behind) {
  const line = before.slice(before.lastIndexOf("\n") + 1);
  const indent = /^[ \t]*/.exec(line)[0];
  if (!/[({[]\s*$/.test(line)) {
    return { text: "\n" + indent, back: 0 };
  }
  const closing = /^[ \t]*[)}\]]/.test(behind) ? "\n" + indent : "";
  return { text: "\n" + indent + INDENT + closing, back: closing.length };
}

/**
 * Makes the field.
 *
 * @param field a textarea with an id and a label
 * @param firstLine the number of its first line in the page's file
 * @param change called with the text when typing has paused for `pause` milliseconds, and when the
 *     field is left
 * @return `text()`, `replace(text)`, and `show(problems)`, which takes a list of `{ line, text }`
 *     with lines of the page's file
 */
export function stepEditor(field, { firstLine = 1, change = () => {}, pause = 400 } = {}) {
  const frame = make("div", "step-editor");
  const numbers = make("div", "step-editor-lines");
  const paint = make("pre", "step-editor-paint");
  numbers.setAttribute("aria-hidden", "true");
  paint.setAttribute("aria-hidden", "true");
  const keys = make("p", "step-editor-keys");
  keys.id = field.id + "-keys";
  const box = make("input", "");
  box.type = "checkbox";
  const label = make("label", "");
  label.append(box, " Tab indents");
  keys.append(label, " – otherwise Tab leaves the field. Escape takes the tick away.");
  const list = make("ol", "step-editor-problems");
  list.id = field.id + "-problems";
  list.setAttribute("aria-live", "polite");

  field.before(frame);
  frame.append(numbers, paint, field, list, keys);
  field.classList.add("step-editor-text");
  field.setAttribute("wrap", "off");
  field.setAttribute("autocapitalize", "off");
  field.setAttribute("autocomplete", "off");
  field.spellcheck = false;
  field.setAttribute("aria-describedby", list.id + " " + keys.id);

  let problems = [];
  let told = field.value;
  let timer = 0;

  function lineOf(problem) {
    const lines = field.value.split("\n").length;
    return Math.min(Math.max(problem.line - firstLine, 0), lines - 1);
  }

  function draw() {
    const wrong = new Set(problems.map(lineOf));
    const rows = rowsOf(field.value);
    field.rows = Math.max(rows.length, 2);
    rows.forEach((row, i) => row.classList.toggle("wrong", wrong.has(i)));
    paint.replaceChildren(...rows);
    numbers.replaceChildren(...rows.map((row, i) => {
      const number = make("div", wrong.has(i) ? "wrong" : "");
      number.textContent = (wrong.has(i) ? "▸ " : "") + (firstLine + i);
      return number;
    }));
    follow();
  }

  function follow() {
    paint.scrollLeft = field.scrollLeft;
    paint.scrollTop = field.scrollTop;
    numbers.scrollTop = field.scrollTop;
  }

  function tell() {
    clearTimeout(timer);
    if (field.value !== told) {
      told = field.value;
      change(told);
    }
  }

  function show(found) {
    problems = [...found].sort((a, b) => a.line - b.line);
    field.setAttribute("aria-invalid", String(problems.length > 0));
    list.replaceChildren(...problems.map(problem => {
      const item = make("li", "");
      const go = make("button", "");
      go.type = "button";
      go.textContent = "Line " + problem.line;
      go.addEventListener("click", () => goTo(field, lineOf(problem)));
      item.append(go, " " + problem.text);
      return item;
    }));
    draw();
  }

  field.addEventListener("input", () => {
    draw();
    clearTimeout(timer);
    timer = setTimeout(tell, pause);
  });
  field.addEventListener("blur", tell);
  field.addEventListener("scroll", follow);
  field.addEventListener("keydown", event => {
    if (event.isComposing || event.ctrlKey || event.altKey || event.metaKey) {
      return;
    }
    if (event.key === "Escape") {
      box.checked = false;
    } else if (event.key === "Tab" && box.checked) {
      event.preventDefault();
      shift(field, event.shiftKey);
    } else if (event.key === "Enter" && !event.shiftKey) {
      event.preventDefault();
      const { text, back } = newLine(
        field.value.slice(0, field.selectionStart), field.value.slice(field.selectionEnd));
      write(field, field.selectionStart, field.selectionEnd, text);
      field.setSelectionRange(field.selectionStart - back, field.selectionStart - back);
    } else if (event.key === "}" && closesBlankLine(field)) {
      event.preventDefault();
      write(field, field.selectionStart - INDENT.length, field.selectionStart, "}");
    }
  });

  draw();
  return {
    text: () => field.value,
    replace(text) {
      field.value = told = text;
      draw();
    },
    show,
  };
}

function make(tag, kind) {
  const element = document.createElement(tag);
  if (kind) {
    element.className = kind;
  }
  return element;
}

/** One element for each line, its tokens in spans. */
function rowsOf(text) {
  const rows = [make("span", "row")];
  for (const token of tokens(text)) {
    token.text.split("\n").forEach((piece, i) => {
      if (i > 0) {
        rows.push(make("span", "row"));
      }
      if (piece && token.kind) {
        const span = make("span", token.kind);
        span.textContent = piece;
        rows.at(-1).append(span);
      } else if (piece) {
        rows.at(-1).append(piece);
      }
    });
  }
  rows.forEach(row => row.append("\n"));
  return rows;
}

/** Writes as if typed, so that the browser can undo it. */
function write(field, from, to, text) {
  field.setSelectionRange(from, to);
  const written = text
    ? document.execCommand("insertText", false, text)
    : document.execCommand("delete");
  if (!written) {
    field.setRangeText(text, from, to, "end");
    field.dispatchEvent(new Event("input", { bubbles: true }));
  }
}

/** Moves the selected lines in or out by one step. */
function shift(field, out) {
  const { value, selectionStart: from, selectionEnd: to } = field;
  if (from === to && !out) {
    write(field, from, to, INDENT);
    return;
  }
  const start = value.lastIndexOf("\n", from - 1) + 1;
  const lines = value.slice(start, to).split("\n");
  const moved = lines.map(line =>
    out ? line.replace(/^(\t| {1,4})/, "") : line && INDENT + line);
  write(field, start, to, moved.join("\n"));
  const end = start + moved.join("\n").length;
  field.setSelectionRange(from === to ? end : start, end);
}

function closesBlankLine(field) {
  const { value, selectionStart: from, selectionEnd: to } = field;
  const line = value.slice(value.lastIndexOf("\n", from - 1) + 1, from);
  return from === to && /^ +$/.test(line) && line.length >= INDENT.length;
}

function goTo(field, line) {
  const at = field.value.split("\n").slice(0, line).join("\n").length + (line > 0 ? 1 : 0);
  field.focus();
  field.setSelectionRange(at, at);
}
