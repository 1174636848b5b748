// What is read or typed in the advice stays so after a change: opened explanations and answers not yet sent. What a
// change came to is said aloud.
(() => {
  const ASIDE = ['told', 'offers', 'asks'];
  let opened = new Map();
  let typed = new Map();

  const said = document.createElement('div');
  said.setAttribute('role', 'status');
  said.className = 'unseen';
  document.querySelector('.work')?.append(said);

  function keep(area) {
    opened = new Map([...area.querySelectorAll('details[open][id]')]
      .map(details => [details.id, details.querySelector('.why')?.innerHTML ?? '']));
    typed = new Map([...area.querySelectorAll('input[id]:not([type=hidden]), select[id]')]
      .filter(box => box.value !== (box.defaultValue ?? '')).map(box => [box.id, box.value]));
  }

  function restore() {
    for (const [id, why] of opened) {
      const details = document.getElementById(id);
      const place = details?.querySelector('.why');
      if (details && !details.open) {
        if (place) place.innerHTML = why;
        details.open = true;
      }
    }
    for (const [id, value] of typed) {
      const box = document.getElementById(id);
      if (box) box.value = value;
    }
  }

  const isAside = area => area && ASIDE.includes(area.id);
  for (const [before, after] of [['htmx:oobBeforeSwap', 'htmx:oobAfterSwap'], ['htmx:beforeSwap', 'htmx:afterSwap']]) {
    document.body.addEventListener(before, event => { if (isAside(event.detail.target)) keep(event.detail.target); });
    document.body.addEventListener(after, event => {
      if (!isAside(event.detail.target)) return;
      restore();
      const changed = event.detail.target.querySelector('.changed');
      if (changed) said.textContent = changed.textContent;
    });
  }

  // What was opened is asked for anew once it can be: its figures may be others now.
  document.body.addEventListener('htmx:load', event => {
    if (!event.target.closest('#told, #offers, #asks')) return;
    for (const details of event.target.querySelectorAll('details[open][id]')) {
      if (opened.has(details.id)) htmx.trigger(details, 'toggle');
    }
  });

  // A field of the plan may lie in what is folded away, whose fields are fetched once it is opened.
  function goTo(id) {
    const box = document.getElementById(id);
    const fold = [...document.querySelectorAll('#plan details[id]')]
      .find(details => !details.open && (details.contains(box) || `${id}_`.startsWith(`${details.id}_`)));
    if (fold) {
      fold.addEventListener('htmx:load', () => goTo(id), {once: true});
      fold.open = true;
      if (box) goTo(id);
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
