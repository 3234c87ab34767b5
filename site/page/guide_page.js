// The page comes to life: its switches, the chapter that its address names, the reader's cabinet, its worksheets.

function openPage() {
  // Whoever wanted the later part asks again when it is here: that is no fault of the page.
  addEventListener("error", (event) => event.error instanceof LaterWanted && event.preventDefault());
  addEventListener("unhandledrejection", (event) => event.reason instanceof LaterWanted && event.preventDefault());
  const ownPage = document.body !== null && document.body.dataset.shape !== undefined;
  const { place } = addressParts(location.hash);
  if (ownPage) {
    fillSwitches();
    takeDrops(document);
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, paperSheet];
    showPlace(place, false);
    addEventListener("hashchange", followAddress);
  }
  readersCabinet.follows = ownPage;
  readersCabinet.ready = readersCabinet.arrive().then(() => {
    if (!ownPage) return;
    if (addressParts(location.hash).data !== null) showPlace(readersCabinet.place, readersCabinet.place !== "");
    readersCabinet.carry();
  });
  if (!customElements.get("steadfoot-worksheet")) customElements.define("steadfoot-worksheet", SteadfootWorksheet);
}

openPage();
