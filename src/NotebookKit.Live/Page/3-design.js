// ---- The design: states in order, the check of the one that stands, what the last change did. ----
const desk = { states: [], at: -1, base: null, answer: null, queue: Promise.resolve() };
const VERDICTS = { Holds: "holds", NoLongerHolds: "does not hold", CannotTell: "can't tell" };

function demos() {
  return [...document.querySelectorAll("script.design")].map(s => ({ name: s.dataset.name, text: s.textContent }));
}
// One thing at a time: a change is made of the state before it.
function inTurn(work) {
  const turn = desk.queue.then(work).catch(wrong => problem({ error: "The page stopped: " + wrong.message }));
  desk.queue = turn;
  return turn;
}
async function openText(text, name, changes) {
  const opened = await ask("Open", text, name);
  if (opened.error) {
    problem(opened);
    return false;
  }
  problem(null);
  desk.base = { text, name };
  desk.states = [{ id: opened.id, change: null }];
  desk.at = 0;
  const refused = [];
  for (const change of changes || []) {
    const next = await makeChange(desk.states[desk.at].id, change);
    if (next.error) refused.push(next.error);
    else {
      desk.states.push({ id: next.id, change });
      desk.at++;
    }
  }
  await showState(null);
  warm(desk.states[desk.at].id);
  if (refused.length) problem({ error: "Of what this browser kept, this could not be taken over: " + refused.join(" "), all: [] });
  return true;
}
const makeChange = (id, change) => change.value === null ? ask("Leave", id, change.path) : ask("Change", id, change.path, change.value);

