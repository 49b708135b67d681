// ---- The form: every given of the file under the part it belongs to; ranges and reasons are the library's. ----
const form = { paths: "", fields: new Map() };

function sectionOf(path) {
  const steps = path.split(".");
  return steps[0] === "stages" && steps.length > 2 ? steps.slice(0, 3).join(".") : steps[0];
}
const titleOf = section => sentence(section.replace(/^stages\.(\w+)\.(.*)$/, "$1: $2"));
const changed = () => new Set(desk.states.slice(1, desk.at + 1).map(s => s.change.path));

function showForm(answer) {
  const paths = answer.givens.map(g => g.path + g.state + g.kind + g.range).join("\n");
  if (paths === form.paths) {
    const moved = changed();
    for (const g of answer.givens) form.fields.get(g.path)?.show(g, moved.has(g.path));
    return;
  }
  form.paths = paths;
  form.fields.clear();
  const open = new Set([...document.querySelectorAll("#form > details[open]")].map(d => d.dataset.section));
  const sections = new Map();
  for (const g of answer.givens) {
    const key = g.path.includes(".") ? sectionOf(g.path) : "the design";
    if (!sections.has(key)) sections.set(key, []);
    sections.get(key).push(g);
  }
  const steered = answer.givens.filter(g => g.reason && g.state === "stated");
  fill("form", steered.length ? el("details", { open: true, "data-section": "steered" },
    el("summary", {}, "What the design is steered by ", el("small", {}, `(${steered.length})`)), steered.map(g => field(g, answer, titleOfPath(g.path), "steered"))) : "",
    [...sections].map(([key, givens]) => section(key, givens, answer, open.has(key))));
  find();
}
const titleOfPath = path => sentence(path.replace(/^stages\./, "").replaceAll(".", " "));

