// The one-file page holds all chapters; with scripts it shows one of them at a time, as the folder of pages does.

function showLeaf(place) {
  if (document.body.dataset.shape !== "one-file") return;
  const leaves = [...document.querySelectorAll("article.leaf")];
  const target = place === "" ? null : document.getElementById(place);
  const leaf = (target && target.closest("article.leaf")) || (target === null && leaves.find((one) => !one.hidden && one.dataset.shown)) || leaves[0];
  for (const one of leaves) {
    one.hidden = one !== leaf;
    if (one === leaf) one.dataset.shown = "";
    else delete one.dataset.shown;
  }
  for (const link of document.querySelectorAll("#pages a")) {
    if (link.getAttribute("href") === "#" + leaf.id) link.setAttribute("aria-current", "page");
    else link.removeAttribute("aria-current");
  }
  const title = leaf.querySelector("h1");
  document.title = (title ? title.textContent + " · " : "") + "Steadfoot";
  for (const worksheet of leaf.querySelectorAll("steadfoot-worksheet")) {
    if (worksheet.stale) worksheet.update();
    else if (worksheet.wake) worksheet.wake();
  }
}

// After the address changed: another chapter, another place, or another cabinet.
async function followAddress() {
  const { data, place } = addressParts(location.hash);
  if (data !== null && data !== readersCabinet.data) {
    await readersCabinet.arrive();
  } else {
    readersCabinet.place = place;
    readersCabinet.writeAddress();
  }
  showPlace(readersCabinet.place, true);
}

function showPlace(place, move) {
  showLeaf(place);
  compareBits(document.querySelector("article.leaf:not([hidden])"));
  const target = place === "" ? null : document.getElementById(place);
  for (const open of document.querySelectorAll("details.chapters[open]")) open.open = false;
  if (!move) return;
  if (target && !target.matches("article.leaf")) target.scrollIntoView();
  else scrollTo(0, 0);
  if (target) document.getElementById("content").focus({ preventScroll: true });
}
