/* What is typed while an answer is on its way waits for its turn, wherever its field comes to stand meanwhile. */
"use strict";

/* Fields that were typed in since they were last sent. */
const unsent = new Set();
document.addEventListener("input", ({ target }) => {
  if (target.matches(".work :is(input:not([type=radio]), select, textarea)")) {
    unsent.add(target);
  }
}, true);

/*
 * What shows panes anew is sent one after the other, and says what stands in its fields when its turn comes. htmx can queue too,
 * but there each key is sent by itself, and what is of an element that is gone holds up all behind it.
 */
const waiting = [];
let turn = null;
let onItsWay = null;
const isWaiting = (field) => waiting.some(({ elt }) => elt === field);

document.addEventListener("htmx:confirm", (event) => {
  const { elt, verb, triggeringEvent, issueRequest } = event.detail;
  if (!triggeringEvent || !elt.closest(".work") || (verb !== "post" && !elt.matches(".to-come, [hx-get$='/look']"))) {
    return;
  }
  event.preventDefault();
  const said = elt.matches("input, select") && waiting.at(-1)?.elt === elt;
  const idle = elt.id === "follow" && (onItsWay || waiting.length > 0);
  if (!said && !idle) {
    inTurn(elt, () => issueRequest(true));
  }
});

function inTurn(elt, issue) {
  waiting.push({ elt, issue, filled: filledIn(elt) });
  sendNext();
}

/* A form says what stood in it when its button was pressed: what is typed there by the time its turn comes may be half a figure. */
function filledIn(elt) {
  return elt.matches("form") ? [...elt.elements].filter((field) => field.name && field.matches("input:not([type=radio], [type=checkbox]), select, textarea")).map((field) => [field, field.value]) : [];
}
let filled = [];
document.addEventListener("htmx:configRequest", ({ detail: { parameters } }) => {
  filled.forEach(([field, value]) => { parameters[field.name] = value; });
});
const isTypedSince = (field) => filled.some(([one, value]) => one === field && field.value !== value);

/* Nothing is sent of an element that is gone, nor of a form that is not filled in. */
function sendNext() {
  while (!onItsWay && waiting.length > 0) {
    const next = waiting.shift();
    turn = next;
    filled = next.filled;
    next.issue();
    turn = null;
    filled = [];
  }
}

document.addEventListener("htmx:beforeSend", ({ detail: { elt, xhr, requestConfig } }) => {
  if (turn) {
    const sent = turn;
    onItsWay = requestConfig.verb;
    xhr.addEventListener("loadend", () => {
      onItsWay = null;
      if (elt.matches("form") && isAway(xhr)) {
        unheard.set(elt, sent);
      }
      sendNext();
      goOn();
    });
  }
  if (requestConfig.verb === "post") {
    const sent = [elt, ...(elt.elements ?? [])]
      .filter((field) => unsent.has(field) && !isWaiting(field) && !isTypedSince(field));
    sent.forEach((field) => unsent.delete(field));
    xhr.addEventListener("loadend", () => {
      if (xhr.status < 200 || xhr.status >= 400) {
        sent.forEach((field) => unsent.add(field));
      }
    });
  }
});

/* Forms that were filled in and sent while the counter was not there, to be sent once more as they stood. */
const unheard = new Map();
const isAway = ({ status }) => status === 0 || status === 403;
function sendUnheard() {
  waiting.push(...unheard.values());
  unheard.clear();
  sendNext();
}

/* That the counter is not there, or does not know this page, is in sight wherever one is until it answers again. */
function tellAway(words) {
  const told = Object.assign(document.createElement("p"), { className: "fault", textContent: words });
  document.getElementById("away")?.replaceChildren(told);
}
document.addEventListener("htmx:sendError", () => {
  tellAway(`The counter does not answer. What was typed last is not written yet: it is sent once the counter answers again at ${location.host}.`
    + " If it was started anew and printed another address, open that: what is not written yet has to be typed there.");
});
document.addEventListener("htmx:responseError", ({ detail: { xhr } }) => {
  if (xhr.status === 403) {
    tellAway("The counter does not know this page: perhaps it was started anew. Open the address that it printed then, in another"
      + " tab. This page goes on after that, and sends what is not written yet.");
  }
});
document.addEventListener("htmx:afterRequest", ({ detail: { successful } }) => {
  const away = document.getElementById("away");
  if (successful && away?.hasChildNodes()) {
    away.replaceChildren();
    document.getElementById("faults").replaceChildren();
    sendUnheard();
    sendUnsent();
  }
});

