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
    const holds = new Set();
    for (let one of shown.querySelectorAll(ANEW)) {
      for (; one !== shown; one = one.parentElement) {
        holds.add(one);
      }
    }
    if (style === "pane") {
      putChildren(shown, fragment, holds);
    } else {
      put(shown, fragment.firstElementChild, holds);
    }
    [shown, ...shown.querySelectorAll("*")].filter((one) => one.matches("input, select, textarea")).forEach(putWritten);
    typed.forEach(typeOn);
    return [shown];
  },
});

/* What is the same thing's stays its element, in whatever order. @param holds the old elements that are to come anew, and all in which one lies */
function putChildren(old, shown, holds) {
  const olds = [...old.childNodes];
  const news = [...shown.childNodes];
  const shorter = Math.min(olds.length, news.length);
  let head = 0;
  while (head < shorter && isSame(olds[head], news[head])) {
    put(olds[head], news[head++], holds);
  }
  let tail = 0;
  while (tail < shorter - head && isSame(olds.at(-1 - tail), news.at(-1 - tail))) {
    tail++;
    put(olds.at(-tail), news.at(-tail), holds);
  }
  const left = olds.slice(head, olds.length - tail);
  const come = news.slice(head, news.length - tail)
    .map((one) => [one, left.find((each) => nameOf(each) && isSame(each, one))]);
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
  come.filter(([, same]) => same).forEach(([one, same]) => put(same, one, holds));
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

function put(old, shown, holds) {
  if (!holds.has(old) && old.isEqualNode(shown)) {
    return;
  }
  if (holds.has(old) && old.matches(ANEW)) {
    old.replaceWith(shown);
  } else if (old.nodeType !== Node.ELEMENT_NODE) {
    old.data = shown.data;
  } else {
    // First what is within, which goes by the ids above it. Why a value was not taken stays beside it.
    if (!old.matches(":is(.plan, .answer) .fault") || shown.textContent.trim()) {
      putChildren(old, shown, holds);
    }
    [...old.attributes].filter(({ name }) => !shown.hasAttribute(name) && !isOfPage(old, name))
      .forEach(({ name }) => old.removeAttribute(name));
    [...shown.attributes].filter(({ name, value }) => old.getAttribute(name) !== value && !isOfPage(old, name))
      .forEach(({ name, value }) => old.setAttribute(name, value));
  }
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
