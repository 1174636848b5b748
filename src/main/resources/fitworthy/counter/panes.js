/* What an answer shows anew. Of a pane only what differs is replaced: the rest is not laid out, painted and set to work once more. */
"use strict";

/* What works by coming onto the page, and an explanation that was fetched, which is to be fetched again. */
const ANEW = "[hx-trigger^='load'], details:has(> .why:not(:empty))";

htmx.defineExtension("panes", {
  isInlineSwap: (style) => style === "same",
  /** "pane" shows what stands within an element anew, "same" the element itself. */
  handleSwap(style, shown, fragment) {
    if (style !== "pane" && style !== "same") {
      return false;
    }
    const typed = typedIn(shown);
    const anew = [...shown.querySelectorAll(ANEW)];
    if (style === "pane") {
      putChildren(shown, fragment);
    } else {
      put(shown, fragment.firstElementChild);
    }
    anew.filter((one) => shown.contains(one)).forEach(putAnew);
    [shown, ...shown.querySelectorAll("*")].filter((one) => one.matches("input, select, textarea")).forEach(putWritten);
    typed.forEach(typeOn);
    return [shown];
  },
});

/* What is the same thing's stays its element, in whatever order. */
function putChildren(old, shown) {
  const olds = [...old.childNodes];
  const { news, was } = origins(olds, shown);
  const taken = new Set(was.values());
  const isOf = (each, one) => (was.get(one) ? was.get(one) === each : !taken.has(each) && isSame(each, one));
  const shorter = Math.min(olds.length, news.length);
  let head = 0;
  while (head < shorter && isOf(olds[head], news[head])) {
    put(olds[head], news[head++]);
  }
  let tail = 0;
  while (tail < shorter - head && isOf(olds.at(-1 - tail), news.at(-1 - tail))) {
    tail++;
    put(olds.at(-tail), news.at(-tail));
  }
  const left = olds.slice(head, olds.length - tail);
  const come = news.slice(head, news.length - tail)
    .map((one) => [one, left.find((each) => (was.get(one) || nameOf(each)) && isOf(each, one))]);
  const stay = new Set(come.map(([, same]) => same));
  left.filter((one) => !stay.has(one)).forEach((gone) => gone.remove());
  let next = tail > 0 ? old.childNodes[old.childNodes.length - tail] : null;
  for (const [one, same] of come.reverse()) {
    if (same && same.nextSibling !== next) {
      old.insertBefore(same, next);
    } else if (!same) {
      old.insertBefore(one, next);
    }
    next = same ?? one;
  }
  come.filter(([, same]) => same).forEach(([one, same]) => put(same, one));
}

/* What stood there before is not sent again: where some of it was left out, a template says first where all came from. */
function origins(olds, shown) {
  const said = shown.firstElementChild?.dataset.from?.split(" ");
  const was = new Map();
  if (!said) {
    return { news: [...shown.childNodes], was };
  }
  const sent = [...shown.children].slice(1);
  if (Number(said.shift()) !== olds.length) {
    // Something else has put its own into the page.
    askWhole();
    return { news: olds, was: new Map(olds.map((one) => [one, one])) };
  }
  const news = said.flatMap((one) => {
    const [from, upto] = one.split("-");
    const come = one === "_" ? [document.createTextNode(" ")] : upto ? olds.slice(from, upto) : [sent.shift()];
    come.forEach((each, i) => was.set(each, olds[Number(from) + i]));
    return come;
  });
  return { news, was };
}

/* An answer that leaves out what the page showed when it was asked is of no use once that shows something else. */
document.addEventListener("htmx:beforeSwap", ({ detail }) => {
  const asked = detail.requestConfig.parameters.shows;
  if (asked !== document.getElementById("shows")?.value && detail.serverResponse.includes("data-from=")) {
    detail.shouldSwap = false;
    askWhole();
  }
});

/* Nor is what was fetched for an element that is gone meanwhile: htmx would put it over all that stands typed. What came in its place asks anew. */
document.addEventListener("htmx:beforeSwap", ({ detail }) => {
  if (!detail.requestConfig.elt.isConnected && detail.target.isConnected) {
    detail.shouldSwap = false;
  }
});

/* From the next answer on all is sent that a page shows. */
function askWhole() {
  document.getElementById("shows").value = "";
  setTimeout(follow);
}

/* By what a thing is known again. */
function nameOf(one) {
  const { key, rest } = one.dataset?.key ? { key: one.dataset.key, rest: "" } : called(one);
  return key ? `${key}\n${rest}` : rest;
}

/* Of the same thing, though perhaps in other words. */
function isSame(old, shown) {
  return old.nodeName === shown.nodeName && nameOf(old) === nameOf(shown);
}

/* Which folds are open is for the page to say. */
function isOfPage(old, name) {
  return name === "open" && old.matches("[data-key]");
}

function put(old, shown) {
  if (old === shown || old.isEqualNode(shown)) {
    return;
  }
  if (old.nodeType !== Node.ELEMENT_NODE) {
    old.data = shown.data;
  } else {
    // First what is within, which goes by the ids above it. Why a value was not taken stays beside it.
    if (!old.matches(":is(.plan, .answer) .fault") || shown.textContent.trim()) {
      putChildren(old, shown);
    }
    [...old.attributes].filter(({ name }) => !shown.hasAttribute(name) && !isOfPage(old, name))
      .forEach(({ name }) => old.removeAttribute(name));
    [...shown.attributes].filter(({ name, value }) => old.getAttribute(name) !== value && !isOfPage(old, name))
      .forEach(({ name, value }) => old.setAttribute(name, value));
  }
}

/* As if it had just come, with nothing fetched yet. */
function putAnew(one) {
  const fresh = one.cloneNode(true);
  fresh.removeAttribute("open");
  fresh.classList.remove("htmx-request");
  fresh.querySelector(".why")?.replaceChildren();
  one.replaceWith(fresh);
}

/* A field that was left says again what is written; what is typed stays, and so does what one is in, unless its form was sent. */
function putWritten(field) {
  if (isTyped(field) || (field === document.activeElement && !field.form && !field.matches(".mark"))) {
    return;
  }
  if (field.matches("select")) {
    field.selectedIndex = Math.max(0, [...field.options].findIndex((option) => option.defaultSelected));
  } else if (field.matches("[type=radio], [type=checkbox]")) {
    field.checked = field.defaultChecked;
  } else if (field.value !== field.defaultValue) {
    field.value = field.defaultValue;
  }
}
