// ---- The proof bench: the plan as steps, readings typed, the library's advice at each. ----
const bench = { plan: null, ticking: 0 };
const benchData = () => keeping.data.bench;

async function showBench() {
  const stage = benchData().stage || 0, stages = desk.answer.stages;
  const plan = await ask("ProofPlan", desk.states[desk.at].id, Math.min(stage, stages.length - 1));
  if (plan.error) {
    fill("bench-body", el("p", { class: "error" }, "No proof can be planned: " + plan.error));
    return;
  }
  bench.plan = plan;
  const d = Object.assign(benchData(), { step: 0, rows: [], drops: [], sounds: [], errorBar: "", girths: [], lengths: [], ...benchData() });
  const made = plan.vessel + " " + plan.steps.map(s => s.pressure).join(", ");
  if (d.made && d.made !== made) d.call = null;
  const stale = d.rows.length > 0 && d.made && d.made !== made;
  if (!stale) d.made = made;
  d.step = Math.min(d.step, plan.steps.length - 1);
  const text = (key, label, type) => el("label", {}, label, el("input", { type: type || "text", value: d[key] || "", autocomplete: "off",
    onchange: e => { d[key] = e.target.value; keep(); } }));
  fill("bench-body",
    el("p", {}, `Proof of ${plan.vessel} to ${plan.proof} with water. Everybody at least ${plan.standOff} away and behind cover; a longer distance that the site asks for goes first.`),
    stale ? el("p", { class: "error" }, `The readings below were taken to another plan (${d.made}). Undo the change of the design, or begin anew.`) : "",
    stages.length > 1 ? el("p", {}, el("label", {}, "Stage ", el("select", { onchange: e => { Object.assign(d, { stage: e.target.selectedIndex, step: 0 }); keep(); showBench(); } },
      stages.map((s, i) => el("option", { selected: i === stage }, s))))) : "",
    plan.findings.map(findingBox),
    el("div", { class: "readings" }, text("serial", "Serial, as it stands on the vessel"), text("day", "Day of the proof", "date"), text("errorBar", "What the gauge can't tell apart [bar]")),
    el("details", { open: d.girths.length + d.lengths.length > 0 }, el("summary", {}, "Tape and rule"), el("p", {}, "Girths and lengths between marks, read from behind cover through a camera. Where a burette is read too, both are judged."),
      el("div", { class: "readings" }, text("girthWithinMm", "What the girth tape can't tell apart [mm]"), text("lengthWithinMm", "What the length rule can't tell apart [mm]")),
      el("div", { id: "bench-tape" })),
    el("details", {}, el("summary", {}, "Before any pressure"), el("ul", { class: "steps" }, plan.before.map((s, i) => el("li", {}, el("label", {},
      el("input", { type: "checkbox", checked: (d.ticked || []).includes(i), onchange: e => tick(i, e.target.checked) }), " ", s))))),
    el("div", { class: "now thumb", id: "bench-now" }),
    el("details", { open: true }, el("summary", {}, "All steps"), el("div", { id: "bench-steps" })),
    el("details", {}, el("summary", {}, "Readings"), el("p", {}, "A record that proves a vessel has the gauge read at least every ten seconds while it is held, and again without pressure."),
      el("div", { id: "bench-rows" })),
    el("details", {}, el("summary", {}, "When the proof ends at once"), el("ul", {}, plan.abort.map(s => el("li", {}, s)))),
    el("details", {}, el("summary", {}, "While holding, and after"), el("ul", {}, plan.after.map(s => el("li", {}, s)))),
    el("div", { class: "tools" },
      el("button", { type: "button", class: "main", onclick: judgeBench }, "Judge the proof"),
      el("button", { type: "button", onclick: saveLog }, "Save the readings as a log"),
      el("button", { type: "button", class: "print" , onclick: () => print() }, "Print"),
      el("button", { type: "button", onclick: () => { if (confirm("Delete all readings of this proof?")) { keeping.data.bench = { stage: d.stage }; keep(); showBench(); } } }, "Begin anew")),
    el("div", { id: "bench-verdict" }));
  showStep();
}
function showTape() {
  const d = benchData();
  const rows = (key, what) => [el("div", { class: "readings" }, d[key].map((r, i) => [
    [["station", `${what} at`], ["beforeMm", "before [mm]"], ["atProofMm", "at proof [mm]"], ["afterMm", "after [mm]"]].map(([k, label]) =>
      el("label", {}, k === "station" ? label : `${what} ${i + 1} ${label}`, el("input", { type: "text", inputmode: k === "station" ? "text" : "decimal", value: r[k] ?? "", autocomplete: "off",
        onchange: e => { r[k] = e.target.value; keep(); } }))),
    el("button", { type: "button", "aria-label": `Delete ${what.toLowerCase()} ${i + 1}`, onclick: () => { d[key].splice(i, 1); keep(); showTape(); } }, "Delete")])),
    el("p", {}, el("button", { type: "button", onclick: () => { d[key].push({ station: "" }); keep(); showTape(); } }, `Add a ${what.toLowerCase()}`))];
  fill("bench-tape", rows("girths", "Girth"), rows("lengths", "Length"));
}
const taped = list => list.map(r => ({ station: r.station, ...Object.fromEntries(["beforeMm", "atProofMm", "afterMm"].map(k => [k, numberOf(r[k] ?? "") ?? undefined])) }));
const seconds = s => s >= 120 ? `${+(s / 60).toFixed(1)} min` : `${Math.round(s)} s`;
const ml = v => `${v >= 100 ? Math.round(v) : +v.toPrecision(3)} mL`;
const seenAt = i => {
  const r = benchData().rows.filter(x => x.step === i).pop();
  return r ? `${r.bar} bar` + (r.waterMl !== undefined ? `, ${r.waterMl} mL` : "") : "";
};
function tick(i, on) {
  const d = benchData();
  d.ticked = (d.ticked || []).filter(t => t !== i).concat(on ? [i] : []);
  keep();
}
function showStep() {
  const d = benchData(), s = bench.plan.steps[d.step];
  showTape();
  const input = (key, label) => el("label", {}, label, el("input", { type: "text", inputmode: "decimal", id: "bench-" + key, autocomplete: "off", value: d["last" + key] || "" }));
  fill("bench-now", el("h3", { tabindex: "-1", id: "bench-step" }, `Step ${d.step + 1} of ${bench.plan.steps.length}: ${s.down ? "down to" : "up to"} ${s.pressure}`),
    el("p", {}, `Hold ${seconds(s.holdS)}. Expected by then: ${ml(s.waterMl)} in` + (s.girth ? `, girth ${s.girth}.` : ".")),
    el("div", { class: "readings" }, input("bar", "Gauge [bar]"), input("waterMl", "Water in [mL]"), input("celsius", "Water [°C]")),
    el("div", { class: "buttons" }, el("button", { type: "button", class: "main", onclick: () => inTurn(note) }, "Note the reading"),
      el("button", { type: "button", onclick: () => inTurn(beginHold) }, d.holdFrom ? "Begin the hold again" : "The hold begins")),
    el("p", { id: "bench-clock", class: "big", role: "timer" }),
    el("div", { id: "bench-call", "aria-live": "assertive" }),
    el("div", { class: "readings" }, el("label", {}, "Drops at", el("select", { id: "bench-place" }, [["", "choose the place"], ["FittingSeal", "seal of a fitting"], ["Bond", "bond of an end"], ["Wall", "wall"], ["PumpLine", "pump's line"]]
      .map(([v, t]) => el("option", { value: v }, t)))), el("label", {}, "Drops a minute", el("input", { type: "text", inputmode: "decimal", id: "bench-rate" }))),
    el("div", { class: "buttons" }, el("button", { type: "button", onclick: () => inTurn(dropsSeen) }, "Drops seen"),
      el("button", { type: "button", onclick: () => inTurn(() => heard("Crack")) }, "Loud crack heard"),
      el("button", { type: "button", onclick: () => inTurn(() => heard("Ticking")) }, "Ticking heard")),
    d.drops.length + d.sounds.length ? el("ul", {}, d.drops.map((x, i) => el("li", {}, `Drops at ${x.atBar} bar (${x.place}, ${x.perMinute} a minute) `, remove(d.drops, i))),
      d.sounds.map((x, i) => el("li", {}, `${x.kind} at ${x.atBar} bar `, remove(d.sounds, i)))) : "",
    el("div", { class: "buttons" }, el("button", { type: "button", disabled: d.step === 0, onclick: () => go(-1) }, "Step back"),
      el("button", { type: "button", disabled: d.step >= bench.plan.steps.length - 1, onclick: () => go(1) }, "Next step")));
  fill("bench-steps", table("", ["Step", "Pressure", "Hold", "Water in by then", "Girth", "Read"], bench.plan.steps.map((x, i) =>
    [String(i + 1), (x.down ? "down to " : "") + x.pressure, seconds(x.holdS), ml(x.waterMl), x.girth || "", seenAt(i)])));
  fill("bench-rows", d.rows.length ? table("", ["Time [s]", "Gauge [bar]", "Water in [mL]", "Water [°C]", ""], d.rows.map((r, i) =>
    [String(r.s), String(r.bar), String(r.waterMl ?? ""), String(r.celsius ?? ""), el("td", {}, el("button", { type: "button", "aria-label": `Delete the reading at ${r.s} s`,
      onclick: () => { d.rows.splice(i, 1); keep(); showStep(); } }, "Delete"))])) : el("p", {}, "None yet."));
  if (d.call) showCall(d.call);
  clearInterval(bench.ticking);
  bench.ticking = setInterval(showClock, 500);
  showClock();
}
const remove = (list, i) => el("button", { type: "button", onclick: () => { list.splice(i, 1); keep(); showStep(); } }, "Take back");
function go(by) {
  const d = benchData();
  Object.assign(d, { step: d.step + by, holdFrom: null, startBar: null, call: null });
  keep();
  showStep();
  $("bench-step").focus();
}
function showClock() {
  const d = benchData(), clock = $("bench-clock");
  if (!clock) return;
  const s = bench.plan.steps[d.step];
  clock.textContent = d.holdFrom ? `Held ${Math.floor((Date.now() - d.holdFrom) / 1000)} s of ${Math.round(s.holdS)} s` : "";
}
function typed() {
  const d = benchData(), row = {};
  for (const key of ["bar", "waterMl", "celsius"]) {
    d["last" + key] = $("bench-" + key).value.trim();
    const value = numberOf(d["last" + key]);
    if (d["last" + key] !== "" && value === null) return { error: `"${d["last" + key]}" is no number: type ${key === "bar" ? "the gauge" : "it"} with a point, without its unit.` };
    if (value !== null) row[key] = value;
  }
  return row.bar === undefined ? { error: "Read the gauge and type its bar." } : row;
}
async function note() {
  const d = benchData(), row = typed();
  if (row.error) {
    showCall({ error: row.error });
    return;
  }
  d.from ??= Date.now();
  const s = Math.max(Math.round((Date.now() - d.from) / 100) / 10, d.rows.length ? d.rows[d.rows.length - 1].s + 0.1 : 0);
  d.rows.push({ s: Math.round(s * 10) / 10, ...row, step: d.step });
  await advise(row);
}
async function beginHold() {
  const d = benchData(), row = typed();
  if (row.error) {
    showCall({ error: row.error });
    return;
  }
  Object.assign(d, { holdFrom: Date.now(), startBar: row.bar });
  await note();
}
async function dropsSeen() {
  const d = benchData(), row = typed(), place = $("bench-place").value, perMinute = numberOf($("bench-rate").value);
  const missing = row.error || (place === "" ? "Choose where the drops are seen." : perMinute === null ? "Count the drops of one minute and type their number." : "");
  if (missing) {
    showCall({ error: missing });
    return;
  }
  d.drops.push({ place, perMinute, atBar: row.bar });
  await advise(row);
}
async function heard(kind) {
  const row = typed();
  if (row.error) {
    showCall({ error: row.error + " Then tell the sound again; on doubt vent from afar." });
    return;
  }
  benchData().sounds.push({ kind, atBar: row.bar });
  await advise(row);
}
async function advise(row) {
  const d = benchData();
  keep();
  if (row.error) {
    showStep();
    showCall({ error: row.error });
    return;
  }
  d.call = await ask("ProofStep", desk.states[desk.at].id, d.stage || 0, JSON.stringify({ step: d.step + 1, ...row,
    errorBar: numberOf(d.errorBar) ?? undefined, startBar: d.holdFrom ? d.startBar : undefined,
    heldS: d.holdFrom ? (Date.now() - d.holdFrom) / 1000 : undefined, drops: d.drops, sounds: d.sounds }));
  keep();
  showStep();
}
function showCall(call) {
  fill("bench-call", call.error ? el("p", { class: "error" }, call.error) : el("div", { class: "call" + (call.call === "Hold" ? " hold" : call.call === "Go on" ? "" : " stop") },
    el("strong", {}, call.call), el("p", {}, `Expected at this gauge: ${ml(call.expectedMl)} in.`), call.reasons.map(r => el("p", {}, r.message))));
}
async function judgeBench() {
  const d = benchData();
  const judged = await ask("ProofJudge", desk.states[desk.at].id, d.stage || 0, JSON.stringify({ vessel: bench.plan.vessel, serial: d.serial, day: d.day,
    errorBar: numberOf(d.errorBar) ?? undefined, rows: d.rows, drops: d.drops, sounds: d.sounds,
    girths: taped(d.girths), lengths: taped(d.lengths), girthWithinMm: numberOf(d.girthWithinMm ?? "") ?? undefined, lengthWithinMm: numberOf(d.lengthWithinMm ?? "") ?? undefined }));
  if (judged.error) {
    fill("bench-verdict", el("p", { class: "error" }, judged.error));
    return;
  }
  fill("bench-verdict", el("h3", {}, judged.title), judged.findings.map(findingBox), table("", null, judged.lines.map(l => [l.name, l.value, l.note])),
    judged.proved ? el("p", { class: "note" }, judged.proved) : el("p", { class: "warning" }, "This record doesn't prove the vessel: " + judged.why),
    el("button", { type: "button", class: "main", onclick: () => saveFile(fileName(bench.plan.vessel + " " + (d.serial || "")) + ".proof.json", judged.file, "application/json") }, "Save the proof record"));
}
function saveLog() {
  const d = benchData();
  const has = key => d.rows.every(r => r[key] !== undefined);
  const columns = [["s", "time [s]"], ["bar", "pressure [bar gauge]"], ["celsius", "temperature [°C]"], ["waterMl", "expansion [mL]"]].filter(([k]) => d.rows.length && has(k));
  if (!columns.length) {
    showCall({ error: "There are no readings yet: note the gauge at a step first." });
    return;
  }
  saveFile(fileName(bench.plan.vessel) + "-proof.csv", [`# vessel: ${bench.plan.vessel}`, d.serial ? `# serial: ${d.serial}` : null, d.day ? `# day: ${d.day}` : null,
    "# typed at the proof bench of the live page; expansion is the water pumped in less the water let out",
    columns.map(c => c[1]).join(","), ...d.rows.map(r => columns.map(([k]) => r[k]).join(","))].filter(l => l !== null).join("\n") + "\n", "text/csv");
}
