/* Copies a letter, and takes parts in line by line. What they do is done without them too, only by hand. */
"use strict";

document.addEventListener("click", function (event) {
  const button = event.target.closest("button.copy");
  if (!button) {
    return;
  }
  const text = document.getElementById(button.dataset.copy);
  const told = document.getElementById(button.dataset.copy + "-copied");
  const select = function () {
    text.focus();
    text.select();
    told.textContent = "Selected: copy it with Ctrl-C.";
  };
  if (navigator.clipboard) {
    navigator.clipboard.writeText(text.value).then(function () {
      told.textContent = "Copied.";
    }, select);
  } else {
    select();
  }
});

/* The field of the next part; a new one below the last. */
function nextPart(input) {
  const row = input.closest("li");
  if (!row.nextElementSibling) {
    const number = row.parentElement.children.length + 1;
    const next = row.cloneNode(true);
    next.querySelector("label").htmlFor = "part-" + number;
    next.querySelector("label").textContent = "Part " + number;
    next.querySelector("p").id = "part-" + number + "-said";
    next.querySelector("p").textContent = "";
    const field = next.querySelector("input");
    field.id = "part-" + number;
    field.value = "";
    field.setAttribute("aria-describedby", "part-" + number + "-said part-help");
    row.after(next);
  }
  return row.nextElementSibling.querySelector("input");
}

/* Enter moves on to the next field, as it does on paper: the sheet is made by its button alone. */
document.addEventListener("keydown", function (event) {
  const field = event.target;
  if (event.key === "Enter" && field.matches(".new-sheet :is(input, select)")) {
    event.preventDefault();
    const fields = [...field.form.querySelectorAll("input, select, textarea, button.first")].filter(function (other) {
      return other.getClientRects().length > 0
        && (other.type !== "radio" || other === field || other.checked || !field.form.elements[other.name].value);
    });
    (field.matches(".part-rows input") ? nextPart(field) : fields[fields.indexOf(field) + 1]).focus();
  }
});

/* What is offered from the shelf is typed into its line. */
document.addEventListener("click", function (event) {
  const take = event.target.closest(".new-sheet button[data-line]");
  if (take) {
    const field = document.getElementById(take.dataset.of);
    field.value = take.dataset.line;
    field.focus();
    field.dispatchEvent(new Event("input", { bubbles: true }));
  }
});

/* There is always one more line than are filled in. */
document.addEventListener("input", function (event) {
  if (event.target.matches(".part-rows li:last-child input") && event.target.value) {
    nextPart(event.target);
  }
});

/* A list that is pasted goes into as many fields as it has lines. */
document.addEventListener("paste", function (event) {
  if (!event.target.matches(".part-rows input")) {
    return;
  }
  const lines = event.clipboardData.getData("text").split(/\r?\n/).map(function (line) {
    return line.trim();
  }).filter(Boolean);
  if (lines.length < 2) {
    return;
  }
  event.preventDefault();
  let field = event.target;
  lines.forEach(function (line, i) {
    field = i === 0 ? field : nextPart(field);
    field.value = line;
  });
  field.focus();
  field.dispatchEvent(new Event("input", { bubbles: true }));
});

/* What was typed of a new sheet is there again where one comes back to it or loads it anew; in this window alone. */
const KEPT = "new-sheet";

function typeAgain(form, kept) {
  let part = null;
  kept.forEach(function ([name, value]) {
    if (name === "part") {
      part = part ? nextPart(part) : form.querySelector("input[name=part]");
      part.value = value;
    } else {
      form.elements[name].value = value;
    }
  });
  form.dispatchEvent(new Event("input"));
}

document.addEventListener("DOMContentLoaded", function () {
  const form = document.querySelector(".new-sheet");
  if (!form) {
    return;
  }
  const kept = JSON.parse(sessionStorage.getItem(KEPT));
  if (performance.getEntriesByType("navigation")[0].type === "navigate") {
    sessionStorage.removeItem(KEPT);
  } else if (kept) {
    typeAgain(form, kept);
  }
  form.addEventListener("input", function () {
    sessionStorage.setItem(KEPT, JSON.stringify([...new FormData(form)]));
  });
});
