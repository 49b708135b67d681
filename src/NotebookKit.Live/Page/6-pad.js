// ---- The pad: the day's air and wind, the fill against a stopwatch, the card. ----
const pad = { answer: null, ticking: 0 };

function showPad() {
  const d = keeping.data.pad;
  d.day ??= new Date().toLocaleDateString("sv-SE");
  d.stages ??= [];
  d.changes ??= [];
  if (!Array.isArray(d.gear)) d.gear = [];
  const kinds = desk.answer.padParts;
  const field = (owner, key, label, example, type) => el("label", {}, label, el("input", { type: type || "text", value: owner[key] || "", placeholder: example || "", autocomplete: "off",
    onchange: e => { owner[key] = e.target.value; keep(); } }));
  const record = (own, kind, label) => el("label", { class: "no-print" }, label, el("input", { type: "file", onchange: async e => { const f = e.target.files[0]; if (!f) return; own[kind] = await f.text(); keep(); showPad(); } }),
    own[kind] ? el("small", {}, "One is kept.") : "");
  const vessel = (stage, i) => {
    const own = d.stages[i] ??= {};
    return el("fieldset", {}, el("legend", {}, "Vessel of " + stage), el("div", { class: "readings" }, field(own, "serial", "Serial, as on the vessel", "R-1"), field(own, "label", "Mark on its label", "3f9a-71c2"),
      field(own, "wall temperature", "Wall at its warmest", "25 °C"), field(own, "resin moisture", "Water in the resin, if weighed", "0.5 %"), field(own, "resin moisture by", "How the water was measured", "strip weighed and dried"),
      record(own, "proof", "Proof record"), record(own, "service", "Service record")));
  };
  const rows = d.changes.map((c, i) => el("div", { class: "readings" }, field(c, "of", `Otherwise today, ${i + 1}: which value`, "charge.water fraction"), field(c, "is", `Otherwise today, ${i + 1}: is`, "30 %"),
    el("button", { type: "button", "aria-label": `Delete change ${i + 1}`, onclick: () => { d.changes.splice(i, 1); keep(); showPad(); } }, "Delete")));
  const orders = ["", "booster first", "sustainer first", "together"];
  fill("pad-body", el("p", {}, "What was measured today makes the card. What isn't typed isn't shown, and forbids. Give each value with its unit."),
    el("div", { class: "readings" }, field(d, "day", "Day", "", "date"), field(d, "flight", "Flight, as the club counts it"), field(d, "wind", "Wind", "3 m/s"), field(d, "height", "Measured at a height of", "2 m"), field(d, "from", "Wind from", "270°"),
      field(d, "temperature", "Air temperature", "18 °C"), field(d, "pressure", "Air pressure", "1.013 bar absolute"),
      desk.answer.stages.length > 1 ? el("label", {}, "Filled first", el("select", { onchange: e => { d.order = orders[e.target.selectedIndex]; keep(); } }, orders.map(o => el("option", { selected: o === (d.order || "") }, o || "not given")))) : ""),
    desk.answer.stages.map(vessel), rows,
    el("details", { open: d.gear.length > 0 }, el("summary", {}, "Parts that stand on the pad"), d.gear.map((part, i) => el("div", { class: "readings" },
      el("label", {}, `Part ${i + 1}`, el("select", { onchange: e => { part.kind = kinds[e.target.selectedIndex]; keep(); } }, kinds.map(k => el("option", { selected: k === part.kind }, k)))),
      field(part, "serial", `Serial of part ${i + 1}`, "H-2"), field(part, "rated to", `Part ${i + 1} is rated to`, "100 bar gauge"),
      el("button", { type: "button", "aria-label": `Delete part ${i + 1}`, onclick: () => { d.gear.splice(i, 1); keep(); showPad(); } }, "Delete"))),
      el("p", { class: "no-print" }, el("button", { type: "button", onclick: () => { d.gear.push(...(d.gear.length ? kinds.slice(0, 1) : kinds).map(kind => ({ kind }))); keep(); showPad(); } }, d.gear.length ? "Add a part" : "Name the parts"))),
    el("p", { class: "tools no-print" }, el("button", { type: "button", onclick: () => { d.changes.push({ of: "", is: "" }); keep(); showPad(); } }, "Something else is otherwise today"), " ",
      el("label", {}, "Open a file of the day ", el("input", { type: "file", id: "open-day", onchange: e => inTurn(() => openDay(e.target.files[0])) })), " ",
      el("button", { type: "button", onclick: () => inTurn(saveDay) }, "Save the file of the day")),
    el("p", {}, el("button", { type: "button", class: "main", onclick: () => inTurn(computePad) }, "Compute the fill and the card"), " ",
      el("button", { type: "button", class: "print", onclick: () => print() }, "Print")),
    el("div", { id: "pad-answer" }));
  if (pad.answer) showPadAnswer();
}
function typedDay() {
  const d = keeping.data.pad;
  return JSON.stringify({ ...Object.fromEntries(["day", "flight", "order", "wind", "height", "from", "temperature", "pressure"].filter(k => d[k]).map(k => [k, d[k]])),
    gear: d.gear, changes: d.changes.filter(c => c.of || c.is), stages: desk.answer.stages.map((_, i) => d.stages[i] || {}) });
}
async function openDay(file) {
  if (!file) return;
  const fields = await ask("DayFields", await file.text());
  if (fields.error) {
    problem(fields);
    return;
  }
  const d = keeping.data.pad;
  const stages = fields.stages.map((s, i) => ({ ...(d.stages[i] || {}), ...s }));
  Object.assign(d, fields, { stages, temperature: "", pressure: "" });
  pad.answer = null;
  keep();
  showPad();
}
async function saveDay() {
  const text = await ask("DayText", desk.states[desk.at].id, typedDay());
  if (text.error) {
    problem(text);
    return;
  }
  saveFile("day.json", text.text, "application/json");
}
async function computePad() {
  const answer = await ask("Pad", desk.states[desk.at].id, typedDay());
  pad.answer = null;
  if (answer.error) {
    fill("pad-answer", el("p", { class: "error" }, answer.error));
    return;
  }
  pad.answer = answer;
  showPadAnswer();
}
function showPadAnswer() {
  fill("pad-answer", pad.answer.stages.map(stagePanel), el("h3", {}, "Flight card"), pad.answer.card.title ? sheet(pad.answer.card) : el("p", { class: "warning sheet" }, el("strong", { class: "go" }, "NO-GO"), " No card can be made: " + pad.answer.card.why));
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
    : el("p", { class: "warning" }, "No vessel is proved by what is open here: the fill is computed on the design's rating, which shows nothing of this vessel."),
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
  if (!content.title) return el("p", { class: "warning" }, "This sheet can't be made: " + content.why);
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
