// ---- What was typed survives a closed tab, where the browser lets it. ----
const keeping = { key: "notebookkit.live", allowed: true, data: { bench: {}, pad: {} } };

function recall() {
  try {
    const text = localStorage.getItem(keeping.key);
    if (text) keeping.data = { bench: {}, pad: {}, ...JSON.parse(text) };
  } catch (wrong) {
    keeping.allowed = !(wrong instanceof DOMException);
    if (keeping.allowed) say("What this browser kept can't be read; the page starts anew.");
  }
}
function keep() {
  try {
    localStorage.setItem(keeping.key, JSON.stringify(keeping.data));
    keeping.allowed = true;
  } catch {
    keeping.allowed = false;
  }
  showWhere();
}
function showWhere() {
  $("where").textContent = keeping.allowed
    ? "What you type stays in this browser's local storage on this device, under the name " + keeping.key
      + ", and nowhere else. Another browser or device doesn't have it: save files to share them."
    : "This browser keeps nothing for this page (no storage allowed, or it is full): save files before you close the tab.";
}
function wipe() {
  try {
    localStorage.removeItem(keeping.key);
  } catch { /* nothing was kept */ }
  keeping.data = { bench: {}, pad: {} };
  say("Wiped. What is on the page now is kept again at the next change.");
  showWhere();
}
