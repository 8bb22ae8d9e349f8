// The page without this script works by forms and links; with it, changes happen in place and forecasts come in.

const FROM_SCRIPT = { "X-Turnout-Page": "1" };

/** Read the page anew from HTML: only what is marked to be swapped is replaced, so controls keep their place. */
function swapIn(html) {
  const fresh = new DOMParser().parseFromString(html, "text/html");
  for (const part of document.querySelectorAll("[data-swap]")) {
    const next = fresh.getElementById(part.id);
    if (next) part.replaceWith(document.adoptNode(next));
  }
  for (const field of fresh.querySelectorAll("[data-field]")) takeValue(field);
  say(fresh.getElementById("said").textContent);
  document.title = fresh.title;
  document.body.dataset.revision = fresh.body.dataset.revision;
  document.body.dataset.whole = fresh.body.dataset.whole;
}

/** Values and validity of the fields outside the swapped parts. @param {Element} fresh */
function takeValue(fresh) {
  const field = document.getElementById(fresh.id);
  if (!field) return;
  for (const name of ["aria-invalid", "aria-describedby", "disabled"]) {
    if (fresh.hasAttribute(name)) field.setAttribute(name, fresh.getAttribute(name));
    else field.removeAttribute(name);
  }
  field.value = fresh.getAttribute("value");
}

let latest = 0;

/** Send a change and show its answer; an answer overtaken by a later change is dropped. @param {URLSearchParams} typed */
async function change(typed) {
  const own = ++latest;
  stopForecasts();
  document.getElementById("hour").classList.add("busy");
  try {
    const answer = await fetch("/tonight", { method: "POST", body: typed, headers: FROM_SCRIPT });
    const text = await answer.text();
    if (own !== latest) return;
    if (answer.ok || answer.status === 422) swapIn(text);
    else say(text);
  } catch {
    if (own === latest) say("The desk does not answer. Is it still running in the terminal?");
  }
  if (own !== latest) return;
  document.getElementById("hour").classList.remove("busy");
  followForecasts();
}

/** Tell it on the page, where a screen reader hears it too. @param {string} sentence */
function say(sentence) {
  document.getElementById("said").textContent = sentence;
}

/** @type {EventSource | null} */
let stream = null;

function stopForecasts() {
  if (stream) stream.close();
  stream = null;
}

/** Take in the forecasts of the evening shown, part by part, as they are played. */
function followForecasts() {
  stopForecasts();
  if (document.body.dataset.whole === "yes" || !document.querySelector("[data-part]")) return;
  const own = new EventSource(`/forecasts?revision=${document.body.dataset.revision}`);
  stream = own;
  own.addEventListener("part", (event) => {
    const part = JSON.parse(event.data);
    const place = document.getElementById(`how-${part.index}`);
    if (stream === own && place) place.innerHTML = part.html;
  });
  own.addEventListener("wait", (event) => {
    document.getElementById("played").textContent = JSON.parse(event.data).sentence;
  });
  own.addEventListener("done", () => finish("Every part has been played."));
  own.addEventListener("stale", () => finish("The evening was changed in another window. Load this page again."));
  own.onerror = () => finish("The forecasts stopped. Load this page again.");
  function finish(sentence) {
    if (stream !== own) return;
    stopForecasts();
    document.getElementById("played").textContent = sentence;
  }
}

const form = document.getElementById("tonight");
form.addEventListener("submit", (event) => {
  event.preventDefault();
  const typed = new URLSearchParams(new FormData(form));
  const button = event.submitter;
  change(button && button.name === "to" ? new URLSearchParams({ to: button.value }) : typed);
});
form.addEventListener("change", () => change(new URLSearchParams(new FormData(form))));
followForecasts();