// A drag is one change: the state it began from is replaced by the newest value.
async function change(path, value, dragged) {
  const last = desk.states[desk.at];
  const over = dragged && last.change && last.change.path === path && last.dragged && desk.at === desk.states.length - 1;
  const from = over ? desk.states[desk.at - 1] : last;
  const clock = performance.now();
  const next = await ask("Turn", from.id, path, value, Boolean(from.givens));
  if (next.error) return next.error;
  if (!next.givens) {
    const anew = new Map(next.changedGivens.map(g => [g.path, g]));
    next.givens = from.givens.map(g => anew.get(g.path) || g);
  }
  problem(null);
  desk.states.length = desk.at + (over ? 0 : 1);
  desk.states.push({ id: next.id, change: { path, value }, dragged });
  desk.at = desk.states.length - 1;
  await showState(from.id, next, clock);
  return null;
}
async function step(by) {
  if (desk.at + by < 0 || desk.at + by >= desk.states.length) return;
  const before = desk.states[desk.at].id;
  desk.at += by;
  await showState(before);
}
async function showState(before, known, since) {
  const state = desk.states[desk.at];
  const clock = since || performance.now();
  const answer = known || await ask("Answer", state.id, before || 0);
  if (answer.error) {
    problem(answer);
    return;
  }
  desk.answer = answer;
  state.givens = answer.givens;
  // A card is of the design that it was computed of.
  pad.answer = null;
  document.documentElement.dataset.answeredMs = (performance.now() - clock).toFixed(1);
  showAnswer(answer, before);
  showForm(answer);
  $("undo").disabled = $("bar-undo").disabled = desk.at === 0;
  $("redo").disabled = desk.at >= desk.states.length - 1;
  keeping.data.design = { ...desk.base, changes: desk.states.slice(1, desk.at + 1).map(s => s.change) };
  keep();
  say(`${answer.name}: computed by the library in this page${desk.at ? `; ${desk.at} ${desk.at === 1 ? "change" : "changes"} since it was opened` : ""}.`);
  document.documentElement.dataset.state = String(Number(document.documentElement.dataset.state || 0) + 1);
  clearTimeout(desk.drawing);
  desk.drawing = setTimeout(() => draw(state.id), 120);
  if ($("behind").open) await showBehind();
  if ($("whole").open) await showText();
}
// Drawn when a drag rests.
async function draw(id) {
  if (desk.states[desk.at].id !== id) return;
  const drawn = await ask("Pictures", id);
  if (desk.states[desk.at].id === id && !drawn.error) fill("pictures", drawn.pictures.map(picture));
}
async function showText() {
  const written = await ask("Text", desk.states[desk.at].id);
  if (document.activeElement !== $("text")) $("text").value = written.text || "";
  $("text-note").textContent = written.note || "";
}
function showAnswer(answer, before) {
  const failing = answer.requirements.filter(r => r.verdict !== "Holds");
  const words = answer.requirements.length === 0 ? "The design requires nothing." : failing.length === 0
    ? `All ${answer.requirements.length} requirements hold.`
    : failing.map(r => `${sentence(r.name)}: ${VERDICTS[r.verdict]}`).join("; ") + ".";
  const fails = failing.length > 0;
  fill("verdict", el("p", { class: "verdict" + (fails ? " fails" : "") }, el("strong", {}, answer.name), " ", words));
  $("bar").className = fails ? "fails" : "";
  $("bar-verdict").textContent = fails ? `${failing.length} of ${answer.requirements.length} requirements: `
    + [["NoLongerHolds", "not held"], ["CannotTell", "can't tell"]].map(([v, w]) => [failing.filter(r => r.verdict === v).length, w])
      .filter(([n]) => n > 0).map(([n, w]) => `${n} ${w}`).join(", ") : words;
  const moved = answer.moved ? new Map(answer.moved.figures.map(f => [f.name, f])) : new Map();
  fill("figures", answer.figures.map(f => el("div", { class: moved.has(f.name) ? "changed" : "" }, el("dt", {}, sentence(f.name)),
    f.value ? el("dd", {}, f.value) : el("dd", { class: "none" }, "can't be computed"),
    moved.has(f.name) ? el("dd", { class: "was" }, "was " + moved.get(f.name).before) : "")));
  const reasons = [...new Set(answer.figures.filter(f => !f.value && f.why).map(f => f.why))];
  fill("not-computed", reasons.map(why => el("p", { class: "warning" }, `${sentence(answer.figures.filter(f => !f.value && f.why === why)
    .map(f => f.name).join(", "))} can't be computed. ${sentence(why)}`)));
  showMoved(answer, before);
  fill("requirements", table("Required", ["Requirement", "Verdict", "Found", "Limit", "Why"], answer.requirements.map(r => [sentence(r.name),
    el("td", { class: r.verdict === "Holds" ? "holds" : "fails" }, VERDICTS[r.verdict]), r.value, r.limit, r.why])),
    answer.decisions.length ? table("Decided", ["Decision", "Chosen", "Stands", "While"], answer.decisions.map(d => [sentence(d.name), d.chosen,
      el("td", { class: d.right ? "holds" : "fails" }, d.right ? "still right" : "look again"), d.while])) : "",
    table("By stage", null, answer.lines.filter(l => answer.stages.some(n => l.name.startsWith(n + ": "))).map(l => [l.name, l.value, l.note])));
  const loud = answer.findings.filter(f => f.severity !== "note"), quiet = answer.findings.filter(f => f.severity === "note");
  fill("findings", loud.map(findingBox), quiet.length ? el("details", {}, el("summary", {}, `Notes (${quiet.length})`), quiet.map(findingBox)) : "");
}
function showMoved(answer, before) {
  if (!before || !answer.moved) {
    fill("moved");
    return;
  }
  const m = answer.moved, turned = m.requirements.filter(r => r.before !== r.after);
  const rows = m.figures.map(f => [sentence(f.name), f.before, f.after]);
  fill("moved", el("details", { open: turned.length > 0 || m.lookAgain.length > 0 },
    el("summary", {}, rows.length || turned.length ? `What the last change moved: ${rows.length} ${rows.length === 1 ? "figure" : "figures"}`
      + (turned.length ? `, ${turned.length} ${turned.length === 1 ? "verdict" : "verdicts"}` : "") : "The last change moved no figure."),
    turned.map(r => el("p", { class: r.after === "Holds" ? "note" : "error" }, `${sentence(r.name)}: ${VERDICTS[r.after]}`
      + (r.is ? ` (${r.is})` : "") + `; before: ${VERDICTS[r.before] || "not required"}` + (r.was ? ` (${r.was})` : "") + ".")),
    m.lookAgain.length ? el("p", { class: "error" }, `Look again at: ${m.lookAgain.join(", ")}. What the decision rests on no longer holds or can't be told.`) : "",
    rows.length ? table("", ["Figure", "Before", "Now"], rows) : ""));
}
async function showBehind() {
  const id = desk.states[desk.at].id;
  const boxes = [];
  for (const [key, words] of [["check", "The check"], ["rating", "Rating"], ["proof", "Proof"], ["fill", "Fill"], ["stability", "Stability"],
    ["flight", "Flight"]]) {
    const behind = await ask("Behind", id, key);
    if (behind.error) continue;
    for (const r of behind.results) {
      boxes.push(el("details", {}, el("summary", {}, `${words}: ${r.title}`), r.why ? el("p", { class: "warning" }, r.why) : "",
        r.lines ? table("", null, r.lines.map(l => [l.name, l.value, l.note])) : "", (r.findings || []).map(findingBox),
        r.model ? el("p", {}, el("b", {}, "Model. "), `${r.model}. Holds: ${r.range}`) : "",
        r.assumptions && r.assumptions.length ? el("ul", {}, r.assumptions.map(a => el("li", {}, a))) : "",
        r.sources && r.sources.length ? el("p", {}, el("b", {}, "Sources. "), r.sources.join("; ") + ".") : "",
        r.working && r.working.length ? table("Working (formulas in TeX)", ["Step", "Formula", "With numbers", "Answer", "Source"],
          r.working.map(w => [w.what, el("td", {}, el("code", {}, w.formula)), w.numbers, w.answer, w.source])) : ""));
    }
  }
  if (desk.states[desk.at].id === id) fill("behind-body", boxes);
}
async function saveDesign() {
  const written = await ask("Text", desk.states[desk.at].id);
  if (written.error) {
    problem(written);
    return;
  }
  saveFile(fileName(desk.answer.name) + ".json", written.text, "application/json");
  say("Saved as a design file that the program, the notebooks and this page read. " + written.note);
}
