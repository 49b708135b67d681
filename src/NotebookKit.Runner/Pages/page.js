(function () {
  "use strict";
  for (const holder of document.querySelectorAll("script.chart-data")) {
    const place = document.getElementById(holder.dataset.for);
    const figure = JSON.parse(holder.textContent);
    const config = Object.assign({ responsive: true, displaylogo: false, showLink: false }, figure.config);
    Plotly.newPlot(place, figure.data, figure.layout, config).then(function (chart) {
      if (figure.frames && figure.frames.length) return Plotly.addFrames(chart, figure.frames);
    });
  }

  const cells = document.querySelectorAll("details.code");
  if (cells.length) {
    const button = document.createElement("button");
    button.className = "fold";
    button.type = "button";
    const label = function () { button.textContent = cells[0].open ? "Hide all code" : "Show all code"; };
    button.addEventListener("click", function () {
      const open = !cells[0].open;
      for (const cell of cells) cell.open = open;
      label();
    });
    label();
    document.querySelector("main").before(button);
  }

  // Paper shows what the reader saw on the screen, charts at the width of the sheet.
  window.addEventListener("beforeprint", function () {
    for (const place of document.querySelectorAll("figure.chart > div")) if (window.Plotly) Plotly.Plots.resize(place);
  });
})();
