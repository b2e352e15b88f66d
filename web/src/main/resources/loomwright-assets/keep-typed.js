// What was typed while a preview was on its way is newer than the preview: it is asked for again.

const sent = new WeakMap();
const typed = (form) => new URLSearchParams(new FormData(form)).toString();
const formOf = (event) => event.detail.elt.closest?.("form.paste, form.marking");

document.addEventListener("htmx:beforeRequest", (event) => {
  const form = formOf(event);
  if (form) {
    sent.set(event.detail.xhr, typed(form));
  }
});

document.addEventListener("htmx:beforeSwap", (event) => {
  const form = formOf(event);
  const before = sent.get(event.detail.xhr);
  if (form && before !== undefined && before !== typed(form)) {
    const asking = event.detail.elt;
    event.detail.shouldSwap = false;
    setTimeout(() => window.htmx.trigger(asking, asking.matches("button") ? "click" : "change"));
  }
});
