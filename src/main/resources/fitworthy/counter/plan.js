// What is open on the plan goes along with every request, so that it is open again when the plan is shown anew.
document.addEventListener("toggle", (event) => {
  const plan = document.getElementById("plan");
  if (plan && plan.contains(event.target)) {
    const open = [...plan.querySelectorAll("details[open][data-key]")].map((fold) => fold.dataset.key);
    document.getElementById("plan-opened").value = open.join("\n");
  }
}, true);

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
