// Photos of phones are larger than needed: they are made smaller before they are sent. Where that
// can't be done the photo is sent as it is.

const LONGEST_PX = 2400;
const SMALL_BYTES = 1500000;

async function smaller(file) {
  if (!file.type.startsWith("image/") || file.size <= SMALL_BYTES) {
    return file;
  }
  const picture = await createImageBitmap(file, { imageOrientation: "from-image" });
  const scale = Math.min(1, LONGEST_PX / Math.max(picture.width, picture.height));
  const canvas = document.createElement("canvas");
  canvas.width = Math.round(picture.width * scale);
  canvas.height = Math.round(picture.height * scale);
  canvas.getContext("2d").drawImage(picture, 0, 0, canvas.width, canvas.height);
  const blob = await new Promise((done) => canvas.toBlob(done, "image/jpeg", 0.85));
  return blob ? new File([blob], "photo.jpg", { type: "image/jpeg" }) : file;
}

for (const form of document.querySelectorAll("form[data-shrink]")) {
  const field = form.querySelector("input[type=file]");
  let work = Promise.resolve();
  field.addEventListener("change", () => {
    const [file] = field.files;
    if (!file) {
      return;
    }
    work = smaller(file)
      .then((it) => {
        // Another may have been chosen meanwhile.
        if (it !== file && field.files[0] === file) {
          const files = new DataTransfer();
          files.items.add(it);
          field.files = files.files;
        }
      })
      .catch(() => undefined);
  });
  const button = form.querySelector("button");
  form.addEventListener("submit", (event) => {
    if (form.dataset.ready === "yes") {
      return;
    }
    event.preventDefault();
    // One tap sends it once, however long it takes.
    button.disabled = true;
    // Not before this event is over: a form can't be sent while it is being sent.
    work.then(() => setTimeout(() => {
      form.dataset.ready = "yes";
      form.requestSubmit();
    }));
  });
  // The way back in a browser may lead to the page as it was left.
  window.addEventListener("pageshow", () => {
    button.disabled = false;
    delete form.dataset.ready;
  });
}
