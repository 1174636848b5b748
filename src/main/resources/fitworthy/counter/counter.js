/* counter.js */
"use strict";

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

/* What is being typed stays, though the field itself is shown anew. A mark is sent at once, and follows the value. */
let typing = null;
document.addEventListener("htmx:beforeSwap", () => {
  const field = document.activeElement;
  typing = field && field.id && field.matches(".work input, .work textarea, .work select:not(.mark)") ? field : null;
});
document.addEventListener("htmx:afterSettle", () => {
  const anew = typing && !typing.isConnected && document.getElementById(typing.id);
  if (anew) {
    anew.value = typing.value;
  }
  typing = null;
});
