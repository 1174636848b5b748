// What is read in the advice stays open after a change. What a change came to is said aloud.
(() => {
  const ASIDE = ['told', 'offers', 'asks'];
  const opened = {};

  const said = document.createElement('div');
  said.setAttribute('role', 'status');
  said.className = 'unseen';
  document.querySelector('.work')?.append(said);

  function keep(area) {
    opened[area.id] = new Map([...area.querySelectorAll('details[open][id]')]
      .map(details => [details.id, details.querySelector('.why')?.innerHTML ?? '']));
  }

  function restore(area) {
    for (const [id, why] of opened[area.id]) {
      const details = document.getElementById(id);
      const place = details?.querySelector('.why');
      if (details && !details.open) {
        if (place) place.innerHTML = why;
        details.open = true;
      }
    }
  }

  const isAside = area => area && ASIDE.includes(area.id);
  for (const [before, after] of [['htmx:oobBeforeSwap', 'htmx:oobAfterSwap'], ['htmx:beforeSwap', 'htmx:afterSwap']]) {
    document.body.addEventListener(before, event => { if (isAside(event.detail.target)) keep(event.detail.target); });
    document.body.addEventListener(after, event => {
      if (!isAside(event.detail.target)) return;
      restore(event.detail.target);
      // What was taken gets the focus, so that it is read anyway.
      const changed = event.detail.target.querySelector('.news');
      if (changed && event.detail.target.id !== 'offers') said.textContent = changed.textContent;
    });
  }

  // What was opened is asked for anew once it can be: its figures may be others now.
  document.body.addEventListener('htmx:load', event => {
    const before = opened[event.target.closest('#told, #offers, #asks')?.id];
    if (!before) return;
    for (const details of event.target.querySelectorAll('details[open][id]')) {
      if (before.has(details.id)) htmx.trigger(details, 'toggle');
    }
  });

  // A field of the plan may lie in what is folded away, whose fields are fetched once it is opened.
  function goTo(id) {
    const box = document.getElementById(id);
    const holds = details => details.contains(box) || `${id}_`.startsWith(`${details.id.replace(/-(fold|more)$/, '')}_`);
    const fold = [...document.querySelectorAll('#plan details[id]')].find(details => !details.open && holds(details));
    if (fold) {
      const fetched = !fold.querySelector(':scope > .body > .to-come');
      if (!fetched) fold.addEventListener('htmx:load', () => goTo(id), {once: true});
      fold.open = true;
      if (fetched) goTo(id);
    } else {
      (box ?? document.getElementById('plan')).scrollIntoView({block: 'center'});
      box?.focus();
    }
  }

  document.body.addEventListener('click', event => {
    const link = event.target.closest('a.field-link');
    if (link) {
      event.preventDefault();
      goTo(decodeURIComponent(link.hash.slice(1)));
    }
  });
})();
