// What is open on the plan goes along with every request, so that it is open again when the plan is shown anew.
function tellOpened() {
  const open = [...document.querySelectorAll("#plan details[open][data-key]")].map((fold) => fold.dataset.key);
  document.getElementById("plan-opened").value = open.join("\n");
}
document.addEventListener("toggle", (event) => {
  if (event.target.closest("#plan")) {
    tellOpened();
  }
}, true);

// What was not taken is told on the line of its thing too.
const faults = () => [...document.querySelectorAll("#plan .field > .fault")].filter((fault) => fault.textContent.trim());

function tellOnLines() {
  document.querySelectorAll("#plan summary[data-refused]").forEach((line) => delete line.dataset.refused);
  for (const fault of faults()) {
    for (let fold = fault.closest(".fold"); fold; fold = fold.parentElement.closest(".fold")) {
      fold.querySelector(":scope > summary").dataset.refused = fault.textContent.trim().split(" (")[0];
    }
  }
}

document.addEventListener("htmx:oobBeforeSwap", (event) => {
  const note = event.detail.target.matches("#plan :is(.note:not(:empty), .note.answered)")
    && event.detail.fragment.querySelector(".note:empty");
  if (note) {
    // On both, since the new one is shown with the classes of the old until it has settled.
    [note, event.detail.target].forEach((one) => one.classList.add("answered"));
  }
});
whenShown(tellOnLines);

// The list that was found stays where it was scrolled to, until what is looked for is another.
let scrolled = 0;
document.addEventListener("htmx:beforeSwap", (event) => {
  const added = event.detail.pathInfo.requestPath.endsWith("/words") && event.detail.serverResponse.includes('id="finder-box"');
  scrolled = added ? 0 : document.getElementById("finder-found")?.scrollTop ?? 0;
});
document.addEventListener("htmx:afterSettle", () => {
  const found = document.getElementById("finder-found");
  if (found && scrolled) {
    found.scrollTop = scrolled;
  }
});

// Arrow keys go through what was found, which is one step for the Tab key.
document.addEventListener("keydown", (event) => {
  const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
  if (step && event.target.matches("#finder-box, #finder-found button")) {
    const stops = [document.getElementById("finder-box"), ...document.querySelectorAll("#finder-found button")];
    stops[stops.indexOf(event.target) + step]?.focus();
    event.preventDefault();
  }
});

// Enter moves on to the next field, as it does on paper; a form's own button is pressed by it as everywhere.
document.addEventListener("keydown", (event) => {
  const box = event.target;
  if (event.key === "Enter" && box.matches("#plan .field > .box > input") && !box.form) {
    const boxes = [...document.querySelectorAll("#plan .field > .box > input, #plan .field > .box > select:not(.mark)")]
      .filter((other) => other.offsetParent !== null);
    boxes[boxes.indexOf(box) + 1]?.focus();
    event.preventDefault();
  }
});

// What is said in a box until it is left is one answer, which one press undoes: each time it is gone into it is held anew.
let held = { box: null, id: "" };
const holds = new WeakMap();
const boxOf = (one) => one.closest?.("#plan .field");
const holdOf = (one) => holds.get(boxOf(one)) ?? "";
document.addEventListener("focusin", ({ target }) => {
  const box = boxOf(target);
  if (box !== held.box) {
    held = { box, id: `${Date.now().toString(36)}-${Math.random().toString(36).slice(2)}` };
  }
});
// Who only looks something up in another window has not left it.
document.addEventListener("focusout", ({ relatedTarget }) => {
  if (document.hasFocus() && !held.box?.contains(relatedTarget)) {
    held = { box: null, id: "" };
  }
});
document.addEventListener("input", ({ target }) => {
  if (boxOf(target)) {
    holds.set(boxOf(target), held.id);
  }
}, true);
document.addEventListener("htmx:configRequest", ({ detail: { elt, parameters } }) => {
  if (holdOf(elt)) {
    parameters.hold = holdOf(elt);
  }
});

// Whoever opens what adds something goes on in its first field, which may still have to come.
let opening = null;
document.addEventListener("click", ({ target }) => {
  const fold = target.closest("#plan :is(.finder, .adding) > summary")?.parentElement;
  opening = fold && !fold.open ? fold : null;
});
function goIn() {
  const first = opening?.open && opening.querySelector("input:not([type=hidden]), select");
  if (first) {
    const stays = document.activeElement === document.body || opening.contains(document.activeElement);
    opening = null;
    if (stays) {
      first.focus();
    }
  }
}
document.addEventListener("toggle", goIn, true);
document.addEventListener("htmx:afterSettle", goIn);
