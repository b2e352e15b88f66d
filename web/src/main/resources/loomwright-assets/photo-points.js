// Clicking a photo fills the place of a point; all else is the form's own doing.

/** The row whose place is being worked on; without one a click is for the first free row. */
let current = null;

const rows = (form) => [...form.querySelectorAll("fieldset.point")];
const field = (row, letter) => row.querySelector(`input[name^="${letter}"]`);

document.addEventListener("focusin", (event) => {
  const row = event.target.closest?.("[data-points] fieldset.point");
  if (row) {
    // Who chooses what a placed point is does not mean to move it.
    const places = event.target.matches("input") || field(row, "x").value === "";
    current = places ? rows(row.closest("form")).indexOf(row) : null;
  }
});

document.addEventListener("click", (event) => {
  const svg = event.target.closest?.("[data-points] .marks > svg");
  if (!svg) {
    return;
  }
  const form = svg.closest("form");
  const all = rows(form);
  const free = all.findIndex((row) => field(row, "x").value === "");
  const at = current !== null && current < all.length ? current : free;
  if (at < 0) {
    return;
  }
  const place = new DOMPoint(event.clientX, event.clientY).matrixTransform(svg.getScreenCTM().inverse());
  field(all[at], "x").value = Math.max(0, Math.round(place.x));
  field(all[at], "y").value = Math.max(0, Math.round(place.y));
  const what = all[at].querySelector("select");
  current = null;
  if (what.value === "") {
    what.focus();
  } else {
    form.querySelector("#look").click();
  }
});

// Once it is said what a clicked point is, the marks are made anew.
document.addEventListener("change", (event) => {
  const row = event.target.closest?.("[data-points] fieldset.point");
  if (row && event.target.matches("select") && field(row, "x").value !== "" && field(row, "y").value !== "") {
    current = null;
    row.closest("form").querySelector("#look").click();
  }
});
