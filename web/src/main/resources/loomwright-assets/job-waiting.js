// While the kit of a job is planned, only the words about that are fetched again. When the guide is
// there the page is loaded anew, but not from under somebody who types or reads why something was
// refused: they find a link.

function isTouched(field) {
  if (field.type === "file") {
    return field.files.length > 0;
  }
  if (field.type === "checkbox" || field.type === "radio") {
    return field.checked !== field.defaultChecked;
  }
  return field.value !== field.defaultValue;
}

function isInUse(main) {
  const fields = [...main.querySelectorAll("input, textarea")];
  return main.querySelector(".problems") !== null
    || fields.some(isTouched)
    || main.querySelector(":is(input, select, textarea):focus") !== null;
}

document.addEventListener("htmx:afterSwap", () => {
  const main = document.getElementById("main");
  if (main.querySelector("#waiting[data-ready]") && !isInUse(main)) {
    location.reload();
  }
});
