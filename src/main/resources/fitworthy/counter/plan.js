// What is open on the plan goes along with every request, so that it is open again when the plan is shown anew.
document.addEventListener("toggle", (event) => {
  const plan = document.getElementById("plan");
  if (plan && plan.contains(event.target)) {
    const open = [...plan.querySelectorAll("details[open][data-key]")].map((fold) => fold.dataset.key);
    document.getElementById("plan-opened").value = open.join("\n");
  }
}, true);

// What was not taken is told on the line of its thing too, and stays typed where the plan is shown anew.
let refused = [];
const faults = () => [...document.querySelectorAll("#plan .field > .fault")].filter((fault) => fault.textContent.trim());
const thing = (field) => field.closest("details[data-key]")?.dataset.key;
const boxOf = (fault) => fault.parentElement.querySelector("input, select");

function tellOnLines() {
  document.querySelectorAll("#plan summary[data-refused]").forEach((line) => delete line.dataset.refused);
  for (const fault of faults()) {
    for (let fold = fault.closest(".fold"); fold; fold = fold.parentElement.closest(".fold")) {
      fold.querySelector(":scope > summary").dataset.refused = fault.textContent.trim().split(" (")[0];
    }
  }
}

document.addEventListener("htmx:oobBeforeSwap", (event) => {
  if (event.detail.target.id === "plan") {
    refused = faults().map((fault) => ({ id: fault.id, of: thing(fault), said: fault.textContent, typed: boxOf(fault).value }));
  }
  const note = event.detail.target.matches("#plan :is(.note:not(:empty), .note.answered)")
    && event.detail.fragment.querySelector(".note:empty");
  if (note) {
    // On both, since the new one is shown with the classes of the old until it has settled.
    [note, event.detail.target].forEach((one) => one.classList.add("answered"));
  }
});
document.addEventListener("htmx:oobAfterSwap", (event) => {
  if (event.detail.target.id === "plan") {
    for (const { id, of, said, typed } of refused) {
      const fault = document.getElementById(id);
      if (fault && thing(fault) === of && !fault.textContent.trim()) {
        fault.textContent = said;
        boxOf(fault).value = typed;
      }
    }
    refused = [];
  }
});
whenShown(tellOnLines);

// The list that was found stays where it was scrolled to. What was added in words leaves its box free for the next.
let scrolled = 0;
document.addEventListener("htmx:beforeSwap", (event) => {
  const box = document.getElementById("finder-box");
  scrolled = document.getElementById("finder-found")?.scrollTop ?? 0;
  if (box && event.detail.pathInfo.requestPath.endsWith("/words")
    && event.detail.serverResponse.includes('id="finder-box"')) {
    box.value = "";
    scrolled = 0;
  }
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