/* A field that came in place of the one that was typed in says so itself; before it has settled it could not. */
const sendsItself = (field) => field.isConnected && field.matches("[hx-post]") && !isWaiting(field);
function send(field) {
  htmx.trigger(field, field.getAttribute("hx-trigger"));
}
function sendUnsent() {
  [...unsent].filter(sendsItself)
    .filter((field) => field.value !== field.defaultValue)
    .filter((field) => field !== document.activeElement || field.matches("[hx-trigger=input]"))
    .forEach(send);
}
document.addEventListener("htmx:afterSettle", ({ detail }) => {
  if (!detail.failed) {
    sendUnsent();
  }
});
document.addEventListener("focusout", ({ target }) => {
  if (unsent.has(target) && sendsItself(target) && target.matches("[hx-trigger=change]")) {
    send(target);
  }
});

/* What an element is called wherever its thing comes to stand: the ids of the plan go by positions. */
const STEM = /-(fold|more|item|adding)$/;
const thingOf = (one) => one.parentElement?.closest("[data-key]:not([id$='-more'])");
function called(one) {
  const thing = one.id && thingOf(one);
  const stem = thing && thing.id.replace(STEM, "");
  return thing && one.id.startsWith(stem) ? { key: thing.dataset.key, rest: one.id.slice(stem.length) } : { rest: one.id };
}

/* Where that is now; nothing where it is no more. */
function placeOf({ key, rest }) {
  const thing = key && [...document.querySelectorAll("[data-key]")].find((one) => one.dataset.key === key);
  return key && !thing ? null : document.getElementById(key ? thing.id.replace(STEM, "") + rest : rest);
}

/* A thing that got another name is known by that. */
document.addEventListener("htmx:oobAfterSwap", ({ detail: { target } }) => {
  const line = target.id && document.getElementById(target.id);
  const fold = line?.matches("summary[data-key]") && line.parentElement;
  const old = fold && fold.dataset.key;
  if (old && old !== line.dataset.key) {
    const things = [fold.closest("li[data-key]") ?? fold, fold, ...fold.querySelectorAll("[data-key]")];
    things.filter((one) => one.dataset.key.startsWith(old))
      .forEach((one) => { one.dataset.key = line.dataset.key + one.dataset.key.slice(old.length); });
    tellOpened();
  }
});

/* What was not taken stays typed, with the reason beside it. */
function isRefused(field) {
  const fault = field.closest("form, .field")?.querySelector(".fault");
  return Boolean(fault && fault.textContent.trim());
}
const isTyped = (field) => unsent.has(field) || isRefused(field);

/* What stands typed within an element that is about to be shown anew. */
function typedIn(shown) {
  return [...shown.querySelectorAll("input:not([type=hidden]), select, textarea")]
    .filter((field) => isTyped(field) || field === document.activeElement)
    .map((field) => ({
      field,
      typed: isTyped(field),
      value: field.value,
      at: called(field),
      of: [thingOf(field)?.querySelector(".name")?.textContent, field.labels?.[0]?.textContent ?? field.getAttribute("aria-label")],
      caret: field === document.activeElement && [field.selectionStart, field.selectionEnd],
    }));
}

/* Goes on where the field is now; what has none any more is told. */
function typeOn({ field, typed, value, at, of, caret }) {
  if (field.isConnected) {
    return;
  }
  const now = placeOf(at);
  unsent.delete(field);
  // htmx would put the focus on what is called so now, which may be of another thing.
  field.removeAttribute("id");
  if (typed && now) {
    now.value = value;
    unsent.add(now);
  }
  if (now && caret) {
    now.focus({ preventScroll: true });
    if (caret[0] !== null) {
      now.setSelectionRange?.(...caret);
    }
  }
  if (typed && value.trim() && now?.value !== value && !field.matches(".asked")) {
    tellGone(of.filter(Boolean).join(", "), value);
  }
}

function tellGone(of, value) {
  const place = document.getElementById("unwritten");
  const told = document.createElement("p");
  told.append("Not written, for its field is gone: ", Object.assign(document.createElement("b"), { textContent: value }), ` (${of}).`);
  if (!place.hasChildNodes()) {
    const seen = Object.assign(document.createElement("button"), { type: "button", textContent: "Seen" });
    seen.addEventListener("click", () => place.replaceChildren());
    place.append(seen);
  }
  place.lastChild.before(told);
}
