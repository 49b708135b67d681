(function () {
  "use strict";
  const holders = Array.from(document.querySelectorAll("script.chart-data"));
  const missing = "This chart is drawn by plotly.min.js, which lies beside the pages. Copy that file too, or write the page with --single.";

  // Sizes follow the place: a phone, a desk and a sheet of paper need other margins; letters never shrink below 12 px.
  function fitted(figure, width, height) {
    const layout = structuredClone(figure.layout), narrow = width < 520;
    layout.autosize = false;
    layout.width = width;
    layout.height = height;
    layout.font = Object.assign({}, layout.font, { size: narrow ? 12 : 14 });
    if (layout.scene) {
      layout.margin = { l: 4, r: 4, t: 8, b: 4 };
      return layout;
    }
    layout.margin = { l: narrow ? 44 : 64, r: layout.yaxis2 ? narrow ? 44 : 64 : narrow ? 10 : 24, t: 12, b: 48, autoexpand: true };
    layout.legend = Object.assign({}, layout.legend, {
      orientation: "h", x: 0, xref: "paper", xanchor: "left", yref: "container", y: 0, yanchor: "bottom", font: { size: narrow ? 12 : 13 }, tracegroupgap: 0,
    });
    for (const name of ["xaxis", "yaxis", "yaxis2"]) {
      if (!layout[name]) continue;
      layout[name].automargin = true;
      layout[name].title = Object.assign({}, layout[name].title, { standoff: narrow ? 4 : 10, font: { size: narrow ? 12 : 14 } });
      if (narrow) layout[name].nticks = name === "xaxis" ? 6 : 8;
      if (layout[name].type === "category" && name === "yaxis") {
        // Every lying bar has its name; long ones take several short lines.
        const room = narrow ? 98 : 210;
        const names = [];
        for (const trace of figure.data) for (const each of trace.y || []) if (!names.includes(each)) names.push(each);
        layout[name].tickvals = names;
        layout[name].ticktext = names.map(function (each) { return broken(each, room); });
        // Bars share the height evenly: the longest name says how much each needs.
        const most = Math.max.apply(null, layout[name].ticktext.map(function (each) { return each.split("<br>").length; }));
        const lines = names.length * (most + (narrow ? 0.8 : 0.4));
        layout.height = Math.max(height, Math.round(80 + (narrow ? 15 : 17) * lines));
        if (!narrow) continue;
        layout[name].title.text = "";
        if (layout.xaxis.range && figure.data.some(function (trace) { return trace.text; })) layout.xaxis.range = [layout.xaxis.range[0], 1.3 * layout.xaxis.range[1]];
        for (const trace of figure.data) if (Array.isArray(trace.text)) trace.text = trace.text.map(function (each) { return broken(each, 98); });
      }
    }
    return layout;
  }

  // Long axis titles break where they would run out of the frame.
  function broken(text, room) {
    const most = Math.max(14, Math.floor(room / 7)), lines = [""];
    for (const word of text.split(" ")) {
      const last = lines.length - 1;
      if (lines[last].length > 0 && lines[last].length + word.length + 1 > most) lines.push(word);
      else lines[last] += (lines[last] ? " " : "") + word;
    }
    return lines.join("<br>");
  }

  function boxesOf(chart) {
    return Array.from(chart.querySelectorAll("g.annotation .annotation-text-g")).map(function (a) { return a.getBoundingClientRect(); });
  }

  function overlap(a, b) {
    return Math.max(0, Math.min(a.right, b.right) - Math.max(a.left, b.left)) * Math.max(0, Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top));
  }

  // Where curves run, as places on the screen.
  function inked(chart) {
    const points = [];
    for (const path of chart.querySelectorAll(".scatterlayer path.js-line, .scatterlayer path.point")) {
      const box = path.getBoundingClientRect();
      if (path.classList.contains("point")) { points.push([(box.left + box.right) / 2, (box.top + box.bottom) / 2]); continue; }
      const matrix = path.getScreenCTM(), length = path.getTotalLength(), count = Math.min(400, Math.ceil(length / 3));
      for (let i = 0; i <= count; i++) {
        const p = path.getPointAtLength(length * i / count).matrixTransform(matrix);
        points.push([p.x, p.y]);
      }
    }
    return points;
  }

  // Where limits and events stand.
  function ruled(chart) {
    const points = [];
    for (const path of chart.querySelectorAll(".shapelayer path")) {
      // A tinted part is no line.
      const area = path.getBBox();
      if (area.width > 1 && area.height > 1) continue;
      const matrix = path.getScreenCTM(), length = path.getTotalLength();
      for (let at = 0; at <= length; at += 3) {
        const p = path.getPointAtLength(at).matrixTransform(matrix);
        points.push([p.x, p.y]);
      }
    }
    return points;
  }

  // Words that found no free place, each beside the letter that stands for it on the chart.
  function lettered(chart, key) {
    const old = chart.parentElement.querySelector(".letters");
    if (old) old.remove();
    if (!key.length) return;
    const list = document.createElement("ul");
    list.className = "key letters";
    for (const [letter, words] of key) {
      const line = document.createElement("li"), sign = document.createElement("b");
      sign.textContent = letter + " ";
      line.append(sign, words.replace(/<br>/g, " ").replaceAll("&lt;", "<").replaceAll("&gt;", ">").replaceAll("&amp;", "&").trim());
      list.append(line);
    }
    chart.after(list);
  }

  // A word on a chart goes to the nearest of its possible places that lies over no other word and no line; where none is free a letter
  // stands for it.
  function place(chart, layout, key) {
    if (!key) lettered(chart, []);
    const notes = layout.annotations || [], frame = chart.querySelector(".cartesianlayer .plot");
    if (!notes.length || !frame) return Promise.resolve(chart);
    const area = chart._fullLayout._size, home = chart.getBoundingClientRect(), ink = inked(chart), rules = ruled(chart), boxes = boxesOf(chart), crowded = [];
    if (boxes.length !== notes.length) return Promise.resolve(chart);
    const inside = { left: home.left + area.l, top: home.top + area.t, right: home.left + area.l + area.w, bottom: home.top + area.t + area.h };
    const settled = [], before = notes.map(function (note) { return Object.assign({}, note); });
    notes.forEach(function (note, i) {
      const box = boxes[i], w = box.width, h = box.height, tries = [[0, 0]];
      if (note.textangle === -90) {
        for (const dx of [0, note.xanchor === "right" ? w + 6 : -w - 6])
          for (let y = 0; y + h <= area.h; y += 8) tries.push([dx, inside.top + y - box.top]);
      } else if (note.showarrow) {
        for (let dx = -200; dx <= 200; dx += 25) for (let dy = -100; dy <= 200; dy += 20) tries.push([dx, dy]);
      } else {
        const other = note.yanchor === "bottom" ? [h + 6] : note.yanchor === "top" ? [-h - 6] : [h + 3, -h - 3];
        for (const dy of [0].concat(other)) for (let x = 0; x + w <= area.w; x += 12) tries.push([inside.left + x - box.left, dy]);
      }
      let best = [0, 0], least = Infinity, meets = 0;
      for (const [dx, dy] of tries) {
        const at = { left: box.left + dx, right: box.right + dx, top: box.top + dy, bottom: box.bottom + dy };
        const out = w * h - overlap(at, inside);
        let cost = 0.02 * Math.hypot(dx, dy) + (out > 1 ? 1000 + out : 0);
        let hits = out > 1 ? 1 : 0;
        for (const other of settled) if (overlap(at, other) > 0) { hits++; cost += 2000 + overlap(at, other); }
        for (const p of ink) if (p[0] > at.left - 2 && p[0] < at.right + 2 && p[1] > at.top - 1 && p[1] < at.bottom + 1) { hits++; cost += 100; }
        for (const p of rules) if (p[0] > at.left + 2 && p[0] < at.right - 2 && p[1] > at.top + 2 && p[1] < at.bottom - 2) { hits++; cost += 100; }
        if (cost < least) { least = cost; best = [dx, dy]; meets = hits; }
      }
      if (meets) crowded.push(i);
      settled.push({ left: box.left + best[0], right: box.right + best[0], top: box.top + best[1], bottom: box.bottom + best[1] });
      if (note.showarrow) {
        const x = chart._fullLayout.xaxis.range, y = chart._fullLayout.yaxis.range;
        note.ax += best[0] * (x[1] - x[0]) / area.w;
        note.ay -= best[1] * (y[1] - y[0]) / area.h;
        return;
      }
      note.xshift = (note.xshift || 0) + best[0];
      note.yshift = (note.yshift || 0) - best[1];
    });
    if (!key && crowded.length) {
      const signs = [];
      for (const i of crowded) {
        const sign = String.fromCharCode(65 + signs.length % 26);
        signs.push([sign, before[i].text]);
        before[i].text = "<b>" + sign + "</b>";
      }
      layout.annotations = before;
      return Plotly.relayout(chart, { annotations: before }).then(function () {
        lettered(chart, signs);
        return place(chart, layout, signs);
      });
    }
    return Plotly.relayout(chart, { annotations: notes });
  }

  // Names that are long for their chart become numbers, and the names stand below it in full.
  function numbered(figure, place0, width) {
    const key = [];
    for (const trace of figure.data) {
      if (!/text/.test(trace.mode || "") || !Array.isArray(trace.text)) continue;
      const longest = Math.max.apply(null, trace.text.map(function (t) { return t.length; }));
      if (7 * longest <= (width - 70) / 4) continue;
      trace.text = (trace.hovertext || trace.text).map(function (t) { return t ? String(key.push(t)) : ""; });
      trace.textposition = trace.text.map(function (t, i) { return i % 2 ? "bottom right" : "top left"; });
    }

    const old = place0.parentElement.querySelector(".key");
    if (old) old.remove();
    if (!key.length) return;
    const list = document.createElement("ol");
    list.className = "key";
    for (const name of key) {
      const line = document.createElement("li");
      line.textContent = name.replaceAll("&lt;", "<").replaceAll("&gt;", ">").replaceAll("&amp;", "&");
      list.append(line);
    }
    place0.after(list);
  }

  function draw(holder, width, tall) {
    const place0 = document.getElementById(holder.dataset.for), figure = JSON.parse(holder.textContent);
    const given = figure.layout && figure.layout.height || 480, height = Math.round(tall * given / 480);
    numbered(figure, place0, width);
    const layout = fitted(figure, width, height);
    for (const name of ["xaxis", "yaxis", "yaxis2"])
      if (layout[name] && layout[name].title && layout[name].title.text)
        layout[name].title.text = broken(layout[name].title.text, name === "xaxis" ? width - 60 : height - 130);
    for (const note of layout.annotations || []) {
      // A letter stands for its word in the smallest figure only.
      if (note.hovertext) { note.text = note.hovertext; delete note.hovertext; }
      if (note.text && note.textangle !== -90) note.text = broken(note.text, width - 110);
    }
    for (const trace of figure.data) if (trace.name) trace.name = broken(trace.name, width - 110);
    const config = Object.assign({ displaylogo: false, showLink: false }, figure.config, { responsive: false });
    if (width < 520) config.displayModeBar = false;
    return Plotly.react(place0, figure.data, layout, config).then(function (chart) {
      const size = chart._fullLayout._size;
      // Long names beside the axis leave no room on a narrow screen: such a chart is moved sideways instead.
      if (size && size.w < 150 && !layout.scene && width < 540) {
        place0.parentElement.classList.add("wide");
        return draw(holder, 544, tall);
      }
      // What the legend takes is added to the height, not taken from the plot.
      const legend = chart._fullLayout.legend && chart._fullLayout.legend._height || 0;
      const added = chart._fullLayout.showlegend ? legend + 8 : 0;
      return Plotly.relayout(chart, { height: layout.height + added }).then(function () { return place(chart, layout); });
    }).then(function (chart) {
      if (figure.frames && figure.frames.length && !chart._transitionData._frames.length) return Plotly.addFrames(chart, figure.frames);
    });
  }

  // Until charts are drawn the page bears no mark of it.
  function redraw() {
    delete document.documentElement.dataset.drawn;
    return drawAll().then(function () {
      reachable();
      document.documentElement.dataset.drawn = "yes";
    });
  }

  function drawAll(width, tall) {
    return Promise.all(holders.map(function (holder) {
      const place0 = document.getElementById(holder.dataset.for);
      const room = place0.parentElement.clientWidth;
      return draw(holder, width || Math.max(280, room), tall || (room < 520 ? 360 : 440));
    }));
  }

  let drawn = Promise.resolve();
  if (holders.length && !window.Plotly) {
    for (const holder of holders) {
      const note = document.createElement("p");
      note.className = "no-library";
      note.textContent = missing;
      document.getElementById(holder.dataset.for).replaceWith(note);
    }
  } else if (holders.length) {
    drawn = redraw();
    let wide = document.documentElement.clientWidth, waits = 0;
    window.addEventListener("resize", function () {
      clearTimeout(waits);
      waits = setTimeout(function () {
        if (document.documentElement.clientWidth === wide) return;
        wide = document.documentElement.clientWidth;
        redraw();
      }, 200);
    });
  }

  const cells = document.querySelectorAll("details.code");
  if (cells.length) {
    const button = document.createElement("button");
    button.className = "fold";
    button.type = "button";
    const allOpen = function () { return Array.from(cells).every(function (cell) { return cell.open; }); };
    const label = function () { button.textContent = allOpen() ? "Hide all code" : "Show all code"; };
    button.addEventListener("click", function () {
      const open = !allOpen();
      for (const cell of cells) cell.open = open;
      label();
    });
    for (const cell of cells) cell.addEventListener("toggle", label);
    label();
    document.querySelector("main").prepend(button);
  }

  // Beside the text the contents stand open; above it they are folded.
  const contents = document.querySelector(".contents > details"), beside = window.matchMedia("(min-width: 72rem)");
  if (contents) {
    const settle = function () { contents.open = beside.matches; };
    settle();
    beside.addEventListener("change", settle);
  }

  // What is wider than its box is moved by the keyboard too: known when charts and fonts are there.
  const boxes = document.querySelectorAll(".shown, table, .equation, figure.chart, pre, .nk-drawing");
  const reachable = function () {
    for (const box of boxes) {
      if (box.scrollWidth > box.clientWidth + 1 && getComputedStyle(box).overflowX !== "visible") {
        box.tabIndex = 0;
      } else if (box.tabIndex === 0 && box.hasAttribute("tabindex")) box.removeAttribute("tabindex");
    }
  };
  reachable();
  window.addEventListener("load", function () {
    reachable();
    Promise.all([drawn, document.fonts.ready]).then(function () {
      reachable();
      document.documentElement.dataset.settled = "yes";
    });
  });
  window.addEventListener("resize", reachable);

  // Paper shows every main number, and charts at the width of the sheet.
  const folded = document.querySelectorAll("details.more:not([open])");
  window.addEventListener("beforeprint", function () {
    for (const numbers of folded) numbers.open = true;
    for (const mark of ["drawn", "printed"]) delete document.documentElement.dataset[mark];
    if (window.Plotly && holders.length) drawAll(660, 290).then(function () { document.documentElement.dataset.printed = "yes"; });
  });
  window.addEventListener("afterprint", function () {
    for (const numbers of folded) numbers.open = false;
    delete document.documentElement.dataset.printed;
    if (window.Plotly && holders.length) redraw();
  });
})();
