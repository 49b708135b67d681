// What is packed as text stands as text before the page's own script runs.
(async () => {
  const unpacked = packed => new Response(new Blob([bytesOf({ text: packed.textContent, count: Number(packed.dataset.bytes) })])
    .stream().pipeThrough(new DecompressionStream("gzip"))).text();
  try {
    const style = document.createElement("style");
    style.textContent = await unpacked(document.getElementById("style"));
    document.head.append(style);
    for (const design of document.querySelectorAll("script.design")) design.textContent = await unpacked(design);
    const script = document.createElement("script");
    script.textContent = await unpacked(document.getElementById("page"));
    document.body.append(script);
  } catch (wrong) {
    document.getElementById("status").textContent = "This browser can't unpack the page (" + (wrong && wrong.message || wrong)
      + "). Open the page in a current browser, or use the printed sheets.";
  }
})();
