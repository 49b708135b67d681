(function () {
  "use strict";
  for (const holder of document.querySelectorAll("script.chart-data")) {
    const place = document.getElementById(holder.dataset.for);
    const figure = JSON.parse(holder.textContent);
    const config = Object.assign({ responsive: true, displaylogo: false, showLink: false }, figure.config);
    Plotly.newPlot(place, figure.data, figure.layout, config).then(function (chart) {
      // Long names beside the axis leave no room on a narrow screen: such a chart is moved sideways instead.
      if (chart._fullLayout._size.w < 160) {
        place.parentElement.classList.add("wide");
        place.style.height = chart._fullLayout.height + "px";
        Plotly.Plots.resize(place);
      }
      if (figure.frames && figure.frames.length) return Plotly.addFrames(chart, figure.frames);
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
    document.querySelector("main").before(button);
  }

  // Paper shows every main number, and charts at the width of the sheet.
  const folded = document.querySelectorAll("details.more:not([open])");
  window.addEventListener("beforeprint", function () {
    for (const numbers of folded) numbers.open = true;
    for (const place of document.querySelectorAll("figure.chart > div")) if (window.Plotly) Plotly.Plots.resize(place);
  });
  window.addEventListener("afterprint", function () {
    for (const numbers of folded) numbers.open = false;
  });
})();
