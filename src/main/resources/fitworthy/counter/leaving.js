/* leaving.js: what stands typed is written before a page is left. */
"use strict";

/* Fields of the plan and forms of questions that say something which has not been sent, or waits for its turn. */
const isOfPlan = (elt) => elt.matches(".field [hx-post], form.answer");
function unwritten() {
  const typed = [...unsent].filter((field) => field.value.trim()).map((field) => field.closest("form.answer") ?? field);
  return [...new Set([...typed, ...waiting.map(({ elt }) => elt)])].filter((elt) => elt.isConnected && isOfPlan(elt));
}
const isWriting = () => onItsWay === "post" || waiting.some(({ elt }) => elt.matches("[hx-post], #side"));

/* Another page of the counter is gone to once all is written; an answer that is refused keeps its page, with the reason. */
let goingTo = null;
document.addEventListener("click", (event) => {
  const link = event.target.closest("a[href]:not([target], [download])");
  const elsewhere = link && link.href.split("#")[0] !== location.href.split("#")[0];
  const here = event.button === 0 && !event.ctrlKey && !event.metaKey && !event.shiftKey && !event.altKey;
  const answers = unwritten().filter((elt) => elt.matches("form") && !isWaiting(elt));
  if (elsewhere && here && !event.defaultPrevented && (answers.length > 0 || isWriting())) {
    event.preventDefault();
    goingTo = { href: link.href, answers };
    answers.forEach((form) => form.requestSubmit());
    goOn();
  }
});

function goOn() {
  if (!goingTo || isWriting()) {
    return;
  }
  const { href, answers } = goingTo;
  goingTo = null;
  const kept = answers.find((form) => form.isConnected && form.querySelector(".fault")?.textContent.trim());
  if (kept) {
    kept.querySelector("[name='value']").focus();
  } else if (!document.getElementById("away")?.hasChildNodes()) {
    location.assign(href);
  }
}

/* Gone back, closed or loaded anew: what cannot be waited for is sent along. */
addEventListener("pagehide", () => {
  for (const elt of unwritten()) {
    const within = elt.closest("form, .field");
    const named = [...within.querySelectorAll("input[name], select[name]")].map((field) => [field.name, field.value]);
    const said = JSON.parse(elt.closest("[hx-vals]")?.getAttribute("hx-vals") ?? "{}");
    const rest = { version: document.getElementById("version").value, hold: holdOf(elt) };
    navigator.sendBeacon(elt.getAttribute("hx-post"), new URLSearchParams({ ...Object.fromEntries(named), ...said, ...rest }));
  }
  unsent.clear();
});
