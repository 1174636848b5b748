// Things in the side view, moved along the vehicle by mouse, finger or arrow keys.
(() => {
  "use strict";

  const REACH = 24; // How far from a mark a finger may be, px.
  const STEP = 10; // mm, as every place is rounded to.
  const LEAP = 100;

  /** What was last moved: its path, where it stood and is (mm), and what tells this hold from others. */
  let held = null;
  let pointer = null;
  let sending = false;
  let waiting = false;

  const view = () => document.querySelector(".side-view");
  const handles = () => [...document.querySelectorAll(".side-view .handle")];
  const handleOf = (path) => handles().find((handle) => handle.dataset.path === path);
  const version = () => document.getElementById("version").value;

  function middle(handle) {
    const box = handle.querySelector("circle").getBoundingClientRect();
    return { x: box.left + box.width / 2, y: box.top + box.height / 2, reach: Math.max(REACH, box.width / 2) };
  }

  function nearest(x, y) {
    let best = null;
    for (const handle of handles()) {
      const at = middle(handle);
      const away = Math.hypot(at.x - x, at.y - y);
      if (away <= at.reach && (!best || away < best.away)) {
        best = { handle, away };
      }
    }
    return best && best.handle;
  }

  /** Whatever is asked for meanwhile does not take the picture out of the hand. */
  function grasp(by) {
    pointer = by;
    document.getElementById("side-moving").value = by ? "yes" : "";
  }

  /** Takes hold of a thing; of the one that is held anew where that was let go. */
  function hold(handle, anew) {
    if (anew || !held || held.path !== handle.dataset.path) {
      const along = Number(handle.dataset.along);
      held = { path: handle.dataset.path, from: along, along, id: Date.now().toString(36), since: version() };
    } else if (!sending) {
      held.along = Number(handle.dataset.along);
    }
  }

  /** Draws it, its marks and its line in the key where it is now. */
  function draw() {
    const handle = held && handleOf(held.path);
    if (!handle) {
      return;
    }
    const across = ((held.along - Number(handle.dataset.along)) / 1000) * Number(view().dataset.metre);
    const marks = handle.dataset.marks.split(" ").map((number) => document.getElementById("picture-side-mass-" + number));
    for (const part of [handle, ...marks]) {
      if (across) {
        part.setAttribute("transform", `translate(${across} 0)`);
      } else {
        part.removeAttribute("transform");
      }
    }
  }

  function post(way, values) {
    return new Promise((resolve) => inTurn(document.getElementById("side"), () => {
      resolve(htmx.ajax("POST", `/sheets/${view().dataset.sheet}/${way}`, { source: "#side", swap: "none", values }));
    }));
  }

  /** Sends where it is; while one request is on its way the latest place waits for it. */
  async function send() {
    if (sending) {
      waiting = true;
      return;
    }
    sending = true;
    const sent = held;
    try {
      await post("place", {
        path: sent.path,
        x: sent.along,
        hold: sent.id,
        since: sent.since,
      });
    } finally {
      sending = false;
      sent.version = version();
    }
    if (waiting) {
      waiting = false;
      send();
    }
  }

  function move(along) {
    if (along !== held.along) {
      held.along = along;
      draw();
      send();
    }
  }

  document.addEventListener("pointerdown", (event) => {
    const picture = event.target.closest && event.target.closest(".side-view");
    const handle = picture && event.button === 0 && nearest(event.clientX, event.clientY);
    if (!handle) {
      return;
    }
    event.preventDefault();
    handle.focus();
    hold(handle, true);
    grasp({ id: event.pointerId, x: event.clientX, along: held.along });
    // Not by the handle itself, which a page that was shown anew no longer has.
    document.getElementById("side").setPointerCapture(event.pointerId);
  });

  document.addEventListener("pointermove", (event) => {
    if (!pointer || event.pointerId !== pointer.id) {
      return;
    }
    const metre = Number(view().dataset.metre) * view().getScreenCTM().a;
    const along = pointer.along + ((event.clientX - pointer.x) / metre) * 1000;
    move(Math.round(along / STEP) * STEP);
  });

  function letGo(event) {
    if (!pointer || event.pointerId !== pointer.id) {
      return;
    }
    const moved = held.along !== pointer.along || held.version;
    grasp(null);
    if (moved) {
      send();
    }
  }
  document.addEventListener("pointerup", letGo);
  document.addEventListener("pointercancel", letGo);

  function back() {
    if (!held || !held.version || held.version !== version()) {
      return move(held.from);
    }
    // Nobody has changed the sheet since, so that the step before is what stood there, letter for letter.
    const was = held;
    held = null;
    was.version = null;
    return post("undo", {});
  }

  document.addEventListener("keydown", (event) => {
    const handle = event.target.closest && event.target.closest(".side-view .handle");
    const way = { ArrowLeft: -1, ArrowRight: 1 }[event.key];
    if (!handle || event.ctrlKey || event.altKey || event.metaKey || !(way || event.key === "Home")) {
      return;
    }
    event.preventDefault();
    hold(handle, false);
    if (way) {
      move(held.along + way * (event.shiftKey ? LEAP : STEP));
    } else {
      back();
    }
  });

  document.addEventListener("focusin", (event) => {
    const handle = event.target.closest && event.target.closest(".side-view .handle");
    const numbers = handle ? handle.dataset.marks.split(" ") : [];
    for (const line of document.querySelectorAll(".side-key li")) {
      line.classList.toggle("held", numbers.includes(line.dataset.mark));
    }
    const line = document.querySelector(".side-key .held");
    if (line) {
      const key = line.closest(".side-key");
      key.scrollTop = line.offsetTop - key.offsetTop - key.clientHeight / 2;
    }
  });

  // A picture that is shown anew stands where the old one was scrolled to.
  let scrolled = 0;
  const scroll = () => document.querySelector(".side-scroll");
  document.addEventListener("htmx:beforeSwap", () => {
    scrolled = scroll()?.scrollLeft ?? scrolled;
  });
  whenShown(() => {
    if (scrolled) {
      scroll()?.scrollTo(scrolled, 0);
    }
  });

  // What came of a move is told to those who hear the page.
  const told = document.createElement("p");
  told.className = "unseen";
  told.setAttribute("role", "status");
  document.getElementById("main").append(told);

  // What is drawn elsewhere than it was sent is no part of the next answer.
  document.addEventListener("htmx:oobBeforeSwap", (event) => {
    if (event.detail.target.id === "side") {
      view()?.querySelectorAll("[transform]").forEach((part) => part.removeAttribute("transform"));
    }
  });

  // At once, since what is shown anew a moment later takes the place of what has not settled.
  document.addEventListener("htmx:oobAfterSwap", (event) => {
    const pane = event.detail.target;
    // A later place that is still to be sent is drawn already.
    if (pane.id === "side" && (sending || waiting)) {
      draw();
    }
    if (pane.id === "loads") {
      const moved = pane.querySelector(".moved");
      told.textContent = moved ? moved.textContent : "";
    }
  });

  // A line of the key finds its mark.
  document.addEventListener("click", (event) => {
    const line = event.target.closest && event.target.closest(".side-key li");
    const handle = line && handles().find((one) => one.dataset.marks.split(" ").includes(line.dataset.mark));
    if (handle) {
      handle.focus();
    }
  });

  // The loading that was chosen is shown again when one comes back from another page of the sheet.
  const chosen = () => `loading of ${document.querySelector(".work")?.dataset.sheet}`;
  document.addEventListener("change", (event) => {
    if (event.target.matches("#side input[name=loading]")) {
      sessionStorage.setItem(chosen(), event.target.value);
    }
  });
  window.addEventListener("load", () => {
    const last = sessionStorage.getItem(chosen());
    const loading = [...document.querySelectorAll("#side input[name=loading]")].find((each) => each.value === last);
    if (loading && !loading.checked) {
      loading.checked = true;
      htmx.trigger(loading, "change");
    }
  });
})();
