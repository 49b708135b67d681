"use strict";
// The compiled library beside the page, so that the page never stands still. It gets the packed files one by one, modules first, then
// questions.
let library = null, starting = false;
const parts = new Map();
function part(name) {
  if (!parts.has(name)) {
    const one = {};
    one.bytes = new Promise((have, lack) => Object.assign(one, { have, lack }));
    parts.set(name, one);
  }
  return parts.get(name);
}
function unpack(packed) {
  const { readable, writable } = new DecompressionStream("gzip"), to = writable.getWriter();
  // What is wrong with the bytes is told by the reading end.
  for (const done of [to.write(bytesOf(packed)), to.close()]) done.catch(() => { });
  return new Response(readable).arrayBuffer();
}
// What the loader asks of an answer from a server.
const answer = (name, bytes) =>
  new Response(bytes, { headers: { "content-type": name.endsWith(".wasm") ? "application/wasm" : "text/javascript" } });
async function start() {
  // A worker of its own, not one of the runtime's threads.
  self.dotnetSidecar = true;
  const addresses = new Map();
  for (const name of [...parts.keys()].filter(name => name.endsWith(".js"))) {
    // A module from memory has no address of its own; the loader needs one that looks whole and is never asked.
    const text = new TextDecoder().decode(await part(name).bytes)
      .replaceAll("import.meta.url", JSON.stringify("https://page.invalid/_framework/" + name));
    addresses.set(name, URL.createObjectURL(new Blob([text], { type: "text/javascript" })));
  }
  const { dotnet } = await import(addresses.get("dotnet.js"));
  // The loader asks for sixteen files at a time unless told otherwise; here none is fetched, and all may come at once.
  const runtime = await dotnet.withConfig({ maxParallelDownloads: 1000 }).withResourceLoader((type, name) =>
    type === "dotnetjs" ? addresses.get(name) : part(name).bytes.then(bytes => answer(name, bytes))).create();
  library = (await runtime.getAssemblyExports("NotebookKit.Live.dll")).NotebookKit.Live.Program;
}
onmessage = async ({ data }) => {
  if (data.name) {
    const one = part(data.name);
    unpack(data).then(one.have, wrong => {
      postMessage({ failed: "a part of this page's file is damaged; copy the file anew" });
      one.lack(wrong);
    });
    if (starting || data.name.endsWith(".js")) return;
    starting = true;
    try {
      await start();
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
