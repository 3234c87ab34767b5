// The page comes to life: its switches, the chapter that its address names, the reader's cabinet, its worksheets.

function openPage() {
  // Whoever wanted the later part asks again when it is here: that is no fault of the page.
  const excuse = (event) => {
    if (!((event.error || event.reason) instanceof LaterWanted)) return;
    event.preventDefault();
    laterPart.changed.tell();
  };
  addEventListener("error", excuse);
  addEventListener("unhandledrejection", excuse);
  const ownPage = document.body !== null && document.body.dataset.shape !== undefined;
  const { place } = addressParts(location.hash);
  if (ownPage) {
    fillSwitches();
    takeDrops(document);
    showPlace(place, false);
    addEventListener("hashchange", followAddress);
    linkExamples();
  }
  readersCabinet.follows = ownPage;
  readersCabinet.ready = readersCabinet.arrive().then(() => {
    if (!ownPage) return;
    if (addressParts(location.hash).data !== null) showPlace(readersCabinet.place, readersCabinet.place !== "");
    readersCabinet.carry();
  });
  if (!customElements.get("steadfoot-worksheet")) customElements.define("steadfoot-worksheet", SteadfootWorksheet);
}

// Anywhere on the page a file may be dropped.
function takeDrops(page) {
  const holdsFile = (event) => event.dataTransfer && [...event.dataTransfer.types].includes("Files");
  page.addEventListener("dragover", (event) => {
    if (holdsFile(event)) event.preventDefault();
  });
  page.addEventListener("drop", (event) => {
    if (!holdsFile(event)) return;
    event.preventDefault();
    const files = [...event.dataTransfer.files];
    if (files.length > 0) onceWhole(() => late.takeDropped(files));
  });
}

// Each example that the guide names opens in the whole check.
function linkExamples() {
  for (const cell of document.querySelectorAll("[data-demo]")) {
    const link = make("a", { href: wholeCheckAddress(), click: (event) => {
      event.preventDefault();
      onceWhole(() => late.openExample(cell.dataset.demo, link));
    } }, cell.textContent);
    fill(cell, link);
  }
}

openPage();
