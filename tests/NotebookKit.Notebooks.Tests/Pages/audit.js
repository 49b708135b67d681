// What is wrong with a page at the width it is shown in: a list of sentences. Boxes are measured, nothing is taken from the source.
(() => {
  const found = [], wide = document.documentElement.clientWidth;
  const name = e => e.tagName.toLowerCase() + (e.id ? "#" + e.id : "") + (e.classList.length ? "." + Array.from(e.classList).join(".") : "")
    + " \"" + (e.textContent || "").trim().replace(/\s+/g, " ").slice(0, 40) + "\"";
  const shown = e => e.checkVisibility({ contentVisibilityAuto: true, opacityProperty: true, visibilityProperty: true }) && e.getClientRects().length > 0;
  const scrolls = e => {
    for (let p = e.parentElement; p; p = p.parentElement) {
      if (p === document.body || p === document.documentElement) return false;
      if (getComputedStyle(p).overflowX !== "visible") return p.getBoundingClientRect().right <= wide + 1 && p.getBoundingClientRect().left >= -1;
    }
    return false;
  };
  if (document.documentElement.scrollWidth > wide) found.push("The page is " + document.documentElement.scrollWidth + " px wide on a screen of " + wide + " px.");
  for (const e of document.querySelectorAll("body *")) {
    if (e.closest("svg") && e.tagName !== "svg" || e.closest(".modebar, .js-plotly-plot, #js-plotly-tester") || !shown(e)) continue;
    const box = e.getBoundingClientRect();
    if ((box.right > wide + 1 || box.left < -1) && !scrolls(e)) found.push("Off the screen, from " + Math.round(box.left) + " to " + Math.round(box.right) + " px: " + name(e));
  }
  for (const i of document.images)
    if (i.complete && !i.naturalWidth) found.push("Picture not shown: " + (i.alt || i.src).slice(0, 60));
  for (const a of document.querySelectorAll("a[href^='#']"))
    if (!document.getElementById(decodeURIComponent(a.getAttribute("href").slice(1)))) found.push("Leads nowhere: " + name(a));
  for (const e of document.querySelectorAll("a[href], button, summary, input, select"))
    if (shown(e) && e.tabIndex < 0 && !e.closest(".modebar")) found.push("Not reached by the keyboard: " + name(e));
  for (const e of document.querySelectorAll(".shown, table, .equation, pre, figure.chart"))
    if (shown(e) && e.scrollWidth > e.clientWidth + 1 && getComputedStyle(e).overflowX === "auto" && e.tabIndex < 0) found.push("Moved by no key: " + name(e));

  const over = (a, b, by) => Math.min(a.right, b.right) - Math.max(a.left, b.left) > by && Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > by;
  for (const figure of document.querySelectorAll("figure.chart")) {
    const title = (figure.querySelector("figcaption") || figure).textContent.trim().slice(0, 50), chart = figure.querySelector(".js-plotly-plot");
    if (!chart) { found.push("Not drawn: " + title); continue; }
    const all = s => Array.from(chart.querySelectorAll(s)).filter(e => e.textContent.trim() && shown(e)).map(e => ({ words: e.textContent.trim().slice(0, 40), box: e.getBoundingClientRect() }));
    const notes = all("g.annotation .annotation-text-g"), ticks = all(".xtick text, .x2tick text"), ups = all(".ytick text, .y2tick text"), titles = all(".xtitle, .ytitle, .y2title"), legend = all(".legend .legendtext");
    const pairs = (list, others, by, what) => list.forEach((a, i) => (others || list.slice(i + 1)).forEach(b => {
      if (over(a.box, b.box, by)) found.push("In " + title + ": " + what + " \"" + a.words + "\" lies over \"" + b.words + "\".");
    }));
    pairs(notes, null, 2, "the label");
    pairs(ticks, null, 1, "the number");
    pairs(ups, null, 1, "the number");
    pairs(titles, ticks.concat(ups), 1, "the axis title");
    pairs(legend, notes.concat(ticks, titles), 1, "the legend");
    pairs(titles, null, 1, "the axis title");
    const names = all(".textpoint text, .bartext");
    pairs(names, null, 3, "the name");
    pairs(names, ticks.concat(ups, titles), 3, "the name");
    const area = chart.getBoundingClientRect();
    for (const t of notes.concat(ticks, ups, titles, legend, names))
      if (t.box.left < area.left - 1 || t.box.right > area.right + 1 || t.box.top < area.top - 1 || t.box.bottom > area.bottom + 1)
        found.push("In " + title + ": cut off: \"" + t.words + "\", at " + [t.box.left - area.left, t.box.right - area.left, t.box.top - area.top, t.box.bottom - area.top].map(Math.round) + " of " + Math.round(area.width) + " by " + Math.round(area.height) + " px.");
    for (const e of chart.querySelectorAll("text")) {
      const size = parseFloat(getComputedStyle(e).fontSize);
      if (e.textContent.trim() && shown(e) && size < 11) found.push("In " + title + ": letters of " + size + " px: " + e.textContent.trim().slice(0, 30));
    }
  }
  return Array.from(new Set(found));
})()
