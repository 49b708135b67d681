// The library's worker starts while this file is still being read, and each packed part goes to it as soon as it is there.
const early = (() => {
  if (typeof WebAssembly !== "object" || typeof DecompressionStream !== "function" || typeof Worker !== "function")
    return { started: Promise.reject(new Error(
      "This browser has no WebAssembly, or it is switched off. Open the page in a current browser, or use the printed sheets.")) };
  const cannot = why => new Error("The library could not be started: " + why + ".");
  let worker;
  try {
    worker = new Worker(URL.createObjectURL(new Blob([document.getElementById("worker").textContent], { type: "text/javascript" })));
  } catch {
    return { started: Promise.reject(cannot("the browser refused its worker; open the page in a current browser, or use the printed sheets")) };
  }
  const started = new Promise((ready, failed) => {
    worker.onerror = e => failed(cannot(e.message || "the browser refused its worker"));
    worker.onmessage = ({ data }) => data.ready ? ready() : failed(cannot(data.failed));
    document.addEventListener("DOMContentLoaded", () => {
      if (document.getElementById("end")) return;
      worker.terminate();
      failed(new Error("A part of this page is missing: its file was cut off, by a full disk or a download that broke. Copy the file anew."));
    });
  });
  return { worker, started };
})();
// Whoever starts the library says what went wrong; until then nobody listens.
early.started.catch(() => { });
function part() {
  const packed = document.currentScript.previousElementSibling;
  if (early.worker) early.worker.postMessage({ name: packed.dataset.name, text: packed.textContent, count: Number(packed.dataset.bytes) });
  packed.textContent = "";
}
