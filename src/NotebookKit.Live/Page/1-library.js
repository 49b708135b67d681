"use strict";
// ---- The compiled library: unpacked from this file, run beside the page, asked by name. ----
const library = { waiting: new Map(), n: 0, worker: null };

async function startLibrary() {
  await early.started;
  library.worker = early.worker;
  library.worker.onmessage = ({ data }) => {
    if (data.n === 0) {
      warmSoon();
      return;
    }
    const done = library.waiting.get(data.n);
    if (!done) return;
    library.waiting.delete(data.n);
    if (library.waiting.size === 0) busy(false);
    done(JSON.parse(data.text));
  };
}

// Asks the library; the answer has "error" where it refuses.
function ask(verb, ...args) {
  return new Promise(done => {
    const n = ++library.n;
    library.waiting.set(n, done);
    busy(true);
    library.worker.postMessage({ n, verb, args });
  });
}

// What nobody waits for: while nothing is asked, changes that change nothing, one at a time, so that the reader's first ones are quick.
const WARM_ROUNDS = 40;
function warm(id) {
  library.warming = { id, round: 0 };
  warmSoon();
}
function warmSoon() {
  clearTimeout(library.resting);
  if (library.warming.round === WARM_ROUNDS) return;
  library.resting = setTimeout(() => {
    if (library.waiting.size > 0) warmSoon();
    else library.worker.postMessage({ n: 0, verb: "Warm", args: [library.warming.id, library.warming.round++] });
  }, 50);
}

// ---- Elements: text is always text, never markup. Pictures come from the library, which escapes what stands in them. ----
function el(tag, attributes, ...children) {
  const e = document.createElement(tag);
  for (const [key, value] of Object.entries(attributes || {})) {
    if (key.startsWith("on")) e.addEventListener(key.slice(2), value);
    else if (value === true) e.setAttribute(key, "");
    else if (value !== false && value !== null && value !== undefined) e.setAttribute(key, value);
  }
  e.append(...children.flat(Infinity).filter(c => c !== null && c !== undefined && c !== ""));
  return e;
}
const $ = id => document.getElementById(id);
const fill = (id, ...children) => $(id).replaceChildren(...children.flat(Infinity).filter(c => c));
const sentence = text => text ? text[0].toUpperCase() + text.slice(1) : "";
const numberOf = text => String(text).trim() === "" || !Number.isFinite(Number(text)) ? null : Number(text);

function busy(is) {
  $("status").classList.toggle("busy", is);
}
function say(text) {
  $("status").textContent = text;
}
function problem(answer) {
  const all = answer && answer.all && answer.all.length > 1 ? answer.all : answer ? [answer.error] : [];
  fill("problem", all.length ? el("div", { class: "failure" }, all.map(s => el("p", {}, s)),
    desk.answer ? el("p", {}, "The last good answer stays below.") : "") : null);
}
function table(caption, headings, rows) {
  return el("div", { class: "scroll" }, el("table", {}, caption ? el("caption", {}, caption) : "",
    headings ? el("thead", {}, el("tr", {}, headings.map(h => el("th", { scope: "col" }, h)))) : "",
    el("tbody", {}, rows.map(r => el("tr", {}, r.map((c, i) => {
      const cell = c instanceof Element && /^T[DH]$/.test(c.tagName) ? c : i === 0 ? el("th", { scope: "row" }, c) : el("td", {}, c);
      // On a phone rows stand as blocks; each cell then says what it is.
      if (headings && i > 0 && cell.textContent) cell.dataset.label = headings[i];
      return cell;
    }))))));
}
function findingBox(f) {
  return el("p", { class: f.severity === "error" ? "error" : f.severity === "warning" ? "warning" : "note" }, sentence(f.message));
}
function picture(p) {
  const f = el("figure", { class: "picture" + (p.narrow ? " wide" : "") }, el("figcaption", {}, p.title));
  if (!p.svg) f.append(el("p", {}, "Not drawn: " + p.why));
  else {
    const box = el("div", { class: p.narrow ? "full" : "" });
    box.innerHTML = p.svg;
    f.append(box);
    if (p.narrow) {
      const small = el("div", { class: "narrow" });
      // A second copy of the drawing has the same ids inside; nothing refers to them across copies.
      small.innerHTML = p.narrow;
      f.append(small);
    }
    if (p.words) f.append(el("p", {}, p.words));
  }
  return f;
}
function saveFile(name, text, type) {
  const a = el("a", { href: URL.createObjectURL(new Blob([text], { type: type || "text/plain" })), download: name });
  document.body.append(a);
  a.click();
  a.remove();
  setTimeout(() => URL.revokeObjectURL(a.href), 10_000);
}
const fileName = text => text.toLowerCase().replace(/[^a-z0-9]+/g, "-").replace(/^-|-$/g, "") || "design";
