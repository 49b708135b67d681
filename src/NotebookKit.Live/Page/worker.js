"use strict";
// The compiled library beside the page, so that the page never stands still. It gets the packed files once, then questions.
let library = null;
async function start(parts) {
  // A worker of its own, not one of the runtime's threads.
  self.dotnetSidecar = true;
  const kept = new Map(parts.map(p => [p.name, bytesOf(p)]));
  const unpacked = name => new Response(new Blob([kept.get(name)]).stream().pipeThrough(new DecompressionStream("gzip")),
    { headers: { "content-type": name.endsWith(".wasm") ? "application/wasm" : "text/javascript" } });
  const addresses = new Map();
  for (const name of kept.keys()) {
    if (!name.endsWith(".js")) continue;
    // A module from memory has no address of its own; the loader needs one that looks whole and is never asked.
    const text = (await unpacked(name).text()).replaceAll("import.meta.url", JSON.stringify("https://page.invalid/_framework/" + name));
    addresses.set(name, URL.createObjectURL(new Blob([text], { type: "text/javascript" })));
  }
  const { dotnet } = await import(addresses.get("dotnet.js"));
  const runtime = await dotnet.withResourceLoader((type, name) =>
    type === "dotnetjs" ? addresses.get(name) : Promise.resolve(unpacked(name))).create();
  library = (await runtime.getAssemblyExports("NotebookKit.Live.dll")).NotebookKit.Live.Program;
}
onmessage = async ({ data }) => {
  if (data.parts) {
    try {
      await start(data.parts);
      postMessage({ ready: true });
    } catch (wrong) {
      postMessage({ failed: String(wrong && wrong.message || wrong) });
    }
    return;
  }
  try {
    postMessage({ n: data.n, text: library[data.verb](...data.args) });
  } catch (wrong) {
    postMessage({ n: data.n, text: JSON.stringify({ error: "The library stopped: " + String(wrong && wrong.message || wrong) }) });
  }
};
