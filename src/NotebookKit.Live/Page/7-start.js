// ---- Two designs side by side, the parts of the page, the start. ----
async function showBeside(text, name) {
  const current = desk.states[desk.at].id;
  let other = desk.states[0].id;
  if (text) {
    const opened = await ask("Open", text, name);
    if (opened.error) {
      fill("beside-body", el("p", { class: "error" }, opened.error));
      return;
    }
    other = opened.id;
  }
  const [one, two] = [await ask("Answer", current, other), await ask("Answer", other, 0)];
  if (one.error || two.error) {
    fill("beside-body", el("p", { class: "error" }, one.error || two.error));
    return;
  }
  const first = one.name === two.name ? one.name + ", as it is now" : one.name, second = one.name === two.name ? two.name + ", as it was opened" : two.name;
  const of = (answer, name) => answer.figures.find(f => f.name === name)?.value || "can't be computed";
  const verdict = (answer, name) => {
    const r = answer.requirements.find(x => x.name === name);
    return r ? el("td", { class: r.verdict === "Holds" ? "holds" : "fails" }, `${VERDICTS[r.verdict]}${r.value ? ": " + r.value : ""} (${r.limit})`) : "not required";
  };
  const names = [...new Set([...one.requirements, ...two.requirements].map(r => r.name))];
  fill("beside-body", table("Figures", ["Figure", first, second], one.figures.map(f => [sentence(f.name), of(one, f.name), of(two, f.name)])),
    table("Required", ["Requirement", first, second], names.map(n => [sentence(n), verdict(one, n), verdict(two, n)])),
    one.moved.figures.length ? table("All figures that differ", ["Figure", first, second], one.moved.figures.map(f => [sentence(f.name), f.after, f.before]))
      : el("p", {}, "No figure differs."));
}
function chosenBeside() {
  const at = $("second").selectedIndex;
  return at === 0 ? showBeside() : showBeside(demos()[at - 1].text, demos()[at - 1].name);
}
async function showPart() {
  const wanted = location.hash.slice(1), part = ["design", "beside", "bench", "pad", "kept"].includes(wanted) ? wanted : "design";
  for (const section of document.querySelectorAll(".part")) section.hidden = section.id !== part;
  for (const a of document.querySelectorAll("#tabs a")) a.hash === "#" + part ? a.setAttribute("aria-current", "page") : a.removeAttribute("aria-current");
  if (!desk.answer) return;
  if (part === "bench") await showBench();
  if (part === "pad") showPad();
  if (part === "beside") await chosenBeside();
  document.documentElement.dataset.part = part;
}
async function readFile(input) {
  const file = input.files[0];
  input.value = "";
  if (!file) return null;
  if (file.size > 5_000_000) {
    problem({ error: `${file.name} has ${(file.size / 1e6).toFixed(1)} MB; a design file has some kilobytes. Choose the design's own file.` });
    return null;
  }
  return { text: await file.text(), name: file.name };
}
function listen() {
  for (const d of demos()) {
    const name = sentence(d.name.replace(".json", ""));
    $("demo").append(el("option", {}, name));
    $("second").append(el("option", {}, name));
  }
  $("demo").prepend(el("option", { value: "" }, "choose"));
  $("second").prepend(el("option", {}, "The design as it was opened"));
  $("demo").selectedIndex = $("second").selectedIndex = 0;
  $("demo").addEventListener("change", () => {
    const at = $("demo").selectedIndex - 1;
    $("demo").selectedIndex = 0;
    if (at >= 0) inTurn(() => openText(demos()[at].text, demos()[at].name));
  });
  $("open-file").addEventListener("change", e => inTurn(async () => { const f = await readFile(e.target); if (f) await openText(f.text, f.name); }));
  $("open-second").addEventListener("change", e => inTurn(async () => { const f = await readFile(e.target); if (f) await showBeside(f.text, f.name); }));
  $("second").addEventListener("change", () => inTurn(chosenBeside));
  $("save").addEventListener("click", () => inTurn(saveDesign));
  for (const id of ["undo", "bar-undo"]) $(id).addEventListener("click", () => inTurn(() => step(-1)));
  $("redo").addEventListener("click", () => inTurn(() => step(1)));
  document.addEventListener("keydown", e => {
    if (!(e.ctrlKey || e.metaKey) || /^(INPUT|TEXTAREA)$/.test(e.target.tagName) && e.target.type !== "range") return;
    if (e.key === "z" && !e.shiftKey) { e.preventDefault(); inTurn(() => step(-1)); }
    if (e.key === "y" || e.key === "Z") { e.preventDefault(); inTurn(() => step(1)); }
  });
  $("bar-givens").addEventListener("click", () => {
    if (!$("design").hidden) {
      document.querySelector(".givens").scrollIntoView();
      $("find").focus({ preventScroll: true });
    } else location.hash = "#design";
  });
  $("read-text").addEventListener("click", () => inTurn(() => openText($("text").value, desk.base.name)));
  $("whole").addEventListener("toggle", () => { if ($("whole").open) inTurn(showText); });
  $("find").addEventListener("input", find);
  $("behind").addEventListener("toggle", () => { if ($("behind").open) inTurn(showBehind); });
  $("wipe").addEventListener("click", wipe);
  for (const b of document.querySelectorAll(".print")) b.addEventListener("click", () => print());
  addEventListener("hashchange", () => inTurn(async () => {
    await showPart();
    document.querySelector(".part:not([hidden])").scrollIntoView();
  }));
}
// For whoever wants the numbers whole: notebookKit.figures(text of a design) gives every figure with all its digits.
globalThis.notebookKit = { figures: text => ask("Figures", text) };

// A lesson's page beside this one holds it in a frame of no size and asks the library alone: nothing is opened, kept or drawn here.
async function serveLibrary() {
  const tell = message => parent.postMessage({ notebookKit: true, ...message }, "*");
  try {
    await startLibrary();
  } catch (wrong) {
    tell({ failed: wrong.message });
    return;
  }
  addEventListener("message", async ({ source, data }) => {
    if (source !== parent || !data || data.notebookKit !== true) return;
    tell({ n: data.n, answer: await ask("Explore", String(data.model), String(data.design), data.setting.map(Number)) });
  });
  tell({ ready: true });
}
(async () => {
  if (location.hash === "#library" && parent !== window) {
    await serveLibrary();
    return;
  }
  const clock = performance.now();
  recall();
  showWhere();
  listen();
  showPart();
  try {
    await startLibrary();
    const kept = keeping.data.design;
    const opened = kept && await openText(kept.text, kept.name, kept.changes);
    if (!opened) await openText(demos()[0].text, demos()[0].name);
    await inTurn(showPart);
    document.documentElement.dataset.ready = (performance.now() - clock).toFixed(0);
  } catch (wrong) {
    say("Not ready. " + wrong.message);
    problem({ error: wrong.message, all: [wrong.message, "What you typed before is kept where it was."] });
  }
})();
