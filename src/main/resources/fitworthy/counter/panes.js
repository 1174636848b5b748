/* What an answer shows anew. Of a pane only what differs is replaced: the rest is not laid out, painted and set to work once more. */
"use strict";

/* What works by coming onto the page, and an explanation that was fetched, which is to be fetched again. */
const ANEW = "[hx-trigger^='load'], details:has(> .why:not(:empty))";

htmx.defineExtension("panes", {
  handleSwap(style, pane, fragment) {
    if (style !== "pane") {
      return false;
    }
    const holds = new Set();
    for (let one of pane.querySelectorAll(ANEW)) {
      for (; one !== pane; one = one.parentElement) {
        holds.add(one);
      }
    }
    putChildren(pane, fragment, holds);
    pane.querySelectorAll("input, select, textarea").forEach(putWritten);
    return [pane];
  },
});

/** @param holds the old elements that are to come anew, and all in which one lies */
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
  olds.slice(head, olds.length - tail).forEach((gone) => gone.remove());
  const rest = tail > 0 ? old.childNodes[old.childNodes.length - tail] : null;
  news.slice(head, news.length - tail).forEach((come) => old.insertBefore(come, rest));
}

/* Of the same thing, though perhaps in other words. */
function isSame(old, shown) {
  return old.nodeName === shown.nodeName && old.id === shown.id;
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
    [...old.attributes].filter(({ name }) => !shown.hasAttribute(name)).forEach(({ name }) => old.removeAttribute(name));
    [...shown.attributes].filter(({ name, value }) => old.getAttribute(name) !== value)
      .forEach(({ name, value }) => old.setAttribute(name, value));
    putChildren(old, shown, holds);
  }
}

/* A field that was left says again what is written; the one that is typed in stays as it is typed. */
function putWritten(field) {
  if (field === document.activeElement) {
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
