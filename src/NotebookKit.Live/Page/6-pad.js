// ---- The pad: the day's air and wind, the fill against a stopwatch, the card. ----
const pad = { answer: null, ticking: 0 };

function showPad() {
  const d = keeping.data.pad;
  const text = (key, label, example, type) => el("label", {}, label, el("input", { type: type || "text", value: d[key] || "", placeholder: example || "", autocomplete: "off",
    onchange: e => { d[key] = e.target.value; keep(); } }));
  const files = (stage, i) => ["proof", "service"].map(kind => el("label", { class: "no-print" }, `${kind === "proof" ? "Proof record" : "Service record"} of ${stage}`,
    el("input", { type: "file", onchange: async e => { const f = e.target.files[0]; if (!f) return; d.files ??= []; d.files[i] = { ...d.files[i], [kind]: await f.text() }; keep(); } }),
    d.files?.[i]?.[kind] ? el("small", {}, "One is kept.") : ""));
  fill("pad-body", el("p", {}, "What is left empty is taken from the design. Give each value with its unit."),
    el("div", { class: "readings" }, text("wind", "Wind at 10 m", "3 m/s"), text("from", "Wind from", "270°"), text("temperature", "Air temperature", "18 °C"),
      text("pressure", "Air pressure", "1013 hPa absolute"), text("wall", "Vessel's wall at its warmest", "25 °C"), text("day", "Day", "", "date"), desk.answer.stages.map(files)),
    el("p", {}, el("label", {}, el("input", { type: "checkbox", checked: !!d.scatter, onchange: e => { d.scatter = e.target.checked; keep(); } }), " Fly 500 scattered landings for the card (takes seconds)")),
    el("p", {}, el("button", { type: "button", class: "main", onclick: () => inTurn(computePad) }, "Compute the fill and the card"), " ",
      el("button", { type: "button", class: "print", onclick: () => print() }, "Print")),
    el("div", { id: "pad-answer" }));
  if (pad.answer) showPadAnswer();
}
async function computePad() {
  const d = keeping.data.pad;
  const typedDay = Object.fromEntries(["wind", "from", "temperature", "pressure", "wall", "day"].filter(k => d[k]).map(k => [k, d[k]]));
  const answer = await ask("Pad", desk.states[desk.at].id, JSON.stringify({ ...typedDay, flights: d.scatter ? 500 : undefined, stages: desk.answer.stages.map((_, i) => d.files?.[i] || {}) }));
  pad.answer = null;
  if (answer.error) {
    fill("pad-answer", el("p", { class: "error" }, answer.error));
    return;
  }
  pad.answer = answer;
  showPadAnswer();
}
function showPadAnswer() {
  fill("pad-answer", pad.answer.stages.map(stagePanel), el("h3", {}, "Flight card"), sheet(pad.answer.card));
  clearInterval(pad.ticking);
  pad.ticking = setInterval(showFillClock, 250);
  showFillClock();
}
function stagePanel(s, i) {
  const d = keeping.data.pad;
  d.clocks ??= [];
  const clock = d.clocks[i] ??= { from: null, rows: [] };
  if (s.unfilled) return el("p", { class: "warning" }, `${s.name}: no fill can be computed. ${s.unfilled}`);
  const redo = () => { keep(); showPadAnswer(); };
  return el("div", {}, el("h3", {}, `Fill of ${s.name}`), s.proved ? el("p", { class: "note" }, "Proved: " + s.proved + ".")
    : el("p", { class: "warning" }, s.unproved || "No proof record is open: the fill is computed on the design's rating, which shows nothing of this vessel."),
    el("div", { class: "now thumb" },
      el("p", {}, `Shut the valve at ${s.shutAt}; never above ${s.never}. It settles at ${s.settlesAt} as the gas cools; top up in short openings and shut the valve each time.`),
      el("p", { class: "big", role: "timer", id: "fill-clock-" + i }), el("p", { id: "fill-now-" + i, class: "big" }),
      el("div", { class: "buttons" }, el("button", { type: "button", class: "main", onclick: () => { clock.from = clock.from ? null : Date.now(); if (clock.from) clock.rows = []; redo(); } }, clock.from ? "Stop the clock" : "The valve opens")),
      el("div", { class: "readings" }, el("label", {}, "Gauge read [bar]", el("input", { type: "text", inputmode: "decimal", id: "fill-gauge-" + i, autocomplete: "off" }))),
      el("div", { class: "buttons" }, el("button", { type: "button", onclick: () => { const bar = numberOf($("fill-gauge-" + i).value); if (bar === null || !clock.from) { $("fill-now-" + i).textContent = clock.from ? "Type the gauge's bar as a number." : "Start the clock first."; return; }
        clock.rows.push([Math.round((Date.now() - clock.from) / 100) / 10, bar]); redo(); } }, "Note the gauge"),
        el("button", { type: "button", disabled: clock.rows.length === 0, onclick: () => saveFile(fileName(s.name) + "-fill.csv", ["# typed at the pad in the live page", `# vessel: ${s.name}`, "time [s],pressure [bar gauge]", ...clock.rows.map(r => r.join(","))].join("\n") + "\n", "text/csv") }, "Save the fill log")),
      clock.rows.length ? table("", ["Time [s]", "Gauge read [bar]", "Expected [bar]"], clock.rows.map(r => [String(r[0]), String(r[1]), expectedAt(s, r[0]).toFixed(1)])) : ""),
    picture({ title: `Fill of ${s.name}: gauge against time`, svg: s.chart }),
    el("details", {}, el("summary", {}, "Pad sheet"), s.sheet ? sheet(s.sheet) : ""));
}
// Between two rows of the library's fill, straight; water in the line goes first.
function expectedAt(s, time) {
  const t = Math.max(0, time - s.waterFirstS);
  let i = s.timeS.findIndex(x => x >= t);
  if (i < 0) return s.gaugeBar[s.gaugeBar.length - 1];
  if (i === 0) return s.gaugeBar[0];
  const share = (t - s.timeS[i - 1]) / (s.timeS[i] - s.timeS[i - 1] || 1);
  return s.gaugeBar[i - 1] + share * (s.gaugeBar[i] - s.gaugeBar[i - 1]);
}
function showFillClock() {
  pad.answer?.stages.forEach((s, i) => {
    const clock = keeping.data.pad.clocks?.[i], shown = $("fill-clock-" + i);
    if (!shown || s.unfilled) return;
    if (!clock?.from) {
      shown.textContent = `Fill time ${Math.round(s.shutS)} s` + (s.waterFirstS > 0.5 ? `, up to ${Math.round(s.shutS + s.waterFirstS)} s with the water in the line` : "");
      return;
    }
    const t = (Date.now() - clock.from) / 1000, left = s.shutS + s.waterFirstS - t;
    shown.textContent = `${Math.floor(t)} s; ` + (left > 0 ? `about ${Math.ceil(left)} s left` : "the valve should be shut");
    $("fill-now-" + i).textContent = `Expected now: ${expectedAt(s, t).toFixed(1)} bar gauge`;
  });
}
function sheet(content) {
  if (!content.title) return el("p", { class: "warning" }, "No card can be made: " + content.why);
  const blanks = s => s.replaceAll("____", "\u2007\u2007\u2007\u2007\u2007\u2007");
  return el("article", { class: "sheet" }, el("h4", {}, content.title), el("p", {}, content.purpose),
    content.verdict ? el("p", { class: "verdict" + (content.inFavour ? "" : " fails") }, el("strong", { class: "go" }, content.verdict), " ", sentence(content.note)) : "",
    content.findings.map(findingBox),
    content.sections.map(s => el("section", {}, el("h4", {}, s.heading), s.text ? el("p", {}, s.text) : "",
      s.facts.length ? table("", null, s.facts.map(f => [sentence(f.name), f.value, f.note])) : "",
      s.steps.length ? el("ol", {}, s.steps.map(x => el("li", {}, blanks(x)))) : "",
      s.headings ? table("", s.headings, s.rows.map(r => r.map(c => c === "[ ]" ? "\u2610" : blanks(c)))) : "",
      s.rules.length ? el("ul", {}, s.rules.map(x => el("li", {}, blanks(x)))) : "",
      s.blanks.length ? table("", null, s.blanks.map(b => [sentence(b), ""])) : "")),
    content.signatures.length ? el("div", { class: "signatures" }, content.signatures.map(x => el("div", {}, x))) : "");
}
