/* counter.js */
"use strict";

/* What is done once all of an answer is on the page, before it is painted: to look at places costs a layout of the page. */
function whenShown(work) {
  let waiting = false;
  document.addEventListener("htmx:afterSwap", () => {
    if (!waiting) {
      waiting = true;
      queueMicrotask(() => {
        waiting = false;
        work();
      });
    }
  });
}

/* Pages of the same sheet follow each other, while somebody can see them. */
const FOLLOW_EVERY = 3000;
function follow() {
  const page = document.getElementById("follow");
  if (page && !document.hidden) {
    htmx.trigger(page, "follow");
  }
}
setInterval(follow, FOLLOW_EVERY);
document.addEventListener("visibilitychange", follow);

/* A second press soon after does nothing where the next thing comes up below the pointer, or the page is about to be left. */
const PAUSES = { "#plan button.off": 1500, ".new-sheet button.first": 5000 };
const pressed = {};
addEventListener("pageshow", () => Object.keys(pressed).forEach((which) => delete pressed[which]));
document.addEventListener("click", (event) => {
  const which = Object.keys(PAUSES).find((one) => event.target.closest(one));
  if (which && event.timeStamp - (pressed[which] ?? -Infinity) < PAUSES[which]) {
    event.preventDefault();
    event.stopImmediatePropagation();
  } else if (which) {
    pressed[which] = event.timeStamp;
  }
}, true);

/* The bar of a sheet stays in sight; whatever is gone to comes to stand below it. */
const bar = document.getElementById("state");
if (bar) {
  new ResizeObserver(() => document.documentElement.style.setProperty("--bar", `${bar.offsetHeight}px`)).observe(bar);
}

/* Nothing moves away below the pointer, or else from the field one is in, when an answer makes what stands above it grow. */
const AIMED = 2000;
let pointer = null;
let kept = [];
document.addEventListener("pointermove", (event) => {
  pointer = { x: event.clientX, y: event.clientY, at: Date.now() };
}, { passive: true });

function inHand() {
  const aimed = pointer && Date.now() - pointer.at < AIMED;
  const below = aimed ? document.elementFromPoint(pointer.x, pointer.y) : null;
  return [below, document.activeElement].find((one) => one?.closest(".work") && !one.closest("#state"));
}

document.addEventListener("htmx:beforeSwap", () => {
  kept = [];
  for (let one = inHand(); one && !one.matches(".work"); one = one.parentElement) {
    kept.push({ one, id: one.id, top: one.getBoundingClientRect().top });
  }
});

function moveBack() {
  for (const { one, id, top } of kept) {
    const now = one.isConnected ? one : id && document.getElementById(id);
    if (now && now.getClientRects().length > 0) {
      window.scrollBy({ top: now.getBoundingClientRect().top - top, behavior: "instant" });
      return;
    }
  }
}
whenShown(moveBack);
