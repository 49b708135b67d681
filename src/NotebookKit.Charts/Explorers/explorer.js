(function () {
  "use strict";
  const refused = 65535, steps = 65000;

  function decode(block) {
    const text = atob(block.steps), values = new Uint16Array(text.length / 2);
    for (let i = 0; i < values.length; i++) values[i] = text.charCodeAt(2 * i) | (text.charCodeAt(2 * i + 1) << 8);
    return { values: values, low: block.low, scale: (block.high - block.low) / steps };
  }

  // Cubic through four neighbours, bent to three at the rim; the library holds the same rule.
  function weights(place, count, linear) {
    const i = Math.min(Math.max(Math.floor(place), 0), count - 2), t = place - i;
    if (linear || count === 2) return [[i, 1 - t], [i + 1, t]];
    const t2 = t * t, t3 = t2 * t;
    const h00 = 2 * t3 - 3 * t2 + 1, h10 = t3 - 2 * t2 + t, h01 = 3 * t2 - 2 * t3, h11 = t3 - t2;
    if (i === 0) return [[0, h00 - 1.5 * h10 - 0.5 * h11], [1, h01 + 2 * h10], [2, 0.5 * h11 - 0.5 * h10]];
    if (i === count - 2) return [[i - 1, 0.5 * h11 - 0.5 * h10], [i, h00 - 2 * h11], [i + 1, h01 + 0.5 * h10 + 1.5 * h11]];
    return [[i - 1, -0.5 * h10], [i, h00 - 0.5 * h11], [i + 1, h01 + 0.5 * h10], [i + 2, 0.5 * h11]];
  }

  function shareOf(p, value) {
    return p.ratio ? Math.log(value / p.from) / Math.log(p.to / p.from) : (value - p.from) / (p.to - p.from);
  }

  function valueAt(p, share) {
    return p.ratio ? p.from * Math.pow(p.to / p.from, share) : p.from + (p.to - p.from) * share;
  }

  function nodesAt(data, setting, linear) {
    let nodes = [[0, 1]];
    data.parameters.forEach(function (p, d) {
      const place = shareOf(p, setting[d]) * (p.points - 1), next = [];
      // Nothing lies between two alternatives.
      const row = p.choices.length ? [[Math.round(setting[d]), 1]] : weights(place, p.points, linear);
      for (const n of nodes) for (const w of row) if (w[1] !== 0) next.push([n[0] * p.points + w[0], n[1] * w[1]]);
      nodes = next;
    });
    return nodes;
  }

  function allowed(data, nodes) {
    for (const n of nodes) if (data.refused[n[0]] !== undefined) return false;
    return true;
  }

  function blend(block, nodes, count) {
    const sums = new Float64Array(count);
    for (const n of nodes) for (let i = 0; i < count; i++) sums[i] += n[1] * block.values[n[0] * count + i];
    return Array.from(sums, function (s) { return block.low + s * block.scale; });
  }

  function stateAt(data, setting) {
    let nodes = nodesAt(data, setting, false);
    if (!allowed(data, nodes)) nodes = nodesAt(data, setting, true);
    if (!allowed(data, nodes)) {
      const near = nodes.filter(function (n) { return data.refused[n[0]] !== undefined; }).sort(function (a, b) { return b[1] - a[1]; })[0];
      return { reason: data.reasons[data.refused[near[0]]] };
    }
    return { xs: blend(data.xs, nodes, data.curvePoints), ys: blend(data.ys, nodes, data.curvePoints), numbers: data.numbers.map(function (n) { return blend(n.values, nodes, 1)[0]; }) };
  }

  function show(value, digits) {
    if (value === 0) return "0";
    const size = Math.floor(Math.log10(Math.abs(value)));
    return value.toFixed(Math.min(Math.max(digits - 1 - size, 0), 6)).replace("-", "\u2212");
  }

  function ticks(low, high, about) {
    const raw = (high - low) / about, power = Math.pow(10, Math.floor(Math.log10(raw))), part = raw / power;
    const step = power * (part < 1.5 ? 1 : part < 3.5 ? 2 : part < 7.5 ? 5 : 10), found = [];
    for (let v = Math.ceil(low / step - 1e-9) * step; v <= high + 1e-9 * step; v += step) found.push(Math.abs(v) < 1e-9 * step ? 0 : v);
    return { found: found, decimals: Math.max(0, -Math.floor(Math.log10(step) + 1e-9)) };
  }

  function svg(name, attributes, parent, text) {
    const element = document.createElementNS("http://www.w3.org/2000/svg", name);
    for (const key in attributes) element.setAttribute(key, attributes[key]);
    if (text !== undefined) element.textContent = text;
    if (parent) parent.appendChild(element);
    return element;
  }

  function html(name, className, parent, text) {
    const element = document.createElement(name);
    if (className) element.className = className;
    if (text !== undefined) element.textContent = text;
    if (parent) parent.appendChild(element);
    return element;
  }

  // A round end of an axis that leaves a little room beyond the value.
  function roundUp(value) {
    if (!(value > 0)) return 1;
    const power = Math.pow(10, Math.floor(Math.log10(value)));
    for (const step of [1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10]) if (1.02 * value <= step * power) return step * power;
    return 12 * power;
  }

  // One unit of the picture is one pixel of the place it is drawn in, so that letters keep their size on a phone.
  function frame(data, parent, begin) {
    const width = Math.max(300, Math.min(860, parent.clientWidth || 860)), height = 380, narrow = width < 520;
    const box = { left: narrow ? 56 : 70, top: 14, right: width - (narrow ? 12 : 20), bottom: 322 };
    const c = data.colours, most = function (s) { return { left: Math.min.apply(null, s.xs), x: Math.max.apply(null, s.xs), y: Math.max.apply(null, s.ys), low: Math.min.apply(null, s.ys) }; };
    const picture = svg("svg", { viewBox: "0 0 " + width + " " + height, role: "img", "aria-label": data.y + " over " + data.x + ", for the setting of the sliders", "font-size": 13, fill: c.ink, style: "width:100%;height:auto;background:" + c.paper }, parent);
    const marks = svg("g", {}, picture);
    svg("rect", { x: box.left, y: box.top, width: box.right - box.left, height: box.bottom - box.top, fill: "none", stroke: c.frame }, picture);
    svg("text", { x: (box.left + box.right) / 2, y: height - 18, "text-anchor": "middle" }, picture, data.x);
    svg("text", { transform: "translate(16 " + (box.top + box.bottom) / 2 + ") rotate(-90)", "text-anchor": "middle" }, picture, data.y);
    const first = svg("polyline", { fill: "none", stroke: c.start, "stroke-width": 1.6, "stroke-dasharray": "6 4" }, picture);
    const line = svg("polyline", { fill: "none", stroke: c.line, "stroke-width": 2.4, "stroke-linejoin": "round" }, picture);
    let drawn = "";

    return function (state) {
      const known = [state, begin].filter(function (s) { return s && !s.reason; }).map(most);
      const pick = function (key) { return known.map(function (k) { return k[key]; }); };
      const right = roundUp(Math.max.apply(null, pick("x"))), high = roundUp(Math.max.apply(null, pick("y"))), low = Math.min(0, -roundUp(-Math.min.apply(null, pick("low").concat(0))) * (Math.min.apply(null, pick("low").concat(0)) < 0 ? 1 : 0));
      // A curve that lies far from zero begins where it begins; the others begin at zero.
      const least = Math.min.apply(null, pick("left")), left = known.length && least > 0.3 * right ? least : least < 0 ? -roundUp(-least) : 0;
      const atX = function (v) { return box.left + (box.right - box.left) * (v - left) / (right - left); };
      const atY = function (v) { return box.bottom - (box.bottom - box.top) * (v - low) / (high - low); };
      const points = function (s) { return s && !s.reason ? s.xs.map(function (v, i) { return atX(v).toFixed(1) + "," + atY(s.ys[i]).toFixed(1); }).join(" ") : ""; };
      if (known.length && drawn !== left + " " + right + " " + low + " " + high) {
        drawn = left + " " + right + " " + low + " " + high;
        marks.textContent = "";
        const across = ticks(left, right, narrow ? 4 : 8), up = ticks(low, high, 6);
        for (const v of across.found) {
          svg("line", { x1: atX(v), x2: atX(v), y1: box.top, y2: box.bottom, stroke: c.grid }, marks);
          svg("text", { x: atX(v), y: box.bottom + 18, "text-anchor": "middle" }, marks, v.toFixed(across.decimals));
        }
        for (const v of up.found) {
          svg("line", { x1: box.left, x2: box.right, y1: atY(v), y2: atY(v), stroke: c.grid }, marks);
          svg("text", { x: box.left - 8, y: atY(v) + 4, "text-anchor": "end" }, marks, v.toFixed(up.decimals).replace("-", "\u2212"));
        }
        first.setAttribute("points", points(begin));
      }
      line.setAttribute("points", points(state));
    };
  }

  // The compiled library in the live page, where one lies beside this page: held in a frame of no size, started with the first drag.
  let frameOfLibrary = null;
  function library() {
    const place = document.querySelector('meta[name="nk-library"]');
    if (!place) return null;
    if (frameOfLibrary) return frameOfLibrary;
    const frame = html("iframe", "", null), waiting = new Map();
    let n = 0, ready;
    const started = new Promise(function (done) { ready = done; });
    window.addEventListener("message", function (event) {
      const data = event.data;
      if (event.source !== frame.contentWindow || !data || data.notebookKit !== true) return;
      if (data.ready) ready(true);
      else if (data.failed) ready(false);
      else if (waiting.has(data.n)) {
        waiting.get(data.n)(data.answer);
        waiting.delete(data.n);
      }
    });
    frame.hidden = true;
    frame.title = "The compiled library";
    frame.src = place.content + "#library";
    document.body.appendChild(frame);
    frameOfLibrary = function (base, setting) {
      return started.then(function (runs) {
        return !runs ? null : new Promise(function (done) {
          waiting.set(++n, done);
          frame.contentWindow.postMessage({ notebookKit: true, n: n, model: base.model, design: base.design, setting: setting }, "*");
        });
      });
    };
    return frameOfLibrary;
  }

  function live(root) {
    const data = JSON.parse(root.querySelector(".nk-explorer-data").textContent);
    data.xs = decode(data.xs);
    data.ys = decode(data.ys);
    for (const n of data.numbers) n.values = decode(n.values);

    const place = root.querySelector(".nk-explorer-live"), sliders = html("div", "nk-explorer-sliders", place);
    const cards = html("dl", "nk-explorer-numbers", place), reason = html("div", "nk-finding nk-error", place), outputs = [];
    reason.setAttribute("role", "status");
    const setting = data.parameters.map(function (p) { return p.start; });
    let begin = stateAt(data, setting);
    const draw = frame(data, place, begin), atStart = setting.slice();
    html("div", "nk-note", place, "Dashed: the setting this figure started with. The axes follow the curve.");
    const how = html("div", "nk-note", place), error = root.querySelector(".nk-explorer-error");

    data.numbers.forEach(function (n) {
      const card = html("div", "", cards);
      html("dt", "", card, n.name);
      outputs.push({ value: html("dd", "", card), change: html("dd", "nk-note", card) });
    });

    // The library answers the newest setting; while it computes, what lies between the computed settings is shown.
    let asked = false, known = false;
    async function compute() {
      const ask = data.base && library();
      if (!ask || asked) return;
      asked = true;
      if (!known) {
        const first = await ask(data.base, atStart);
        if (!first || first.error) return;
        known = true;
        if (!begin.reason && !first.reason) begin = first;
      }
      let at = null;
      while (at === null || at.some(function (v, d) { return v !== setting[d]; })) {
        at = setting.slice();
        const state = await ask(data.base, at);
        if (!state || state.error) break;
        if (at.some(function (v, d) { return v !== setting[d]; })) continue;
        put(state);
        how.textContent = "Computed by the library in this page's folder, not interpolated.";
        error.hidden = true;
        root.dataset.computed = JSON.stringify({ setting: at, numbers: state.numbers });
      }
      asked = false;
    }

    function update() {
      how.textContent = "";
      error.hidden = false;
      put(stateAt(data, setting));
      compute();
    }

    function put(state) {
      reason.hidden = !state.reason;
      reason.textContent = state.reason || "";
      draw(state);
      data.numbers.forEach(function (n, i) {
        const answered = !state.reason, change = answered && !begin.reason ? state.numbers[i] - begin.numbers[i] : 0;
        outputs[i].value.textContent = answered ? show(state.numbers[i], 3) + " " + n.unit : "\u2013";
        outputs[i].change.textContent = answered && Math.abs(change) > 0.0005 * Math.abs(begin.numbers[i]) ? (change > 0 ? "+" : "") + show(change, 2) + " " + n.unit : "\u00a0";
      });
    }

    const resets = [];
    data.parameters.forEach(function (p, d) {
      if (p.choices.length) return choice(p, d);
      const label = html("label", "", sliders), text = html("span", "", label, p.name + " "), value = html("output", "", text), slider = html("input", "", label);
      slider.type = "range";
      slider.min = 0;
      slider.max = 400;
      slider.value = Math.round(400 * shareOf(p, p.start));
      const name = function () { value.textContent = show(setting[d], 3) + " " + p.unit; slider.setAttribute("aria-valuetext", value.textContent); };
      slider.addEventListener("input", function () {
        setting[d] = valueAt(p, slider.value / 400);
        name();
        update();
      });
      resets.push(function () {
        setting[d] = p.start;
        slider.value = Math.round(400 * shareOf(p, p.start));
        name();
      });
      name();
    });

    function choice(p, d) {
      const label = html("label", "", sliders);
      html("span", "", label, p.name + " ");
      const list = html("select", "", label);
      for (const each of p.choices) html("option", "", list, each);
      list.selectedIndex = p.start;
      list.addEventListener("change", function () {
        setting[d] = list.selectedIndex;
        update();
      });
      resets.push(function () { setting[d] = list.selectedIndex = p.start; });
    }

    const back = html("button", "", sliders, "Back to the start");
    back.type = "button";
    back.addEventListener("click", function () {
      for (const reset of resets) reset();
      update();
    });

    put(begin);
    root.querySelector(".nk-explorer-still").remove();
    root.nkStateAt = function (values) { return stateAt(data, values); };
  }

  for (const root of document.querySelectorAll(".nk-explorer:not([data-live])")) {
    root.setAttribute("data-live", "");
    live(root);
  }
})();
