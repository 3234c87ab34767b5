// The verification page: whether this browser's engine gives the bits that the builder's own machine gave.

function compareBits(leaf) {
  for (const told of leaf.querySelectorAll("[data-self-check]")) {
    const wanted = Number(told.getAttribute("data-self-check"));
    const status = told.querySelector("[role=status]");
    let found = null;
    try {
      found = engineSays((engine) => engine.self_check()) >>> 0;
    } catch (error) {
      if (error instanceof LaterWanted) {
        fill(status, laterNote());
        laterPart.waiting.push(() => compareBits(leaf));
        return;
      }
      console.error(error);
    }
    told.setAttribute("data-same-bits", String(found === wanted));
    status.textContent = found === null ? "This browser could not work them out."
      : found === wanted ? "This browser finds the same bits."
        : "This browser finds other bits, " + found.toString(16).padStart(8, "0") + ": do not trust its results.";
  }
}