function section(key, givens, answer, isOpen) {
  const stated = givens.filter(g => g.state === "stated"), left = givens.filter(g => g.state !== "stated");
  return el("details", { "data-section": key, open: isOpen }, el("summary", {}, titleOf(key) + " ", el("small", {}, `(${stated.length})`)),
    stated.length ? group(key === "the design" ? "" : key, stated, answer) : "",
    left.length ? el("details", {}, el("summary", {}, `Left out of the file (${left.length})`),
      left.map(g => field(g, answer, sentence(g.path.slice(key === "the design" ? 0 : key.length + 1).replaceAll(".", " "))))) : "");
}
// Values of one object stand together; items of a list can be taken out, and another one like them put in.
function group(prefix, givens, answer) {
  const inner = new Map();
  for (const g of givens) {
    const rest = prefix ? g.path.slice(prefix.length + 1) : g.path;
    const head = rest.split(".")[0];
    if (!inner.has(head)) inner.set(head, []);
    inner.get(head).push(g);
  }
  return [...inner].map(([head, list]) => {
    const path = prefix ? `${prefix}.${head}` : head;
    if (list.length === 1 && list[0].path === path) return field(list[0], answer, sentence(/^\d+$/.test(head) ? "item " + head : head));
    const isItem = /^\d+$/.test(head);
    const name = list.find(g => g.path === path + ".name")?.value || list.find(g => g.path === path + ".kind")?.value || "";
    const legend = isItem ? `${prefix.split(".").pop().replace(/ies$/, "y").replace(/sses$/, "ss").replace(/([^s])s$/, "$1")} ${head}${name ? ": " + name : ""}` : head;
    return el("fieldset", {}, el("legend", {}, sentence(legend), isItem ? [
      el("button", { type: "button", "aria-label": "One more like " + legend, onclick: () => inTurn(() => another(path)) }, "One more"),
      el("button", { type: "button", "aria-label": "Take out " + legend, onclick: () => inTurn(() => takeOut(path)) }, "Take out")] : ""),
      group(path, list, answer));
  });
}
async function another(path) {
  const copy = await ask("Copy", desk.states[desk.at].id, path);
  const wrong = copy.error || await change(copy.path, copy.value);
  if (wrong) problem({ error: wrong });
}
async function takeOut(path) {
  const wrong = await change(path, null);
  if (wrong) problem({ error: wrong });
}
let fieldNumber = 0;
function field(given, answer, label, twin) {
  const id = "given-" + ++fieldNumber;
  const words = /^one of (.+)$/.exec(given.range);
  const names = answer.choices[given.kind];
  let input;
  if (words && given.kind === "word" || given.kind !== "name" && words) {
    input = el("select", { id }, [...new Set([given.value, ...words[1].split(", ")])].filter(w => w || given.state !== "stated").map(w => el("option", {}, w)));
  } else if (given.kind === "true or false") {
    input = el("select", { id }, ["true", "false"].map(w => el("option", {}, w)));
  } else if (names) {
    input = el("select", { id }, [...new Set([given.value, ...names])].map(w => el("option", {}, w)));
  } else {
    input = el("input", { id, type: "text", autocomplete: "off", spellcheck: "false" });
  }
  const wrong = el("small", { class: "wrong", id: id + "-wrong", role: "alert" });
  const about = el("small", { id: id + "-about" });
  const slider = given.reason ? el("input", { type: "range", "aria-label": `${label}, slider` }) : null;
  input.setAttribute("aria-describedby", `${id}-about ${id}-wrong`);
  const box = el("div", { class: "field" }, el("label", { for: id }, label), input, slider, about, wrong);
  let shown = given;
  const send = (value, dragged) => inTurn(async () => {
    const error = await change(shown.path, value, dragged);
    wrong.textContent = error || "";
    input.setAttribute("aria-invalid", error ? "true" : "false");
  });
  input.addEventListener("change", () => {
    if (input.value !== shown.value) send(input.value, false);
    else {
      wrong.textContent = "";
      input.setAttribute("aria-invalid", "false");
    }
  });
  let waiting = null, running = false;
  const drag = async () => {
    if (running) return;
    running = true;
    while (waiting !== null) {
      const value = waiting;
      waiting = null;
      await send(value, true);
    }
    running = false;
  };
  slider?.addEventListener("input", () => {
    waiting = `${slider.value}${slider.dataset.unit}`;
    input.value = waiting;
    drag();
  });
  // What stands as it was isn't written again: a design has hundreds of fields.
  const stands = (g, moved) => [g.value, g.state, g.range, g.why, moved, input.value, input.getAttribute("aria-invalid")].join("\n");
  let last = "";
  const show = (g, moved) => {
    shown = g;
    if (stands(g, moved) === last) return;
    box.classList.toggle("changed", moved);
    if (input.getAttribute("aria-invalid") !== "true" || document.activeElement !== input) {
      if (document.activeElement !== input || input.tagName === "SELECT" || g.value === input.value || moved) input.value = g.state === "not given" ? "" : g.value;
      wrong.textContent = "";
      input.setAttribute("aria-invalid", "false");
    }
    about.textContent = [g.state === "default" ? "Default, not in the file." : g.state === "not given" ? "Not given." : "",
      g.range && !words ? `${sentence(g.range)}.` : "", g.why].filter(Boolean).join(" ");
    if (slider) fitSlider(slider, g);
    last = stands(g, moved);
  };
  show(given, changed().has(given.path));
  const entry = form.fields.get(given.path);
  form.fields.set(given.path, entry ? { show: (g, m) => { entry.show(g, m); show(g, m); } } : { show });
  box.dataset.words = (given.path + " " + given.why + " " + given.value).toLowerCase();
  return box;
}
// A slider where the file bounds a value on both sides in its own unit.
function fitSlider(slider, given) {
  const range = /^([-+]?[\d.]+)( ?.*?) to ([-+]?[\d.]+)( ?.*)$/.exec(given.range), value = /^([-+]?[\d.]+)( ?.*)$/.exec(given.value);
  const fits = range && value && range[2] === range[4] && range[2] === value[2];
  slider.hidden = !fits;
  if (!fits || document.activeElement === slider) return;
  const [low, high] = [Number(range[1]), Number(range[3])];
  slider.dataset.unit = range[2];
  Object.assign(slider, { min: low, max: high, step: 10 ** Math.floor(Math.log10((high - low) / 50)) });
  slider.value = value[1];
  slider.setAttribute("aria-valuetext", given.value);
}
function find() {
  const words = $("find").value.trim().toLowerCase();
  for (const box of document.querySelectorAll("#form .field")) box.hidden = words !== "" && !box.dataset.words.includes(words);
  for (const part of document.querySelectorAll("#form fieldset, #form details")) {
    const any = words === "" || part.querySelector(".field:not([hidden])");
    part.hidden = !any;
    if (words !== "" && any && part.tagName === "DETAILS") part.open = true;
  }
}
